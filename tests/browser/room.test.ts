import ExcelJS from "exceljs";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { oneSheet } from "../workbook/support/handmade";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;

vi.setConfig({ testTimeout: 180_000 });

beforeAll(async () => {
  desk = await openDesk();
  visit = await desk.visit();
});
afterAll(() => desk.close());
beforeEach(() => visit.startOver());
afterEach(() => expect(visit.faults).toEqual([]));

async function open(name: string, fill: (sheet: ExcelJS.Worksheet) => void): Promise<void> {
  const workbook = new ExcelJS.Workbook();
  fill(workbook.addWorksheet("Shop"));
  await visit.open(name, new Uint8Array(await workbook.xlsx.writeBuffer()));
  await visit.page.getByText(`${name} is open.`).waitFor();
}

/** Waits until a cell shows something, as it is copied. */
async function expectShown(cell: string, text: string): Promise<void> {
  await visit.goTo(cell);
  const shown = async () => {
    await visit.page.keyboard.press("Control+c");
    return (await visit.page.evaluate(() => navigator.clipboard.readText())).trim();
  };
  await expect.poll(shown).toBe(text);
}

/** Steps with the keys, which end at the sheet's edge. */
async function press(key: string, times = 1): Promise<string> {
  for (let i = 0; i < times; i++) await visit.page.keyboard.press(key);
  return (await visit.selection()).address;
}

/** The keys select what stands together first, and then everything. */
async function selectAll(): Promise<void> {
  const selected = async () => {
    await visit.page.keyboard.press("Control+a");
    return visit.page.locator("#grid input").first().inputValue();
  };
  await expect.poll(selected).toMatch(/^(1:1048576|A:XFD)$/);
}

const refusal = () => visit.page.getByRole("alert").textContent();

describe("a sheet's room", () => {
  test("is 200 rows and 26 columns on an empty sheet", async () => {
    await open("blank.xlsx", () => undefined);
    await visit.goTo("A1");
    expect(await press("Control+ArrowDown")).toBe("Shop!A200");
    await open("blank.xlsx", () => undefined);
    await visit.goTo("A1");
    expect(await press("Control+ArrowRight")).toBe("Shop!Z1");
  });

  test("reaches well beyond what is used, and beyond the cell that is selected in the file", async () => {
    await open("long.xlsx", (sheet) => {
      sheet.getCell("AZ900").value = 1;
      sheet.views = [{ state: "normal", activeCell: "B950" }];
    });
    await expect.poll(async () => (await visit.selection()).address).toBe("Shop!B950");
    await visit.goTo("B950");
    expect(await press("Control+ArrowDown")).toBe("Shop!B1050");
    await visit.goTo("A1");
    expect(await press("Control+ArrowRight")).toBe("Shop!BM1");
  });

  test("grows where one comes near its edge, step by step and jump by jump", async () => {
    await open("blank.xlsx", () => undefined);
    await visit.goTo("Z195");
    expect(await press("ArrowDown", 20)).toBe("Shop!Z215");
    expect(await press("ArrowRight", 5)).toBe("Shop!AE215");
    await visit.goTo("A1");
    await press("Control+ArrowDown");
    expect((await visit.selection()).address).not.toBe("Shop!A200");
  });

  test("grows where a cell beyond it is gone to, and what is typed there is seen, worked out and saved", async () => {
    await open("blank.xlsx", () => undefined);
    await visit.enter("AB1200", "=DRAWER.BOXWIDTH(24)");
    await visit.expectValue("AB1200", 23);
    await expectShown("AB1200", "23");
    const { bytes } = await visit.save();
    const read = new ExcelJS.Workbook();
    await read.xlsx.load(Buffer.from(bytes) as never);
    expect(read.getWorksheet("Shop")!.getCell("AB1200").result).toBe(23);
  });

  test("ends where a file's sheet does: the last cell is gone to, and what is no cell is refused in words", async () => {
    await open("blank.xlsx", () => undefined);
    await visit.enter("A1", "=XFD1048576+1");
    await visit.goTo("XFD1048576");
    await visit.page.keyboard.type("24");
    await visit.page.keyboard.press("Enter");
    await visit.expectValue("A1", 25);
    const box = visit.page.locator("#grid input").first();
    await box.click();
    await box.fill("A1048577");
    await box.press("Enter");
    await expect.poll(refusal).toContain("There is no such cell");
    expect((await visit.selection()).address).toBe("Shop!A1");
  });

  test("holds every result that spills", async () => {
    await open("blank.xlsx", () => undefined);
    await visit.enter("Y190", "=SEQUENCE(300,40)");
    await visit.expectValue("Y190", 1);
    await visit.expectValue("BL489", 12_000);
    await expectShown("BL489", "12000");
    await visit.goTo("BL489");
    expect(await press("ArrowDown", 3)).toBe("Shop!BL492");
  });

  test("holds what a formula of the file spills", async () => {
    await open("spill.xlsx", (sheet) => (sheet.getCell("A1").value = "left"));
    await visit.enter("A5", "=SEQUENCE(4000)");
    await visit.expectValue("A4004", 4000);
    const { bytes } = await visit.save();
    await visit.open("again.xlsx", bytes);
    await visit.page.getByText("again.xlsx is open.").waitFor();
    await expectShown("A4004", "4000");
  });

  test("holds what is pasted, from elsewhere and from the page", async () => {
    await open("blank.xlsx", () => undefined);
    const lines = Array.from({ length: 500 }, (_, i) => `${i + 1}\t${i + 2}`).join("\n");
    await visit.page.evaluate((text) => navigator.clipboard.writeText(text), lines);
    await visit.goTo("Z150");
    await visit.page.keyboard.press("Control+v");
    await visit.expectValue("AA649", 501);
    await visit.goTo("Z150");
    await press("Shift+ArrowRight");
    await press("Control+Shift+ArrowDown");
    await visit.page.keyboard.press("Control+c");
    await visit.goTo("AL700");
    await visit.page.keyboard.press("Control+v");
    await visit.expectValue("AM1199", 501);
    expect(await refusal()).toContain("blank.xlsx is open.");
  });
});

