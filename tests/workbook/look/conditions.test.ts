import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { parseCell } from "../../../src/workbook/address";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { conditionalLook, readLook, type StyleChange } from "../../../src/workbook/look/index";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";
import { oneSheet } from "../support/handmade";

type Rules = ExcelJS.ConditionalFormattingOptions[];

/** A file as another library writes it: numbers in A1:C3, texts in column D, and rules. */
async function file(rules: Rules, rows: ExcelJS.CellValue[][] = ROWS): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Job");
  rows.forEach((row) => sheet.addRow(row));
  rules.forEach((rule) => sheet.addConditionalFormatting(rule));
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

const ROWS = [
  [10, 20, 30, "oak"],
  [40, 50, 60, "ash"],
  [70, 80, 110, "oak"],
];

/** What a file's rules change in a cell. */
function changes(bytes: Uint8Array): (cell: string) => StyleChange | undefined {
  const workbook = new EditedWorkbook(bytes);
  const outcome = workbook.calculate();
  const look = conditionalLook(readLook(openWorkbook(bytes)).conditions[0]!, {
    value: (row, column) => workbook.content(0, row, column) as number,
    formula: (formula, row, column, rowShift, columnShift) =>
      outcome.ask({ formula, sheet: 0, row, column, rowShift, columnShift }),
  });
  return (cell) => look(parseCell(cell)!.row, parseCell(cell)!.column);
}

const fill = (argb: string): Partial<ExcelJS.Style> => ({
  fill: { type: "pattern", pattern: "solid", bgColor: { argb } },
});
const expression = (ref: string, formula: string, style: Partial<ExcelJS.Style>, priority = 1): Rules[0] => ({
  ref,
  rules: [{ type: "expression", formulae: [formula], style, priority }],
});
const scale = (cfvo: ExcelJS.Cvfo[], ...colors: string[]): Rules[0] => ({
  ref: "A1:C3",
  rules: [{ type: "colorScale", priority: 1, cfvo, color: colors.map((argb) => ({ argb })) }],
});

describe("rules with a formula", () => {
  test("hold where it is true, with references that move along from the area's first cell", async () => {
    const look = changes(await file([expression("A1:C3", '$D1="oak"', fill("FFFFD766"))]));
    expect(["A1", "C1", "B2", "C3"].map((cell) => look(cell)?.fill)).toEqual(["ffd766", "ffd766", undefined, "ffd766"]);
    expect(look("D1")).toBeUndefined();
  });

  test("hold where it is a number other than 0, and not where it is an error", async () => {
    const look = changes(await file([expression("A1:A3", "IF(A1=10,2,IF(A1=40,0,1/0))", fill("FFFFD766"))]));
    expect(["A1", "A2", "A3"].map((cell) => look(cell)?.fill)).toEqual(["ffd766", undefined, undefined]);
  });

  test("see what formulas give and spill", async () => {
    const rows = [[{ formula: "B1*2" }, 5], [{ formula: "B1+1" }]] as ExcelJS.CellValue[][];
    const look = changes(await file([expression("A1:A2", "A1>=10", fill("FFFFD766"))], rows));
    expect([look("A1")?.fill, look("A2")?.fill]).toEqual(["ffd766", undefined]);
  });

  test.each([
    ["equal", [50], ["B2"]],
    ["notEqual", [50], ["A1", "C3"]],
    ["lessThan", [50], ["A1"]],
    ["greaterThan", [50], ["C3"]],
    ["between", [50, 110], ["B2", "C3"]],
    ["notBetween", [20, 60], ["A1", "C3"]],
  ] as const)("about a cell's own value: %s %j", async (operator, formulae, expected) => {
    const rule = { type: "cellIs", operator, formulae: [...formulae], style: fill("FFFFD766"), priority: 1 };
    const look = changes(await file([{ ref: "A1:C3", rules: [rule as never] }]));
    expect(["A1", "B2", "C3"].filter((cell) => look(cell))).toEqual(expected);
  });
});

describe("several rules over one cell", () => {
  const bold = { font: { bold: true, color: { argb: "FF112233" } } };
  const red = { font: { color: { argb: "FFFF0000" } }, ...fill("FFEEEEEE") };

  test("give all that they say, and of the same thing what the first says", async () => {
    const look = changes(await file([expression("A1:A1", "TRUE", red, 2), expression("A1:B2", "TRUE", bold, 1)]));
    expect(look("A1")).toMatchObject({ font: { bold: true, color: "112233" }, fill: "eeeeee" });
    expect(look("B2")).toMatchObject({ font: { bold: true, color: "112233" } });
    expect(look("B2")?.fill).toBeUndefined();
  });

  test("end with one that stops where it holds", async () => {
    const parts = unzipSync(await file([expression("A1:A2", "A1=10", bold, 1), expression("A1:A2", "TRUE", red, 2)]));
    const part = "xl/worksheets/sheet1.xml";
    const text = strFromU8(parts[part]!).replace('priority="1"', 'priority="1" stopIfTrue="1"');
    const look = changes(zipSync({ ...parts, [part]: strToU8(text) }));
    expect([look("A1")?.fill, look("A2")?.fill]).toEqual([undefined, "eeeeee"]);
  });
});

