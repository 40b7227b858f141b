import { describe, expect, it } from "vitest";
import { recalculate } from "../../src/workbook";
import { fakes } from "./support/fakes";
import { cellOf, oneSheet, parts, sheetOf } from "./support/handmade";

const run = (file: Uint8Array) => recalculate(file, { functions: fakes });
const countdown = (cell: string, ref: string, rows: string, value: string) =>
  `<c r="${cell}" s="2" cm="1"><f t="array" ref="${ref}">_xldudf_DRAWER_COUNTDOWN(${rows})</f><v>${value}</v></c>`;
const data = (bytes: Uint8Array) => /<sheetData>(.*)<\/sheetData>/s.exec(sheetOf(bytes))![1];

describe("a dynamic array that grows", () => {
  const file = oneSheet(
    `<row r="1" spans="1:2"><c r="A1"><v>4</v></c>${countdown("B1", "B1:B2", "A1", "2")}</row><row r="2"><c r="B2" s="5"><v>1</v></c><c r="C2"><v>7</v></c></row><row r="4" ht="20"><c r="A4"><v>3</v></c><c r="C4"><v>3</v></c></row>`,
    { before: '<dimension ref="A1:C4"/>' },
  );

  it("writes its new range and cells in their places, styles kept", () => {
    expect(data(run(file).bytes)).toBe(
      `<row r="1" spans="1:2"><c r="A1"><v>4</v></c>${countdown("B1", "B1:B4", "A1", "4")}</row><row r="2"><c r="B2" s="5"><v>3</v></c><c r="C2"><v>7</v></c></row><row r="3"><c r="B3"><v>2</v></c></row><row r="4" ht="20"><c r="A4"><v>3</v></c><c r="B4"><v>1</v></c><c r="C4"><v>3</v></c></row>`,
    );
  });

  it("widens the dimension only where it goes beyond it", () => {
    expect(sheetOf(run(file).bytes)).toContain('<dimension ref="A1:C4"/>');
    const deep = oneSheet(`<row r="1">${countdown("A1", "A1", "3", "0")}</row>`, { before: '<dimension ref="A1"/>' });
    expect(sheetOf(run(deep).bytes)).toContain('<dimension ref="A1:A3"/>');
  });

  it("is the same when it is run again", () => {
    const once = run(file);
    expect(Buffer.compare(run(once.bytes).bytes, once.bytes)).toBe(0);
  });
});

describe("a dynamic array that shrinks", () => {
  const file = oneSheet(
    `<row r="1">${countdown("A1", "A1:A4", "2", "4")}</row><row r="2"><c r="A2"><v>3</v></c></row><row r="3"><c r="A3" s="5" t="str"><v>old</v></c><c r="B3"><f>COUNTA(A1:A9)</f><v>4</v></c></row><row r="4"><c r="A4" s="5"><v>1</v></c></row>`,
    {
      parts: {
        "xl/calcChain.xml": `<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="A3" i="1"/><c r="B3"/><c r="A1" a="1"/></calcChain>`,
      },
      links: { calcChain: "calcChain.xml" },
    },
  );
  const { bytes, report } = run(file);

  it("clears the cells that it no longer fills, and formulas see them blank", () => {
    expect(cellOf(bytes, "A3")).toBe('<c r="A3" s="5"></c>');
    expect(cellOf(bytes, "A4")).toBe('<c r="A4" s="5"></c>');
    expect(cellOf(bytes, "A1")).toContain('ref="A1:A2"');
    expect(cellOf(bytes, "B3")).toContain("<v>2</v>");
    expect(report.rounds).toBe(2);
  });

  it("leaves the order of calculation without cells that are no formulas any longer", () => {
    expect(parts(bytes)["xl/calcChain.xml"]).toBe(
      `<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="B3" i="1"/><c r="A1" a="1"/></calcChain>`,
    );
  });
});

describe("a blocked spill", () => {
  it.each([
    ["a value", '<row r="2"><c r="A2"><v>3</v></c></row>', ""],
    ["an empty text", '<row r="2"><c r="A2" t="str"><v></v></c></row>', ""],
    ["a formula", '<row r="2"><c r="A2"><f>1+1</f><v>2</v></c></row>', ""],
    ["merged cells", "", '<mergeCells count="1"><mergeCell ref="A2:B2"/></mergeCells>'],
  ])("by %s is #SPILL! and touches nothing", (_, second, after) => {
    const file = oneSheet(`<row r="1">${countdown("A1", "A1", "3", "0")}</row>${second}`, { after });
    const { bytes } = run(file);
    expect(data(bytes)).toBe(
      `<row r="1"><c r="A1" s="2" cm="1" t="e"><f t="array" ref="A1">_xldudf_DRAWER_COUNTDOWN(3)</f><v>#SPILL!</v></c></row>${second}`,
    );
  });

  it("by cells with a style alone is none", () => {
    const { bytes } = run(
      oneSheet(`<row r="1">${countdown("A1", "A1", "2", "0")}</row><row r="2"><c r="A2" s="4"/></row>`),
    );
    expect(cellOf(bytes, "A2")).toBe('<c r="A2" s="4"><v>1</v></c>');
  });

  it("by the sheet's edge", () => {
    const { bytes } = run(oneSheet(`<row r="1048576">${countdown("A1048576", "A1048576", "2", "0")}</row>`));
    expect(cellOf(bytes, "A1048576")).toContain("#SPILL!");
  });

  it("stays in the form in which the spreadsheet program stores it", () => {
    const row = `<row r="1"><c r="A1" t="e" cm="1" vm="1"><f t="array" ref="A1">_xldudf_DRAWER_COUNTDOWN(3)</f><v>#VALUE!</v></c></row><row r="2"><c r="A2"><v>1</v></c></row>`;
    expect(run(oneSheet(row)).report.changed).toBe(0);
  });

  it("that is free again loses the mark of its error", () => {
    const row = `<row r="1"><c r="A1" t="e" cm="1" vm="1"><f t="array" ref="A1">_xldudf_DRAWER_COUNTDOWN(2)</f><v>#VALUE!</v></c></row>`;
    expect(cellOf(run(oneSheet(row)).bytes, "A1")).toBe(
      '<c r="A1" cm="1"><f t="array" ref="A1:A2">_xldudf_DRAWER_COUNTDOWN(2)</f><v>2</v></c>',
    );
  });
});

