import fc from "fast-check";
import { Window } from "happy-dom";
import { describe, expect, test } from "vitest";
import { pastedTable } from "../../../src/workbook/browser/pasted-table";

const parse = (html: string): Document => {
  const { document } = new Window();
  document.write(html);
  return document as unknown as Document;
};
const paste = (html?: string, text?: string) => pastedTable({ html, text }, parse);

describe("pastedTable of plain text", () => {
  test.each([
    ["one cell", "24 1/16", [["24 1/16"]]],
    ["one cell in quotation marks, as it stands", '"7/16"', [['"7/16"']]],
    ["a row by tabs", "18\t26 1/4\t", [["18", "26 1/4", ""]]],
    ["lines, one below another", "7/16\r\n595 mm\r\n", [["7/16"], ["595 mm"]]],
    ["a blank line between", "1\n\n2", [["1"], [""], ["2"]]],
    ["rows of unequal length", "1\t2\n3", [["1", "2"], ["3", ""]]], // prettier-ignore
    ["a field of several lines", '1\t"two\nlines"\n3\t4', [["1", "two\nlines"], ["3", "4"]]], // prettier-ignore
    ["inch marks, which quote nothing", `24 1/16"\t1' 11 7/16"\n"\t"A" frame`, [[`24 1/16"`, `1' 11 7/16"`], ['"', '"A" frame']]], // prettier-ignore
    ["a doubled quotation mark", '"3/4"" plywood"\t2', [['3/4" plywood', "2"]]],
    ["a list with headings and commas", 'Part,Length\nside,"24 1/16"\n"end, back",18', [["Part", "Length"], ["side", "24 1/16"], ["end, back", "18"]]], // prettier-ignore
    ["lengths with a decimal comma, which parts nothing", "59,5 cm\n60,5 cm", [["59,5 cm"], ["60,5 cm"]]],
    ["sentences", "Dear Sam, thanks.\nUntil Friday, Jo", [["Dear Sam, thanks."], ["Until Friday, Jo"]]],
    ["nothing", "", []],
  ])("takes %s", (_, text, rows) => expect(paste(undefined, text)).toEqual(rows));
});

describe("pastedTable of a page's part", () => {
  const table = (inside: string) => `<html><body><!--StartFragment--><table>${inside}</table></body></html>`;
  test.each([
    ["cells", "<tr><th>Width</th><td> 7/16 </td></tr>", [["Width", "7/16"]]],
    ["the padding of a program's fraction", "<tr><td><span style='mso-spacerun:yes'>&nbsp; </span>7/16</td></tr>", [["7/16"]]], // prettier-ignore
    ["a raised fraction", "<tr><td>24<sup>1</sup>/<sub>16</sub></td><td>m<sup>2</sup></td></tr>", [["24 1/16", "m2"]]], // prettier-ignore
    ["breaks as lines of one cell", "<tr><td>two<br>lines</td></tr>", [["two\nlines"]]],
    ["cells that reach over others", "<tr><td rowspan=2>a</td><td colspan=2>b</td></tr><tr><td>c</td><td>d</td></tr>", [["a", "b", ""], ["", "c", "d"]]], // prettier-ignore
    ["a table in a cell as that cell's lines", "<tr><td><table><tr><td>1</td></tr><tr><td>2</td></tr></table></td></tr>", [["1\n2"]]], // prettier-ignore
  ])("takes %s", (_, inside, rows) => expect(paste(table(inside))).toEqual(rows));

  test("takes two tables, one below the other", () =>
    expect(paste(`${table("<tr><td>1</td></tr>")}${table("<tr><td>2</td></tr>")}`)).toEqual([["1"], ["2"]]));
  test("takes the plain text where the page's part is no table, or more than one", () => {
    expect(paste("<p><b>24</b> 1/16</p>", "24 1/16")).toEqual([["24 1/16"]]);
    expect(paste(`<p>Widths</p>${table("<tr><td>1</td></tr>")}`, "Widths\n1")).toEqual([["Widths"], ["1"]]);
  });
  test("takes the words where nothing else came", () => expect(paste("<p>7/16</p>")).toEqual([["7/16"]]));
});

test("fields that a program quotes where it must come back from tabs and lines as they were", () => {
  const field = fc.stringMatching(/^[ -~]{0,6}[\n\t"]?[ -~]{0,6}$/);
  const written = (text: string) => (/[\t\n"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  fc.assert(
    fc.property(fc.array(fc.tuple(field, field), { minLength: 1 }), (rows) => {
      const text = `${rows.map((row) => row.map(written).join("\t")).join("\n")}\n`;
      expect(paste(undefined, text)).toEqual(rows);
    }),
    { seed: 1, numRuns: 500 },
  );
});