describe("color scales", () => {
  const MIN: ExcelJS.Cvfo = { type: "min" };
  const MAX: ExcelJS.Cvfo = { type: "max" };

  test("run from the least number to the greatest", async () => {
    const look = changes(await file([scale([MIN, MAX], "FF000000", "FFC86400")]));
    expect(["A1", "C2", "C3"].map((cell) => look(cell)?.fill)).toEqual(["000000", "643200", "c86400"]);
    expect(look("D1")).toBeUndefined();
  });

  test("have their middle where PERCENTILE.INC has it", async () => {
    const rows = [...ROWS, [{ formula: "PERCENTILE.INC(A1:C3,0.5)" }]] as ExcelJS.CellValue[][];
    const rule = scale([MIN, { type: "percentile", value: 50 }, MAX], "FF000000", "FFFFFFFF", "FF0000FF");
    const bytes = await file([rule], rows);
    const middle = new EditedWorkbook(bytes).calculate().results[0]!.values[0]![0];
    expect(middle).toBe(50);
    const look = changes(bytes);
    expect(["A1", "C1", "B2", "B3", "C3"].map((cell) => look(cell)?.fill)).toEqual([
      ...["000000", "808080", "ffffff", "8080ff", "0000ff"],
    ]);
  });

  test("may stand at numbers and at hundredths of the way; what lies beyond has the end's color", async () => {
    const rule = scale(
      [
        { type: "num", value: 20 },
        { type: "percent", value: 90 },
      ],
      "FF000000",
      "FF646464",
    );
    const look = changes(await file([rule]));
    // 90 % of the way from 10 to 110 is 100: 60 is half-way from 20.
    expect(["A1", "B1", "C2", "C3"].map((cell) => look(cell)?.fill)).toEqual(["000000", "000000", "323232", "646464"]);
  });
});

test("what is not shown, such as bars and icons, is passed over", async () => {
  const bar = { type: "dataBar", priority: 1, cfvo: [{ type: "min" }, { type: "max" }], color: { argb: "FF638EC6" } };
  const bytes = await file([
    { ref: "A1:A3", rules: [bar as never] },
    {
      ref: "B1:B3",
      rules: [
        {
          type: "iconSet",
          priority: 2,
          iconSet: "3Arrows",
          cfvo: [0, 33, 67].map((value) => ({ type: "percent", value })),
        } as never,
      ],
    },
  ]);
  expect(readLook(openWorkbook(bytes)).conditions).toEqual([[]]);
});

test("a file that is edited and saved keeps its rules as they were", async () => {
  const bar = { type: "dataBar", priority: 2, cfvo: [{ type: "min" }, { type: "max" }], color: { argb: "FF638EC6" } };
  const given = await file([
    scale([{ type: "min" }, { type: "max" }], "FF000000", "FFFFFFFF"),
    { ref: "A1:A3", rules: [bar as never] },
    expression("B1:B3", "B1>30", fill("FFFFD766"), 3),
  ]);
  const workbook = new EditedWorkbook(given);
  workbook.put({ sheet: 0, row: 0, column: 0, content: 99 });
  const rules = (bytes: Uint8Array) =>
    strFromU8(unzipSync(bytes)["xl/worksheets/sheet1.xml"]!).match(
      /<conditionalFormatting.*<\/conditionalFormatting>/s,
    )![0];
  const saved = workbook.save();
  expect(saved).not.toEqual(given);
  expect(rules(saved)).toBe(rules(given));
  expect(unzipSync(saved)["xl/styles.xml"]).toEqual(unzipSync(given)["xl/styles.xml"]);
});

test("of rules beyond all measure those that count most are read, and it is said that there are more", () => {
  const many = (count: number, areas: string) =>
    Array.from(
      { length: count },
      (_, i) =>
        `<conditionalFormatting sqref="${areas}"><cfRule type="colorScale" priority="${count - i}"><colorScale/></cfRule></conditionalFormatting>`,
    ).join("");
  const look = (rules: string) => readLook(openWorkbook(oneSheet("", { after: rules })));
  const { conditions, unshown } = look(many(20_000, "A1"));
  expect(conditions[0]!.map(({ priority }) => priority)).toEqual(Array.from({ length: 1_000 }, (_, i) => i + 1));
  expect(unshown).toEqual([
    "The sheet Bench has 20000 rules about looks; the first 1000 are shown, the others stay in the file.",
  ]);
  expect(look(many(3, "A1 ".repeat(4_000))).conditions[0]).toHaveLength(2);
  expect(look(many(3, "A1"))).toMatchObject({ unshown: [], conditions: [{ length: 3 }] });
});
