import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { WIDTH } from "./bench";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());
afterEach(async () => {
  expect(visit.faults).toEqual([]);
  await visit.close();
});

test("findings of the selected job stand in the pane, and one that is chosen selects the cell at fault on its sheet", async () => {
  visit = await desk.visit();
  const findings = visit.pane.locator("#findings");
  expect(await findings.isVisible()).toBe(false);
  await visit.enter(WIDTH, "18; 18 1/2");
  await visit.sheet("Plan");
  await visit.goTo("C7");
  const finding = findings.getByRole("button", { name: /The width is measured from 18 in to 18 1\/2 in/ });
  await findings.getByRole("heading", { name: "Findings: 0 wrong, 5 doubtful" }).click();
  await finding.focus();
  await visit.page.keyboard.press("Enter");
  await visit.pane.getByText(`Job!${WIDTH} is selected.`).waitFor();
  expect((await visit.selection()).address).toBe(`Job!${WIDTH}`);
  // The list stays, and its button keeps the keys, so that the next finding is one step away.
  expect(await finding.evaluate((button) => document.activeElement === button)).toBe(true);
  // Mended, it goes.
  await visit.enter(WIDTH, "18");
  await finding.waitFor({ state: "detached" });
  await findings.getByRole("heading", { name: /^Findings/ }).waitFor();
});
