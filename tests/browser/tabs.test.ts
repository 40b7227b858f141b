import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import { unzipSync } from "fflate";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;
let shop: Uint8Array;

vi.setConfig({ testTimeout: 180_000 });

beforeAll(async () => {
  desk = await openDesk();
  shop = await threeSheets();
  visit = await desk.visit();
});
afterAll(() => desk.close());
beforeEach(async () => {
  visit.faults.length = 0;
  await visit.startOver();
  await visit.open("shop.xlsx", shop);
  // What was said of the last one still stands there.
  await visit.page.locator("#file-name").getByText("shop.xlsx", { exact: true }).waitFor();
  await expectNames("Job", "Wood", "Notes");
});
afterEach(() => expect(visit.faults).toEqual([]));

/** Job asks Wood for a width and a price, by name and by a defined name. */
async function threeSheets(): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const job = workbook.addWorksheet("Job");
  job.getCell("A1").value = { formula: "Wood!A1*2", result: 48 };
  job.getCell("A2").value = { formula: "SUM(Wood!A1:A2)+Price", result: 40 };
  const wood = workbook.addWorksheet("Wood");
  wood.getCell("A1").value = 24;
  wood.getCell("A2").value = 12;
  wood.getCell("B1").value = { formula: "A1-1", result: 23 };
  wood.getCell("A1").font = { bold: true };
  workbook.addWorksheet("Notes").getCell("A1").value = "Ask about the key.";
  workbook.definedNames.add("Wood!$A$3", "Price");
  wood.getCell("A3").value = 4;
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

const tab = (name: string) => visit.page.getByRole("tab", { name, exact: true });
const names = () => visit.page.getByRole("tab").allTextContents();
const expectNames = (...wanted: string[]) => expect.poll(names, { timeout: 15_000 }).toEqual(wanted);
const refusal = () => visit.page.getByRole("alert").textContent();

async function choose(sheet: string, item: string): Promise<void> {
  await tab(sheet).click({ button: "right" });
  await visit.page.getByRole("menuitem", { name: item }).click();
}

async function rename(sheet: string, name: string): Promise<void> {
  await tab(sheet).dblclick();
  await typeName(name);
}

async function typeName(name: string): Promise<void> {
  const label = visit.page.locator("[role=tab] [contenteditable]");
  await expect.poll(() => label.evaluate((one) => one === document.activeElement)).toBe(true);
  await visit.page.keyboard.press("Control+a");
  await visit.page.keyboard.type(name);
  await visit.page.keyboard.press("Enter");
}

const undo = () => visit.page.click("#undo");
const redo = () => visit.page.click("#redo");

/** The saved file as another library reads it: the sheets in their order, and Job's first two formulas. */
async function saved() {
  const { bytes } = await visit.save();
  const read = new ExcelJS.Workbook();
  await read.xlsx.load(Buffer.from(bytes) as never);
  const job = read.getWorksheet("Job");
  const cell = (at: string) => [job?.getCell(at).formula, job?.getCell(at).result];
  return {
    bytes,
    names: read.worksheets.map(({ name }) => name),
    cells: job && [cell("A1"), cell("A2")],
    read,
  };
}

