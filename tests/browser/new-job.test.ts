import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());
beforeEach(async () => {
  visit = await desk.visit();
});

const ask = async () => {
  await visit.page.getByRole("button", { name: "New job…" }).click();
  return visit.page.getByRole("dialog", { name: "A job of your own" });
};
const begun = async () => {
  await visit.page.getByText("my-job.xlsx").waitFor();
  await visit.page.waitForFunction(() => !document.querySelector<HTMLElement>("#desk")!.inert);
};

describe("a new job, begun on the page", () => {
  test("is planned from what is typed into one sheet: an undermount kitchen drawer in inches", async () => {
    const dialog = await ask();
    await dialog.getByLabel("Slides").selectOption("undermount");
    await dialog.getByLabel("Undermount deduction").fill("1 21/32");
    await dialog.getByLabel("Undermount depth difference").fill("3/8");
    await dialog.getByLabel("Undermount hook hole").fill("None");
    await dialog.getByLabel("Box sides").fill("5/8");
    await dialog.getByRole("button", { name: "Begin" }).click();
    await begun();
    await visit.enter("B6", "33 1/2");
    await visit.enter("E6", "3");
    await visit.sheet("Plan");
    // 33 1/2 less the deduction, and two sides of 5/8.
    await visit.expectValue("F6", 33.5 - 53 / 32 + 1.25);
    // A slide of 22, less the difference.
    await visit.expectValue("H6", 21.625);
    await visit.expectValue("A8", "A3");
    expect(visit.faults).toEqual([]);
  });

  test("asks again where a size is none, and leaves everything as it was where it is not wanted", async () => {
    const dialog = await ask();
    await dialog.getByLabel("Box sides").fill("thick");
    await dialog.getByRole("button", { name: "Begin" }).click();
    await dialog.getByText("Box sides: write a length, such as 1/2 or 12 mm.").waitFor();
    await dialog.getByRole("button", { name: "Cancel" }).click();
    await dialog.waitFor({ state: "hidden" });
    expect(await visit.page.textContent("#file-name")).toBe("parts-bench.xlsx");
  });

  test("asks for a size of the data sheet by its name, and shows it where it is undermount alone", async () => {
    const dialog = await ask();
    const notch = dialog.getByLabel("Undermount notch width");
    expect(await notch.isVisible()).toBe(false);
    await dialog.getByLabel("Slides").selectOption("undermount");
    await notch.fill("wide");
    await dialog.getByRole("button", { name: "Begin" }).click();
    await dialog.getByText("Undermount notch width: write a length, such as 1/2 or 12 mm, or none.").waitFor();
    expect(await dialog.getByText("Undermount notch width: write").isVisible()).toBe(true);
    await dialog.getByLabel("Slides").selectOption("side-mount");
    await dialog.getByRole("button", { name: "Begin" }).click();
    await begun();
  });

  test("begins from cabinets by their outside sizes, and plans the openings in them", async () => {
    const dialog = await ask();
    await dialog.getByLabel("I have the sizes of").selectOption("cabinets");
    await dialog.getByRole("button", { name: "Begin" }).click();
    await begun();
    await visit.enter("B6", "24");
    await visit.sheet("Openings");
    // Less two ends of 3/4.
    await visit.expectValue("C6", 22.5);
    await visit.sheet("Plan");
    await visit.expectValue("F6", 21.5);
  });

  test("takes millimeters, with sides as they are bought in them", async () => {
    const dialog = await ask();
    expect(await dialog.getByLabel("Undermount deduction").isVisible()).toBe(false);
    await dialog.getByLabel("Plain numbers are").selectOption("mm");
    expect(await dialog.getByLabel("Box sides").inputValue()).toBe("12");
    await dialog.getByRole("button", { name: "Begin" }).click();
    await begun();
    await visit.sheet("Plan");
    // 450 less 12.7 on each side.
    await visit.expectValue("F6", 424.6);
  });
});
