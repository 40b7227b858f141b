import ExcelJS from "exceljs";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;

vi.setConfig({ testTimeout: 180_000 });

beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

const TEXTS = {
  A1: "x".repeat(10_000),
  A2: "long words ".repeat(900).trim(),
  // As many as a cell holds.
  A3: "y".repeat(32_767),
  A4: "line\n".repeat(1_200).trim(),
  A5: "z".repeat(3_900),
};

async function open(): Promise<void> {
  visit = await desk.visit();
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Notes");
  for (const [cell, text] of Object.entries(TEXTS)) {
    sheet.getCell(cell).value = text;
    if (text.includes("\n")) sheet.getCell(cell).alignment = { wrapText: true };
  }
  await visit.open("notes.xlsx", new Uint8Array(await workbook.xlsx.writeBuffer()));
  await visit.page.getByText("notes.xlsx is open.").waitFor();
}

const heap = async (): Promise<number> => {
  const session = await visit.page.context().newCDPSession(visit.page);
  await session.send("HeapProfiler.collectGarbage");
  return (await session.send("Runtime.getHeapUsage")).usedSize / 1e6;
};

/** A text of several lines stands in quotation marks. */
const copied = async (): Promise<string> =>
  (await visit.page.evaluate(() => navigator.clipboard.readText())).replaceAll("\r", "").trim().replace(/^"|"$/g, "");

const saved = async () => {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(Buffer.from((await visit.save()).bytes) as never);
  return (cell: string) => workbook.getWorksheet("Notes")!.getCell(cell).value;
};

describe("texts of thousands of characters", () => {
  test("are shown and selected in little memory, and are whole where they are copied and saved", async () => {
    await open();
    for (const [cell, text] of Object.entries(TEXTS)) {
      await visit.goTo(cell);
      await visit.page.keyboard.press("Control+c");
      await expect.poll(copied).toBe(text);
      expect((await visit.selection()).value).toBe(text);
    }
    await visit.goTo("A2");
    await visit.page.keyboard.press("Control+c");
    await visit.goTo("D2");
    await visit.page.keyboard.press("Control+v");
    await visit.expectValue("D2", TEXTS.A2);
    await visit.enter("C1", "7");
    const values = await saved();
    for (const [cell, text] of Object.entries(TEXTS)) expect(values(cell)).toBe(text);
    expect(values("C1")).toBe(7);
    expect(values("D2")).toBe(TEXTS.A2);
    expect(await heap()).toBeLessThan(200);
    expect(visit.faults).toEqual([]);
    await visit.close();
  });

  test("are not changed where only their beginning is laid out, and are told to be too long for that", async () => {
    await open();
    for (const cell of ["A1", "A3", "A4"] as const) {
      await visit.goTo(cell);
      await visit.page.keyboard.press("F2");
      await visit.page.keyboard.press("Enter");
      expect((await visit.at(cell)).value).toBe(TEXTS[cell]);
      await visit.page.keyboard.press("F2");
      await visit.page.keyboard.type("more");
      await visit.page.keyboard.press("Enter");
      await visit.page
        .getByText(
          `This cell holds ${TEXTS[cell].length.toLocaleString("en-US")} characters. More than 4,000 are changed in the spreadsheet program; here a new text may be typed over them.`,
        )
        .waitFor();
      expect((await visit.at(cell)).value).toBe(TEXTS[cell]);
    }
    expect(await visit.page.textContent("#file-state")).toBe("");
    await visit.enter("A1", "short");
    await visit.expectValue("A1", "short");
    await visit.page.click("#undo");
    await visit.expectValue("A1", TEXTS.A1);
    await visit.goTo("A5");
    await visit.page.keyboard.press("F2");
    await visit.page.keyboard.type("!");
    await visit.page.keyboard.press("Enter");
    await visit.expectValue("A5", `${TEXTS.A5}!`);
    expect(visit.faults).toEqual([]);
    await visit.close();
  });
});