/** What LibreOffice finds in the first sheet, as lines of values between commas. */
function calc(bytes: Uint8Array): string[] {
  const folder = mkdtempSync(join(tmpdir(), "tabs-"));
  try {
    writeFileSync(join(folder, "in.xlsx"), bytes);
    const profile = `-env:UserInstallation=file://${folder}/profile`;
    const to = ["--convert-to", "csv", "--outdir", folder, join(folder, "in.xlsx")];
    execFileSync("soffice", [profile, "--headless", ...to], { stdio: "ignore" });
    return readFileSync(join(folder, "in.csv"), "utf8").trim().split("\n");
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The parts in which two files differ. */
function differing(one: Uint8Array, other: Uint8Array): string[] {
  const [before, after] = [unzipSync(one), unzipSync(other)];
  return [...new Set([...Object.keys(before), ...Object.keys(after)])]
    .filter((part) => Buffer.compare(Buffer.from(before[part] ?? []), Buffer.from(after[part] ?? [])) !== 0)
    .sort();
}

describe("a sheet", () => {
  test("is added, undone, done again, filled, kept and saved", async () => {
    await visit.page.locator("#grid [data-u-comp=sheet-bar-append-button]").first().click();
    await expectNames("Job", "Sheet1", "Wood", "Notes");
    await visit.enter("A1", "=Wood!A1+Job!A1");
    await visit.expectValue("A1", 72);
    await undo();
    await undo();
    await expectNames("Job", "Wood", "Notes");
    await expect.poll(() => visit.page.textContent("#file-state")).toBe("");
    await redo();
    await redo();
    await expectNames("Job", "Sheet1", "Wood", "Notes");
    await visit.sheet("Sheet1");
    await visit.expectValue("A1", 72);
    await visit.reload();
    await expectNames("Job", "Sheet1", "Wood", "Notes");
    await visit.sheet("Sheet1");
    await visit.expectValue("A1", 72);
    const { bytes, names, read } = await saved();
    expect(names).toEqual(["Job", "Sheet1", "Wood", "Notes"]);
    expect(read.getWorksheet("Sheet1")!.getCell("A1").result).toBe(72);
    expect(calc(bytes)).toEqual(["48", "40"]);
    expect(differing(shop, bytes)).not.toContain("xl/worksheets/sheet2.xml");
  });

  test("is renamed, and formulas and names follow; undone, done again, kept and saved", async () => {
    await rename("Wood", "Oak & Ash's");
    await expectNames("Job", "Oak & Ash's", "Notes");
    await tab("Oak & Ash's").click({ button: "right" });
    await visit.page.getByRole("menuitem", { name: "Rename" }).waitFor();
    await visit.page.keyboard.press("Escape");
    await visit.sheet("Job");
    await visit.expectValue("A1", 48);
    expect((await visit.selection()).formula).toBe("='Oak & Ash''s'!A1*2");
    await undo();
    await expectNames("Job", "Wood", "Notes");
    await expect.poll(async () => (await visit.at("A1")).formula).toBe("=Wood!A1*2");
    await expect.poll(() => visit.page.textContent("#file-state")).toBe("");
    await redo();
    await expectNames("Job", "Oak & Ash's", "Notes");
    await visit.reload();
    await expectNames("Job", "Oak & Ash's", "Notes");
    expect((await visit.at("A1")).formula).toBe("='Oak & Ash''s'!A1*2");
    const { bytes, names, cells } = await saved();
    expect(names).toEqual(["Job", "Oak & Ash's", "Notes"]);
    expect(cells).toEqual([
      ["'Oak & Ash''s'!A1*2", 48],
      ["SUM('Oak & Ash''s'!A1:A2)+Price", 40],
    ]);
    expect(calc(bytes)).toEqual(["48", "40"]);
    expect(differing(shop, bytes)).toEqual(["docProps/app.xml", "xl/workbook.xml", "xl/worksheets/sheet1.xml"]);
  });

  test("is moved by the menu and by dragging; undone, done again, kept and saved", async () => {
    await choose("Wood", "Move to the right");
    await expectNames("Job", "Notes", "Wood");
    await undo();
    await expectNames("Job", "Wood", "Notes");
    await redo();
    await expectNames("Job", "Notes", "Wood");
    await drag("Wood", "Job");
    await expectNames("Wood", "Job", "Notes");
    await visit.sheet("Job");
    await visit.expectValue("A1", 48);
    await visit.reload();
    await expectNames("Wood", "Job", "Notes");
    const { bytes, names, cells } = await saved();
    expect(names).toEqual(["Wood", "Job", "Notes"]);
    expect(cells).toEqual([
      ["Wood!A1*2", 48],
      ["SUM(Wood!A1:A2)+Price", 40],
    ]);
    expect(calc(bytes)).toEqual(["24,23", "12,", "4,"]);
  });

  test("is deleted, and formulas say so; undone it comes back whole; done again, kept and saved", async () => {
    await visit.sheet("Wood");
    await visit.enter("A1", "30");
    await visit.sheet("Job");
    await visit.expectValue("A1", 60);
    await choose("Wood", "Delete");
    await expectNames("Job", "Notes");
    await visit.sheet("Job");
    await visit.expectValue("A1", "#REF!");
    await visit.expectValue("A2", "#REF!");
    await undo();
    await expectNames("Job", "Wood", "Notes");
    await visit.sheet("Job");
    await visit.expectValue("A1", 60);
    expect((await visit.selection()).formula).toBe("=Wood!A1*2");
    await visit.sheet("Wood");
    await visit.expectValue("B1", 29);
    await undo();
    await visit.expectValue("B1", 23);
    await redo();
    await visit.expectValue("B1", 29);
    await redo();
    await expectNames("Job", "Notes");
    await visit.reload();
    await expectNames("Job", "Notes");
    await visit.expectValue("A1", "#REF!");
    const { bytes, names, cells } = await saved();
    expect(names).toEqual(["Job", "Notes"]);
    expect(cells!.map(([, result]) => result)).toEqual([{ error: "#REF!" }, { error: "#REF!" }]);
    // Calc has no reference without a sheet, and calls it a name.
    expect(calc(bytes)).toEqual(["#NAME?", "#NAME?"]);
    expect(Object.keys(unzipSync(bytes))).not.toContain("xl/worksheets/sheet2.xml");
  });
});

describe("what is refused, is refused in words, and nothing changes", () => {
  test("the last sheet is not deleted", async () => {
    await choose("Wood", "Delete");
    await expectNames("Job", "Notes");
    await choose("Notes", "Delete");
    await expectNames("Job");
    await choose("Job", "Delete");
    await expect.poll(refusal).toMatch(/sheet/);
    await expectNames("Job");
    await visit.enter("B1", "5");
    await visit.expectValue("B1", 5);
  });

  test("a name that the spreadsheet program keeps for itself", async () => {
    await choose("Notes", "Rename");
    await typeName("History");
    await expect.poll(refusal).toContain("keeps the name History for itself");
    await expectNames("Job", "Wood", "Notes");
    await expect.poll(() => visit.page.textContent("#file-state")).toBe("");
  });

  test.each(["wood", "a/b", " ", "'quoted'"])("a name that may not be: %j", async (name) => {
    await rename("Notes", name);
    await expect.poll(refusal).toMatch(/named “wood” already|holds no \/|needs a name|apostrophe/);
    await expectNames("Job", "Wood", "Notes");
    expect(await visit.page.locator("[role=tab] [contenteditable], [role=dialog]").count()).toBe(0);
    await expect.poll(() => visit.page.textContent("#file-state")).toBe("");
  });

  test("a name that is given up by Escape", async () => {
    await choose("Notes", "Rename");
    await visit.page.locator("[role=tab] [contenteditable]").waitFor();
    await visit.page.keyboard.type("Wood 2");
    await visit.page.keyboard.press("Escape");
    await expectNames("Job", "Wood", "Notes");
    await expect.poll(() => visit.page.textContent("#file-state")).toBe("");
  });
});

describe("while sheets are being changed, nothing else is", () => {
  afterEach(() => answerAfter(0));

  test("keys are let go, undo waits for its turn, and nothing is lost", async () => {
    await visit.enter("B1", "5");
    await answerAfter(1_500);
    await choose("Wood", "Delete");
    await visit.page.keyboard.type("77");
    await visit.page.keyboard.press("Enter");
    for (let i = 0; i < 2; i++) await undo();
    await expect.poll(() => visit.page.textContent("#file-state"), { timeout: 15_000 }).toBe("");
    await expectNames("Job", "Wood", "Notes");
    for (let i = 0; i < 2; i++) await redo();
    await expectNames("Job", "Notes");
    await visit.sheet("Job");
    await visit.expectValue("B1", 5);
    const { names, read } = await saved();
    expect(names).toEqual(["Job", "Notes"]);
    expect(read.worksheets.flatMap((sheet) => sheet.getSheetValues().flat().filter(Boolean))).toHaveLength(4);
  });

  test("what was being typed is put into its cell before", async () => {
    await visit.goTo("B1");
    await visit.page.keyboard.type("=Wood!A2");
    await visit.page.locator("#grid [data-u-comp=sheet-bar-append-button]").first().click();
    await expectNames("Job", "Sheet1", "Wood", "Notes");
    await visit.sheet("Job");
    await visit.expectValue("B1", 12);
    await undo();
    await undo();
    await expectNames("Job", "Wood", "Notes");
    await expect.poll(() => visit.page.textContent("#file-state")).toBe("");
  });

  test("what is stopped leaves the sheets as they were, and its step where it was", async () => {
    const stop = () => visit.page.locator("#busy").getByRole("button", { name: "Stop" }).click();
    await choose("Wood", "Delete");
    await expectNames("Job", "Notes");
    await answerAfter(60_000);
    await undo();
    await stop();
    await expect.poll(refusal).toContain("The sheets are as they were.");
    await expectNames("Job", "Notes");
    await answerAfter(0);
    await undo();
    await expectNames("Job", "Wood", "Notes");
    await answerAfter(60_000);
    await redo();
    await stop();
    await expectNames("Job", "Wood", "Notes");
    await answerAfter(0);
    await redo();
    await expectNames("Job", "Notes");
    await visit.page.getByRole("button", { name: "Close this message" }).click();
  });
});

/** From now on what is asked about sheets comes to the worker some milliseconds later. */
async function answerAfter(milliseconds: number): Promise<void> {
  await visit.page.evaluate((milliseconds) => {
    type Post = (this: Worker, message: { kind?: string }) => void;
    const kept = window as unknown as { post?: Post };
    const post = (kept.post ??= Worker.prototype.postMessage as Post);
    Worker.prototype.postMessage = function (this: Worker, message: { kind?: string }) {
      if (message.kind === "sheets" && milliseconds > 0) setTimeout(() => post.call(this, message), milliseconds);
      else post.call(this, message);
    } as typeof Worker.prototype.postMessage;
  }, milliseconds);
}

test("the menu of a tab opens by a key, is gone through by keys, and Escape leads back to the tab", async () => {
  await tab("Job").focus();
  await visit.page.keyboard.press("Shift+F10");
  const item = (name: string) => visit.page.getByRole("menuitem", { name });
  await expect.poll(() => item("Add a sheet").evaluate((one) => one === document.activeElement)).toBe(true);
  expect(await item("Move to the left").isDisabled()).toBe(true);
  await visit.page.keyboard.press("ArrowUp");
  expect(await item("Delete").evaluate((one) => one === document.activeElement)).toBe(true);
  await visit.page.keyboard.press("Escape");
  expect(await item("Delete").isVisible()).toBe(false);
  expect(await tab("Job").evaluate((one) => one === document.activeElement)).toBe(true);
});

/** The library takes a tab that is held for half a second, and shows where it would go. */
async function drag(from: string, to: string): Promise<void> {
  await tab(from).click();
  await expect.poll(() => tab(from).getAttribute("aria-selected")).toBe("true");
  // A second press at once is that of a double one.
  await visit.page.waitForTimeout(400);
  const [start, end] = [(await tab(from).boundingBox())!, (await tab(to).boundingBox())!];
  const { mouse } = visit.page;
  await mouse.move(start.x + start.width / 2, start.y + start.height / 2);
  await mouse.down();
  await expect.poll(() => tab(from).evaluate(({ style }) => style.position)).toBe("fixed");
  await mouse.move(end.x + 2, end.y + end.height / 2, { steps: 12 });
  await expect.poll(() => tab(to).evaluate(({ style }) => style.transform)).toMatch(/translateX\((?!0px)/);
  await mouse.up();
}
