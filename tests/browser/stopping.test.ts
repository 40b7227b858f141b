import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { BOX_WIDTH, FREE, HEIGHT, WIDTH } from "./bench";
import { openDesk, type Desk, type Visit } from "./desk";
import { shopWorkbook } from "./shop-workbook";

let desk: Desk;
let visit: Visit;
let slow: Uint8Array;

beforeAll(async () => {
  desk = await openDesk();
  slow = await shopWorkbook();
  visit = await desk.visit();
  await visit.page.route("**/worker.js", async (route) => {
    const body = CIRCLE + (await (await route.fetch()).text());
    await route.fulfill({ contentType: "text/javascript", body });
  });
  await visit.load();
});
afterAll(() => desk.close());
beforeEach(() => visit.startOver());
afterEach(() => expect(visit.faults).toEqual([]));

/** What nobody is ever done with, whatever the engine allows itself: the worker turns in a circle when it comes. */
const ENDLESS = "=ENDLESS()";
const CIRCLE = `let savesSlowly = false;
addEventListener("message", ({ data: { kind, question } }) => {
  savesSlowly ||= kind === "put" && JSON.stringify(question.edits).includes("slow to save");
  if (savesSlowly && kind === "save") for (;;);
  const isSlow = question.bytes && new TextDecoder("latin1").decode(question.bytes).includes("customXml");
  if (isSlow || JSON.stringify(question.edits ?? "").includes("ENDLESS")) for (;;);
});
`;

const busy = () => visit.page.locator("#busy");

test("what takes long to work out can be stopped; the page answers meanwhile, and the cell is as it was", async () => {
  await visit.goTo(WIDTH);
  await visit.page.keyboard.type(ENDLESS);
  await visit.page.keyboard.press("Enter");
  await busy().getByText("Working out what you changed…").waitFor();
  // The grid goes on meanwhile.
  await visit.goTo(HEIGHT);
  await busy().getByRole("button", { name: "Stop" }).click();
  await visit.page.getByRole("alert").getByText(`What was put into ${WIDTH} was taken back. It was stopped.`).waitFor();
  await visit.expectValue(WIDTH, "18");
  expect((await visit.selection()).formula).toBe("18");
  await visit.enter(WIDTH, "20");
  await visit.expectAt(BOX_WIDTH, 19);
  await visit.page.keyboard.press("Control+z");
  await visit.expectAt(BOX_WIDTH, 17);
});

test("to undo what was stopped leaves the cell as it is, and what was done before it is undone next", async () => {
  await visit.enter(WIDTH, "20");
  await visit.expectAt(BOX_WIDTH, 19);
  await visit.goTo(HEIGHT);
  await visit.page.keyboard.type(ENDLESS);
  await visit.page.keyboard.press("Enter");
  await busy().getByRole("button", { name: "Stop" }).click();
  await visit.page
    .getByRole("alert")
    .getByText(`What was put into ${HEIGHT} was taken back. It was stopped.`)
    .waitFor();
  await visit.page.keyboard.press("Control+z");
  await visit.expectValue(HEIGHT, "26 1/4");
  expect((await visit.selection()).formula).toBe("26 1/4");
  await visit.expectAt(BOX_WIDTH, 19);
  await visit.page.keyboard.press("Control+z");
  await visit.expectAt(BOX_WIDTH, 17);
});

test("where writing the file is stopped, nothing is said to be saved, and the next time it is written", async () => {
  await visit.enter(FREE, "slow to save");
  await visit.expectValue(FREE, "slow to save");
  await visit.page.click("#save");
  await busy().getByText("Writing the file…").waitFor();
  await busy().getByRole("button", { name: "Stop" }).click();
  await visit.page.getByRole("alert").getByText("The file was not written. It was stopped.").waitFor();
  expect(await visit.page.textContent("#file-state")).toContain("changed, not saved");
  await visit.enter(WIDTH, "20");
  await visit.expectAt(BOX_WIDTH, 19);
  const { bytes } = await visit.save();
  expect(bytes.length).toBeGreaterThan(10_000);
  await expect.poll(() => visit.page.textContent("#file-state")).toBe("");
});

test("a file that takes long to open can be stopped, and everything stays as it was", async () => {
  await visit.enter(WIDTH, "20");
  await visit.expectAt(BOX_WIDTH, 19);
  await visit.open("slow.xlsx", slow);
  await visit.page.getByRole("button", { name: "Go on without saving" }).click();
  await busy().getByText("Opening slow.xlsx…").waitFor();
  await busy().getByRole("button", { name: "Stop" }).click();
  await visit.page.getByRole("alert").getByText("slow.xlsx was not opened. It was stopped.").waitFor();
  expect(await visit.page.textContent("#file")).toContain("parts-bench.xlsx · changed, not saved");
  await visit.enter(WIDTH, "21");
  await visit.expectAt(BOX_WIDTH, 20);
});
