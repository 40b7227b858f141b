import ExcelJS from "exceljs";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { openDesk, type Desk, type Visit } from "./desk";
import { shopWorkbook } from "./shop-workbook";

let desk: Desk;
let visit: Visit;

beforeAll(async () => {
  desk = await openDesk();
  visit = await desk.visit();
});
afterAll(() => desk.close());
afterEach(() => expect(visit.faults).toEqual([]));

/** A text, what stands in the cell afterwards, and what the cell shows. */
const TEXTS: [string, unknown, string][] = [
  ["7/16", 0.4375, "7/16"],
  ["24 1/16", 24.0625, "24 1/16"],
  ["23-7/16", 23.4375, "23 7/16"],
  ["5½", 5.5, "5 1/2"],
  [`1' 11 7/16"`, `1' 11 7/16"`, `1' 11 7/16"`],
  ["2'", "2'", "2'"],
  ["595 mm", "595 mm", "595 mm"],
  ["59,5 cm", "59,5 cm", "59,5 cm"],
  ["5 1/2; 1 part", "5 1/2; 1 part", "5 1/2; 1 part"],
  ["12-25", "12-25", "12-25"],
  ["24", 24, "24"],
  ["1,234.5", 1234.5, "1,234.50"],
  ["50%", 0.5, "50%"],
  ["2026-11-26", 46352, "2026-11-26"],
  // The library copies a truth as the number that it keeps.
  ["TRUE", true, "1"],
  ["'7/16", "7/16", "7/16"],
  ["=DRAWER.BOXWIDTH(24)", 23, "23"],
  ["=7/16", 0.4375, "0.4375"],
  ["sides, 4 off", "sides, 4 off", "sides, 4 off"],
];

/** ExcelJS makes a date of a number that has the format of one. */
const numberOf = (value: unknown): unknown =>
  value instanceof Date ? (value.getTime() - Date.UTC(1899, 11, 30)) / 86_400_000 : value;

const WAYS = [..."ABCDEFG"];

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** A program's table: each cell with a number format of that program's, which must make no dates of lengths. */
const table = (texts: readonly string[]): string =>
  `<html><head><style>.xl65 {mso-number-format:"m\\/d\\/yyyy";}</style></head><body><table>${texts
    .map((text) => `<tr><td class=xl65>${escaped(text)}</td></tr>`)
    .join("")}</table></body></html>`;

/** Puts texts on the clipboard and presses the keys for pasting. */
async function paste(cell: string, clipboard: { text: string; html?: string }): Promise<void> {
  await visit.page.evaluate(async ({ text, html }) => {
    const blob = (type: string, content: string) => new Blob([content], { type });
    const types = { "text/plain": blob("text/plain", text), ...(html ? { "text/html": blob("text/html", html) } : {}) };
    await navigator.clipboard.write([new ClipboardItem(types)]);
  }, clipboard);
  await visit.goTo(cell);
  await visit.page.keyboard.press("Control+v");
}

test("every text is the same in a cell, and looks the same, whichever way it comes in; and so it is saved", async () => {
  await visit.open("shop.xlsx", await shopWorkbook());
  await visit.page.getByText("shop.xlsx is open.").waitFor();
  const texts = TEXTS.map(([text]) => text);
  const first = 10;
  const column = (name: string) => texts.map((_, i) => `${name}${first + i}`);
  // A: typed. B: pasted one by one. C: pasted as lines. D, E: with tabs. F: as a table. G: copied in the page.
  for (const [i, text] of texts.entries()) await visit.enter(column("A")[i]!, text);
  for (const [i, text] of texts.entries()) await paste(column("B")[i]!, { text });
  await paste(`C${first}`, { text: texts.join("\r\n") });
  await paste(`D${first}`, { text: texts.map((text) => `${text}\t${text}`).join("\n") });
  await paste(`F${first}`, { text: texts.join("\n"), html: table(texts) });
  await visit.goTo(`A${first}`);
  for (let i = 1; i < texts.length; i++) await visit.page.keyboard.press("Shift+ArrowDown");
  await visit.page.keyboard.press("Control+c");
  await visit.goTo(`G${first}`);
  await visit.page.keyboard.press("Control+v");
  await visit.goTo(`A${first}`);
  for (let i = 1; i < WAYS.length; i++) await visit.page.keyboard.press("Shift+ArrowRight");
  for (let i = 1; i < texts.length; i++) await visit.page.keyboard.press("Shift+ArrowDown");
  const shown = async () => {
    await visit.page.keyboard.press("Control+c");
    const lines = (await visit.page.evaluate(() => navigator.clipboard.readText())).replace(/\n$/, "").split("\n");
    return lines.map((line) => line.split("\t").map((text) => text.trim().replaceAll(/\s+/g, " ")));
  };
  await expect.poll(shown).toEqual(TEXTS.map(([, , looks]) => WAYS.map(() => looks)));

  const { bytes } = await visit.save();
  const read = new ExcelJS.Workbook();
  await read.xlsx.load(Buffer.from(bytes) as never);
  const sheet = read.getWorksheet("Job")!;
  for (const [i, [text, value]] of TEXTS.entries()) {
    const saved = WAYS.map((way) => sheet.getCell(`${way}${first + i}`));
    const [typed] = saved;
    expect(saved.map((cell) => [text, cell.type, cell.numFmt, cell.result ?? numberOf(cell.value)])).toEqual(
      saved.map(() => [text, typed!.type, typed!.numFmt, value]),
    );
  }
  expect(sheet.getCell(`F${first}`).numFmt).toBe("# ??/??");
}, 300_000);
