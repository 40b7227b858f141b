import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { oneSheet } from "../workbook/support/handmade";
import { openDesk, type Desk, type Visit } from "./desk";
import { INSIDE } from "./inside";

let desk: Desk;
let visit: Visit;

beforeAll(async () => {
  desk = await openDesk(INSIDE);
  visit = await desk.visit();
  await visit.page.waitForFunction(() => window.inside);
  await visit.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
});
afterAll(() => desk.close());
beforeEach(async () => {
  await visit.page.evaluate((bytes) => window.inside!.open(bytes, "bench.xlsx"), [...oneSheet("")]);
});
afterEach(async () => {
  expect(await visit.page.evaluate(() => window.inside!.disagreement())).toBeUndefined();
  expect(visit.faults).toEqual([]);
});

/** Sees what is read in B2:B5, and that it is drawn without anything else being done. */
async function expectShown(texts: string[]): Promise<void> {
  await expect.poll(async () => (await visit.page.evaluate(() => window.inside!.shown("B2:B5"))).flat()).toEqual(texts);
  expect(await visit.page.evaluate(() => window.inside!.undrawn())).toBeUndefined();
}

const undo = () => visit.page.keyboard.press("Control+z");
const redo = () => visit.page.keyboard.press("Control+y");

const FORMULA = '=DRAWER.FRONTHEIGHTS("27 5/8","1 part; 2 parts; 2 parts",,,,"1/16")';
const TABLE = ["5 7/16", "10 15/16", "11", ""];
const NOTHING = ["", "", "", ""];

test("a formula that is typed shows all that it spills at once, undone and done again", async () => {
  await visit.enter("B2", FORMULA);
  await expectShown(TABLE);
  await undo();
  await expectShown(NOTHING);
  await redo();
  await expectShown(TABLE);
  await visit.goTo("B2");
  await visit.page.keyboard.press("Delete");
  await expectShown(NOTHING);
  await undo();
  await expectShown(TABLE);
});

test("a formula that the pane inserts shows all that it spills at once", async () => {
  await visit.goTo("B2");
  await visit.page.evaluate((formula) => window.spreadsheetHost!.then((host) => host.insertFormula(formula)), FORMULA);
  await expectShown(TABLE);
});

test("what stands in the way of a spill takes its table from the screen at once, and gives it back", async () => {
  await visit.enter("B2", FORMULA);
  await expectShown(TABLE);
  await visit.enter("B3", "7");
  await expectShown(["#SPILL!", "7", "", ""]);
  await undo();
  await expectShown(TABLE);
  await redo();
  await expectShown(["#SPILL!", "7", "", ""]);
  await visit.goTo("B3");
  await visit.page.keyboard.press("Delete");
  await expectShown(TABLE);
  await undo();
  await expectShown(["#SPILL!", "7", "", ""]);
});

test("to delete or paste nothing into what was spilled leaves it on the screen", async () => {
  await visit.enter("B2", FORMULA);
  await visit.goTo("B3");
  await visit.page.keyboard.press("Delete");
  await expectShown(TABLE);
  await visit.goTo("D9");
  await visit.page.keyboard.press("Control+c");
  await visit.goTo("B4");
  await visit.page.keyboard.press("Control+v");
  await expectShown(TABLE);
});

test("spilled cells are copied as their values: numbers with their formats in the grid, texts elsewhere", async () => {
  await visit.enter("B2", FORMULA);
  await visit.goTo("B3");
  await visit.page.keyboard.press("Shift+ArrowDown");
  await visit.page.keyboard.press("Control+c");
  await expect.poll(() => visit.page.evaluate(() => navigator.clipboard.readText())).toMatch(/10\s+15\/16/);
  const copied = await visit.page.evaluate(async () => {
    const [item] = await navigator.clipboard.read();
    const of = async (type: string) => (await item!.getType(type)).text();
    return { text: await of("text/plain"), html: await of("text/html") };
  });
  expect(copied.text.trim().split(/\s*\n\s*/)).toEqual([expect.stringMatching(/^10\s+15\/16$/), "11"]);
  expect(copied.html.replaceAll(/<[^>]*>/g, " ")).toMatch(/10\s+15\/16\s+11/);
  await visit.goTo("D2");
  await visit.page.keyboard.press("Control+v");
  await expect.poll(() => visit.page.evaluate(() => window.inside!.shown("D2:D3"))).toEqual([["10 15/16"], ["11"]]);
  expect(await visit.at("D2")).toMatchObject({ formula: "10.9375", value: 10.9375 });
  await visit.enter("E2", "=SUM(D2:D3)");
  await visit.expectValue("E2", 21.9375);
});

test("a cell of a spill that was emptied before is copied as what it shows", async () => {
  await visit.enter("B2", FORMULA);
  await visit.goTo("B3");
  await visit.page.keyboard.press("Delete");
  await expectShown(TABLE);
  await visit.page.keyboard.press("Control+c");
  await visit.goTo("D2");
  await visit.page.keyboard.press("Control+v");
  await expect.poll(() => visit.page.evaluate(() => window.inside!.shown("D2:D2"))).toEqual([["10 15/16"]]);
  expect(await visit.at("D2")).toMatchObject({ formula: "10.9375", value: 10.9375 });
});
