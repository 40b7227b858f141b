import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { lawWorkbooks } from "../workbook/support/law-workbooks";
import { openDesk, type Desk, type Visit } from "./desk";
import { INSIDE } from "./inside";

let desk: Desk;
let visit: Visit;
let before: string;

beforeAll(async () => {
  desk = await openDesk(INSIDE);
  visit = await desk.visit();
});
afterAll(() => desk.close());

/** C2 is worked out from B2, and A1 of Totals from B2:B4. */
beforeEach(async () => {
  const bytes = (await lawWorkbooks())["exceljs, full"]!;
  await visit.page.evaluate((bytes) => window.inside!.open(bytes, "bench.xlsx"), [...bytes]);
  await visit.page.evaluate(() => navigator.clipboard.writeText("from before"));
  before = await everything();
  await visit.page.evaluate(() => (document.querySelector("#notice p")!.textContent = ""));
});
afterEach(() => expect(visit.faults).toEqual([]));

/** All that the grid holds and shows. */
const everything = async (): Promise<string> =>
  JSON.stringify(await visit.page.evaluate(() => [window.inside!.structure(), window.inside!.shown("A1:D8")]));

async function expectRefused(words: string): Promise<void> {
  await expect.poll(() => visit.page.textContent("#notice p")).toContain(words);
  expect(await everything()).toBe(before);
  expect(await visit.page.evaluate(() => window.inside!.disagreement())).toBeUndefined();
  expect((await visit.at("C2")).formula).toBe("=B2-1");
}

const CUT = "Cells are not cut here";
const ELSE = "Only what stands in cells is changed here";

test.each(["Control+x", "Shift+Delete"])(
  "%s is refused in words, and nothing is on the clipboard to paste",
  async (keys) => {
    await visit.goTo("B2");
    await visit.page.keyboard.press(keys);
    await expectRefused(CUT);
    expect(await visit.page.evaluate(() => navigator.clipboard.readText())).toBe("from before");
  },
);

test("a part of the text that is being typed is cut as everywhere", async () => {
  await visit.goTo("B6");
  await visit.page.keyboard.type("oak");
  await visit.page.keyboard.press("Control+a");
  await visit.page.keyboard.press("Control+x");
  await visit.page.keyboard.type("ash");
  await visit.page.keyboard.press("Enter");
  await visit.expectValue("B6", "ash");
  expect(await visit.page.textContent("#notice p")).toBe("");
});

async function drag(from: { x: number; y: number }, by: { x: number; y: number }): Promise<void> {
  const { mouse } = visit.page;
  await mouse.move(from.x, from.y);
  await mouse.down();
  for (let i = 1; i <= 6; i++) await mouse.move(from.x + (by.x * i) / 6, from.y + (by.y * i) / 6);
  await mouse.up();
}

test("cells that are dragged by their frame stay where they are, in words", async () => {
  await visit.goTo("B2");
  await drag(await visit.page.evaluate(() => window.inside!.edgeOf(1, 1)), { x: 0, y: 90 });
  await expectRefused(ELSE);
});

test("a column that is dragged by its heading stays where it is", async () => {
  const edge = await visit.page.evaluate(() => window.inside!.edgeOf(0, 1));
  const canvas = (await visit.page.locator("#grid canvas").first().boundingBox())!;
  const heading = { x: edge.x - 30, y: canvas.y + 10 };
  await visit.page.mouse.click(heading.x, heading.y);
  await drag(heading, { x: 160, y: 0 });
  expect(await everything()).toBe(before);
  expect(await visit.page.evaluate(() => window.inside!.disagreement())).toBeUndefined();
});

test("the other button of the mouse opens no menu of things that are refused", async () => {
  const edge = await visit.page.evaluate(() => window.inside!.edgeOf(1, 1));
  await visit.page.mouse.click(edge.x - 20, edge.y, { button: "right" });
  expect(await visit.page.getByText("Cut", { exact: true }).count()).toBe(0);
  await visit.page.keyboard.press("Escape");
});
