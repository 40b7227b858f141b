import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { writeWorkbook } from "../../src/workbook/author/index";
import { openWorkbook } from "../../src/workbook/xlsx/open-workbook";
import { paneFrame, violations } from "./axe";
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

  test("shows the bench in millimeters too, with sides as they are bought in them", async () => {
    const dialog = await ask();
    expect(await dialog.getByLabel("Undermount deduction").isVisible()).toBe(false);
    await dialog.getByLabel("I have the sizes of").selectOption("bench");
    await dialog.getByLabel("Plain numbers are").selectOption("mm");
    expect(await dialog.getByLabel("Box sides").inputValue()).toBe("12");
    await dialog.getByRole("button", { name: "Begin" }).click();
    await begun();
    await visit.sheet("Plan");
    // 450 less 12.7 on each side.
    await visit.expectValue("F6", 424.6);
    await visit.expectValue("A13", "C2");
  });
});

/** An invented saddler's own list, with a note that is no part of it. */
const saddlersList = (): Uint8Array =>
  writeWorkbook({
    styles: { plain: {}, head: { font: { bold: true } } },
    names: { rates: "'Leather & tools'!$B$3" },
    sheets: [
      {
        ...{ name: "Leather & tools", widths: [4, 12, 10], merged: [], selected: "B3" },
        rows: [
          { cells: [] },
          { cells: [] },
          ...[
            ["Bay", "W (in)", "Tall", "Deep", "Drawer count"],
            ["Awls", "18 1/16", 26, "22 1/2", 3],
            ["Hides", 24, "", "22 1/2", 2],
          ].map((cells, row) => ({
            cells: [null, ...cells.map((content) => ({ style: row === 0 ? "head" : "plain", content }) as const)],
          })),
        ],
      },
    ],
  });

test("a job follows a table that the shop already has, on sheets beside it: what was there stays, and what is typed there is planned", async () => {
  await visit.open("saddler.xlsx", saddlersList());
  await visit.page.getByText("saddler.xlsx is open.").waitFor();
  // The pane's own way to a copy with values leads to the page's dialog.
  await visit.pane.getByRole("button", { name: "Freeze…" }).click();
  await visit.page.locator("#freeze-copy[open]").waitFor();
  await visit.page.keyboard.press("Escape");
  await visit.enter("C4", "19 1/16");
  await visit.goTo("B3");
  for (const key of ["ArrowDown", "ArrowDown", ...Array<string>(4).fill("ArrowRight")])
    await visit.page.keyboard.press(`Shift+${key}`);
  await visit.pane.getByRole("button", { name: "Beside this workbook…" }).click();
  await visit.pane.getByRole("button", { name: "Use the selected table" }).click();
  await visit.pane.getByText("Leather & tools!B3: 2 rows. Which column is which?").waitFor();
  expect(await visit.pane.getByLabel("C: W (in)").inputValue()).toBe("Width");
  const slides = visit.pane.locator("#new-job label", { hasText: /^Slides/ }).locator("select");
  await slides.selectOption("undermount");
  expect(await violations(paneFrame(visit.page))).toEqual([]);
  await slides.selectOption("side-mount");
  await visit.pane.getByRole("button", { name: "Begin" }).click();
  await visit.pane.getByText("The job stands on 19 new sheets, Job first.").waitFor({ timeout: 60_000 });
  // The keys are with the sheet that has come.
  expect(await visit.page.evaluate(() => document.activeElement!.tagName)).not.toBe("IFRAME");
  expect(await visit.page.textContent("#file-name")).toBe("saddler.xlsx");
  expect(await visit.page.textContent("#file-state")).toContain("changed");
  expect((await visit.at("B6")).formula).toBe(`=IF('Leather & tools'!C4="","",'Leather & tools'!C4)`);
  await visit.sheet("Plan");
  await visit.expectValue("F6", 18.0625);
  await visit.sheet("Leather & tools");
  await visit.enter("C4", "20 1/16");
  await visit.sheet("Plan");
  await visit.expectValue("F6", 19.0625);
  // Kept on the device, and still in no file.
  await visit.reload();
  expect(await visit.page.textContent("#file-state")).toContain("changed");
  const saved = openWorkbook((await visit.save()).bytes);
  expect(saved.workbook.sheets.slice(0, 2).map(({ name }) => name)).toEqual(["Leather & tools", "Job"]);
  expect(saved.workbook.names.map(({ name }) => name)).toEqual(
    expect.arrayContaining(["rates", "rates_2", "openings"]),
  );
  expect(await visit.page.textContent("#file-state")).toBe("");
  expect(visit.faults).toEqual([]);
});
