import type { Route } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { BOX_WIDTH, WIDTH } from "./bench";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;

beforeAll(async () => void (desk = await openDesk()));
afterAll(() => desk.close());
afterEach(async () => {
  expect(visit.faults).toEqual([]);
  await visit.close();
});

/** Holds a file back until it is let go. */
async function hold(visit: Visit, file: string): Promise<{ asked: Promise<void>; letGo(): void }> {
  let letGo = (): void => undefined;
  let tell = (): void => undefined;
  const held = new Promise<void>((resolve) => (letGo = resolve));
  const asked = new Promise<void>((resolve) => (tell = resolve));
  await visit.page.route(file, async (route: Route) => {
    tell();
    await held;
    await route.continue();
  });
  return { asked, letGo };
}

test("the example is there before a worker is, and what is typed meanwhile is worked out once it is", async () => {
  let worker!: Awaited<ReturnType<typeof hold>>;
  visit = await desk.visit({}, async (visit) => (worker = await hold(visit, "**/worker.js")));
  await worker.asked;
  await visit.expectAt(BOX_WIDTH, 17);
  await expect.poll(() => visit.page.locator("#busy").isVisible()).toBe(false);
  await visit.enter(WIDTH, "20");
  await visit.page.locator("#busy").getByText("Working the workbook out as it was…").waitFor();
  worker.letGo();
  await visit.expectAt(BOX_WIDTH, 19);
  await visit.page.locator("#busy").waitFor({ state: "hidden" });
  await visit.page.keyboard.press("Control+z");
  await visit.expectAt(BOX_WIDTH, 17);
});

test("with work that was kept, a worker has begun before the grid's library has come", async () => {
  visit = await desk.visit();
  await visit.enter(WIDTH, "20");
  await visit.expectAt(BOX_WIDTH, 19);
  await visit.untilKept();
  const library = await hold(visit, "**/parts/page-*.js");
  const worker = visit.page.waitForRequest("**/worker.js");
  visit.page.once("dialog", (dialog) => void dialog.accept());
  await visit.page.reload({ waitUntil: "commit" });
  await library.asked;
  await worker;
  library.letGo();
  await visit.ready();
  await visit.expectAt(BOX_WIDTH, 19);
});

test("where the example's files do not come, the example is laid out in the page", async () => {
  visit = await desk.visit({}, ({ page }) => page.route("**/parts-bench.*", (route) => route.abort()));
  await visit.expectAt(BOX_WIDTH, 17);
  const missing = visit.faults.splice(0);
  expect(missing).toHaveLength(2);
  expect(missing.every((fault) => fault.includes("Failed to load resource"))).toBe(true);
});
