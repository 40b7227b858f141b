import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());
afterEach(async () => {
  expect(visit.faults).toEqual([]);
  expect(visit.elsewhere).toEqual([]);
  await visit.close();
});

const found = (name: string) =>
  visit.pane.locator("#found .front", { has: visit.pane.getByText(name, { exact: true }) });

test("a word of the trade is found with its meaning and a picture, and a standard goes into two cells that are empty", async () => {
  visit = await desk.visit();
  await visit.goTo("N40");
  await visit.pane.locator("#query").fill("gap");
  await found("gap").locator("summary").click();
  await found("gap")
    .getByRole("img", { name: /Front elevation/ })
    .waitFor();
  await found("gap").locator('[data-of="front gap"]').getByText("Gap 1/2 in").waitFor();
  await found("front gap").locator("summary").click();
  await found("front gap").getByRole("button", { name: "Insert front gap, 3 mm" }).click();
  await visit.pane.getByText("front gap, 3 mm now stands in Job!N40:O40.").waitFor();
  expect([(await visit.at("N40")).value, (await visit.at("O40")).value]).toEqual(["front gap", "3 mm"]);
  await visit.goTo("M40");
  await found("front gap").getByRole("button", { name: "Insert front gap, 1/8 in" }).click();
  await visit.pane.getByText("Job!M40:N40 is not empty and was left as it is.").waitFor();
  expect((await visit.at("M40")).value).toBe("");
  // Both cells are one step back.
  await visit.page.keyboard.press("Control+z");
  await visit.expectValue("N40", "");
  await visit.expectValue("O40", "");
  await visit.pane.locator("#query").fill("undermount");
  await visit.pane.getByRole("link", { name: "Slides and runners: Undermount slides" }).click();
  await visit.pane.frameLocator("#reader iframe").getByRole("heading", { name: "Undermount slides" }).waitFor();
});

test("at 320 px nothing in the pane is wider than it, every list and every find open", async () => {
  visit = await desk.visit({ viewport: { width: 320, height: 800 } });
  await visit.page.click("#functions");
  const lists = visit.pane.locator("#lists");
  const open = () =>
    lists.evaluate(async (place) => {
      for (const _ of ["lists", "cards in them"]) {
        for (const details of place.querySelectorAll("details")) details.open = true;
        await new Promise((done) => setTimeout(done, 300));
      }
      const beyond = [...place.querySelectorAll("*")].filter(
        (part) => !part.closest(".wide, .picture") && part.getBoundingClientRect().right > innerWidth + 0.5,
      );
      return {
        wider: place.scrollWidth - place.clientWidth,
        beyond: beyond.map(({ outerHTML }) => outerHTML),
        count: place.querySelectorAll("details[open]").length,
      };
    });
  const all = await open();
  expect(all).toMatchObject({ wider: 0, beyond: [] });
  expect(all.count).toBeGreaterThan(130);
  for (const query of ["front", "undermount", "tax", "sheets"]) {
    await visit.pane.locator("#query").fill(query);
    expect(await open(), query).toMatchObject({ wider: 0, beyond: [] });
  }
});
