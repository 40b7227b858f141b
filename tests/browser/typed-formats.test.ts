import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
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

/** The shop's workbook, whose days are counted from 1904, with a day in B1 and a name that was left unresolved. */
async function from1904(): Promise<Uint8Array> {
  const parts = unzipSync(await shopWorkbook());
  const change = (part: string, from: RegExp | string, to: string) =>
    (parts[part] = strToU8(strFromU8(parts[part]!).replace(from, to)));
  change("xl/workbook.xml", /<workbookPr[^>]*\/>/, '<workbookPr date1904="1"/>');
  change("xl/worksheets/sheet1.xml", "_xldudf_DRAWER_BOXWIDTH", "DRAWER.BOXWIDTH");
  return zipSync(parts);
}

/** What was typed, the number that it is where days count from 1904, and the format that the file has it in. */
const TYPED: [string, number, string][] = [
  ["7%", 0.07, "0%"],
  // 2026-07-16 is day 46219 where days count from 1900, by LibreOffice too.
  ["2026-07-16", 46_219 - 1462, "yyyy-mm-dd"],
  ["$1,234.50", 1234.5, '"$"#,##0.00'],
  ["7/16", 0.4375, "# ??/??"],
];

test("a percentage, a date and money look the same when they are typed, after a reload, and in the saved file", async () => {
  await visit.open("shop.xlsx", await from1904());
  await visit.page
    .getByText(
      "shop.xlsx is open. 1 call of a function that the spreadsheet program had not resolved is worked out, and is saved in the form that it resolves.",
    )
    .waitFor({ timeout: 20_000 });
  for (const [i, [text]] of TYPED.entries()) await visit.enter(`D${i + 10}`, text);
  await visit.enter("D14", "=DRAWER.BOXWIDTH(24.5)");
  const shown = async () => {
    await visit.goTo("D10");
    for (let i = 1; i < TYPED.length; i++) await visit.page.keyboard.press("Shift+ArrowDown");
    await visit.page.keyboard.press("Control+c");
    const lines = (await visit.page.evaluate(() => navigator.clipboard.readText())).replace(/\n$/, "").split("\n");
    return lines.map((line) => line.trim().replaceAll(/\s+/g, " "));
  };
  const looks = TYPED.map(([text]) => text);
  await expect.poll(shown).toEqual(looks);

  await visit.reload();
  await expect.poll(shown).toEqual(looks);

  const { bytes } = await visit.save();
  const read = new ExcelJS.Workbook();
  await read.xlsx.load(Buffer.from(bytes) as never);
  const sheet = read.getWorksheet("Job")!;
  const cell = (text: string) => new RegExp(`<c r="${text}"[^>]*>.*?<v>([^<]*)</v>`).exec(xml)![1];
  const xml = strFromU8(unzipSync(bytes)["xl/worksheets/sheet1.xml"]!);
  for (const [i, [, value, format]] of TYPED.entries()) {
    expect([format, sheet.getCell(`D${i + 10}`).numFmt, Number(cell(`D${i + 10}`))]).toEqual([format, format, value]);
  }
  expect(sheet.getCell("D11").value).toEqual(new Date("2026-07-16T00:00:00Z"));
  expect(sheet.getCell("D14").numFmt).toBe("# ??/??");

  await visit.open("again.xlsx", bytes);
  await visit.page.getByText("again.xlsx is open.", { exact: true }).waitFor();
  await expect.poll(shown).toEqual(looks);
}, 300_000);