it("A1# is the range that is filled now, through several sheets of spills", () => {
  const file = oneSheet(
    `<row r="1"><c r="A1"><v>5</v></c>${countdown("B1", "B1:B2", "A1", "2")}<c r="C1" cm="1"><f t="array" ref="C1">_xlfn.ANCHORARRAY(B1)*10</f><v>1</v></c><c r="D1"><f>SUM(_xlfn.ANCHORARRAY(C1))</f><v>1</v></c><c r="E1"><f>ROWS(_xlfn.ANCHORARRAY(C1))</f><v>1</v></c></row><row r="2"><c r="B2"><v>1</v></c></row>`,
  );
  const { bytes } = run(file);
  expect(cellOf(bytes, "C1")).toContain('ref="C1:C5"');
  expect(cellOf(bytes, "D1")).toContain("<v>150</v>");
  expect(cellOf(bytes, "E1")).toContain("<v>5</v>");
});

it("A1# of a cell that spills nothing is #REF!", () => {
  const { bytes } = run(
    oneSheet('<row r="1"><c r="A1"><v>5</v></c><c r="B1"><f>SUM(_xlfn.ANCHORARRAY(A1))</f></c></row>'),
  );
  expect(cellOf(bytes, "B1")).toContain("#REF!");
});

it("an older array formula keeps its range: what is too much is cut off, what is missing is #N/A", () => {
  const row = (ref: string, formula: string) =>
    oneSheet(
      `<row r="1"><c r="A1"><f t="array" ref="${ref}">${formula}</f><v>0</v></c></row><row r="2"><c r="A2"><v>0</v></c></row><row r="3"><c r="A3"><v>0</v></c></row>`,
    );
  const short = run(row("A1:A3", "{10;20}")).bytes;
  expect([cellOf(short, "A1"), cellOf(short, "A2"), cellOf(short, "A3")]).toEqual([
    '<c r="A1"><f t="array" ref="A1:A3">{10;20}</f><v>10</v></c>',
    '<c r="A2"><v>20</v></c>',
    '<c r="A3" t="e"><v>#N/A</v></c>',
  ]);
  const long = run(row("A1:A2", "{10;20;30}")).bytes;
  expect(cellOf(long, "A3")).toBe('<c r="A3"><v>0</v></c>');
  const single = run(row("A1:A3", "5")).bytes;
  expect(cellOf(single, "A3")).toBe('<c r="A3"><v>5</v></c>');
});

it("a table with error cells spills whole, its errors reported where they stand", () => {
  const file = oneSheet(
    `<row r="1"><c r="A1" t="str"><v>A</v></c><c r="B1"><v>18</v></c><c r="D1" cm="1"><f t="array" ref="D1">_xldudf_DRAWER_PLAN(A1:B2)</f></c></row><row r="2"><c r="A2" t="str"><v>B</v></c></row>`,
  );
  const { bytes, report } = run(file);
  expect(cellOf(bytes, "D1")).toContain('t="str"><f t="array" ref="D1:E3">');
  expect(cellOf(bytes, "E2")).toBe('<c r="E2"><v>17</v></c>');
  expect(cellOf(bytes, "E3")).toBe('<c r="E3" t="e"><v>#VALUE!</v></c>');
  expect(report.errors).toEqual([{ sheet: "Bench", cell: "E3", error: "#VALUE!", message: "B has no width." }]);
});

it("a stale spill's cells may be filled by another formula in the same run", () => {
  const file = oneSheet(
    `<row r="1">${countdown("A1", "A1:A3", "1", "3")}</row><row r="2"><c r="A2"><v>2</v></c></row><row r="3"><c r="A3"><v>1</v></c></row><row r="4"><c r="A4"><v>0</v></c></row>`.replace(
      '<row r="2"><c r="A2"><v>2</v></c></row>',
      `<row r="2"><c r="A2"><v>2</v></c><c r="B2" cm="1"><f t="array" ref="B2">_xldudf_DRAWER_COUNTDOWN(3-COUNT(A1:A3))</f><v>0</v></c></row>`,
    ),
  );
  const { bytes } = run(file);
  expect(cellOf(bytes, "A2")).toBe('<c r="A2"></c>');
  expect(cellOf(bytes, "B2")).toContain('ref="B2:B3"');
});

it("a text that names a spilled cell finds it, although the spill comes later in the file", () => {
  const file = oneSheet(
    `<row r="1"><c r="A1"><f>INDIRECT("C3")</f><v>9</v></c>${countdown("C1", "C1", "3", "0")}</row><row r="2"><c r="A2"><f>SUM(OFFSET(C1,0,0,3))</f><v>9</v></c></row>`,
  );
  const { bytes } = run(file);
  expect(cellOf(bytes, "A1")).toContain("<v>1</v>");
  expect(cellOf(bytes, "A2")).toContain("<v>6</v>");
});