describe("a sheet with its first and its last cell", () => {
  beforeEach(() =>
    open("far.xlsx", (sheet) => {
      sheet.getCell("A1").value = 1;
      sheet.getCell("XFD1048576").value = "far";
    }),
  );

  test("is opened, edited, and cleared as a whole", async () => {
    await visit.enter("B2", "=A1+1");
    await visit.expectValue("B2", 2);
    await visit.goTo("C3");
    await selectAll();
    await visit.page.keyboard.press("Delete");
    await visit.expectValue("B2", "");
    await visit.expectValue("XFD1048576", "");
    await visit.page.keyboard.press("Control+z");
    await visit.expectValue("XFD1048576", "far");
    await visit.expectValue("B2", 2);
  });

  test("is not copied as a whole, and says so", async () => {
    await visit.goTo("C3");
    await selectAll();
    await visit.page.keyboard.press("Control+c");
    await expect.poll(refusal).toContain("more cells than can be copied");
    await visit.enter("B2", "=A1+1");
    await visit.expectValue("B2", 2);
  });
});

test("where a sheet has more rules about looks than are shown, the page says so when the file is opened", async () => {
  const rule = (priority: number) =>
    `<conditionalFormatting sqref="A1"><cfRule type="colorScale" priority="${priority}"><colorScale><cfvo type="min"/><cfvo type="max"/><color rgb="FFFFFFFF"/><color rgb="FF000000"/></colorScale></cfRule></conditionalFormatting>`;
  const rules = Array.from({ length: 1_500 }, (_, i) => rule(i + 1)).join("");
  await visit.open("rules.xlsx", oneSheet("", { after: rules }));
  await visit.page
    .getByText(
      "rules.xlsx is open. The sheet Bench has 1500 rules about looks; the first 1000 are shown, the others stay in the file.",
    )
    .waitFor();
});
