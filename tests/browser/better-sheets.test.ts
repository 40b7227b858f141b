import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { WIDTH } from "./bench";
import { openDesk, type Desk } from "./desk";

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

describe("better sheets while you wait", () => {
  test("a search begins at a cell of SHEETS, shows what it found, and its layout is written as a sheet that formulas follow", async () => {
    const visit = await desk.visit();
    const section = visit.pane.locator("#better");
    await visit.goTo("A1");
    expect(await section.isVisible()).toBe(false);
    await visit.sheet("Sheets");
    await visit.goTo("A7");
    const before = (await visit.at("D6")).value as number;
    await section.getByRole("button", { name: "Search for fewer sheets" }).click();
    await section.getByText(/^\d+ sheets?.*(Nothing less is possible|goes on)/).waitFor();
    await section.getByRole("img", { name: "Layout of sheet 1" }).waitFor();
    const stop = section.getByRole("button", { name: "Stop" });
    if (await stop.isVisible()) await stop.click();
    await section.getByRole("button", { name: "Write as a layout" }).click();
    await visit.pane.getByText("The layout stands on the sheet Better sheets.").waitFor();
    await visit.sheet("Better sheets");
    expect((await visit.at("A3")).value).toBe("The parts are those that were searched for.");
    expect((await visit.at("A5")).value).toBe("Sheet");
    expect((await visit.at("L5")).value).toBe("Material");
    expect((await visit.at("O6")).value as number).toBeLessThanOrEqual(before);
    expect((await visit.at("V5")).value).toBe("Sheet");
    // Whoever changes an opening is told.
    await visit.sheet("Job");
    await visit.enter(WIDTH, "20");
    await visit.sheet("Better sheets");
    expect((await visit.at("A3")).value).toBe("The parts have changed since: search again.");
    expect(visit.faults).toEqual([]);
    expect(visit.elsewhere).toEqual([]);
    await visit.close();
  });
});
