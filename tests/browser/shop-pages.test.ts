import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { violations } from "./axe";
import { DEPTH, WIDTHS } from "./bench";
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

async function shopPages(): Promise<Page> {
  const opened = visit.page.context().waitForEvent("page");
  await visit.page.getByRole("button", { name: "Shop pages" }).click();
  const page = await opened;
  page.on("pageerror", (error) => visit.faults.push(String(error)));
  page.on("console", (message) => message.type() === "error" && visit.faults.push(message.text()));
  await page.waitForSelector(".label-sheet");
  return page;
}

describe("the shop pages", () => {
  test("open beside the workbook as it is now; ticks stay on the device, and go where what was ticked has changed", async () => {
    visit = await desk.visit();
    const page = await shopPages();
    expect(await page.title()).toBe("Shop pages: parts-bench");
    const first = page.locator(".step").first();
    const words = await first.getByRole("checkbox").nth(1).getAttribute("data-tick");
    await page.locator(`[data-tick="${words}"]`).check();
    await page.locator(".bins").getByRole("checkbox").first().check();
    const again = await shopPages();
    expect(await again.locator("[data-tick]:checked").count()).toBe(2);
    expect(await again.locator(`[data-tick="${words}"]`).isChecked()).toBe(true);
    // Wider openings have other set-ups: what was cut to the old size is not ticked in the new one's name.
    await visit.sheet("Job");
    for (const cell of WIDTHS) await visit.enter(cell, "20");
    const changed = await shopPages();
    expect(await changed.locator(`[data-tick="${words}"]`).count()).toBe(0);
    expect(await changed.locator(".step :checked").count()).toBe(0);
    await changed.getByRole("button", { name: "Clear all ticks" }).click();
    await changed.reload();
    expect(await changed.locator("[data-tick]:checked").count()).toBe(0);
  });

  test.each(["light", "dark"] as const)(
    "are accessible and go into 375 px in %s colors; in print they are black on white",
    async (colorScheme) => {
      visit = await desk.visit({ colorScheme });
      const page = await shopPages();
      await page.setViewportSize({ width: 375, height: 740 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(375);
      expect(await violations(page)).toEqual([]);
      const colors = () =>
        page.evaluate(() => {
          const { color, backgroundColor } = getComputedStyle(document.body);
          return [color, backgroundColor, getComputedStyle(document.querySelector(".drawing")!).color];
        });
      const onScreen = await colors();
      expect(onScreen[1]).toBe(colorScheme === "dark" ? "rgb(30, 26, 22)" : "rgb(255, 255, 255)");
      await page.emulateMedia({ media: "print", colorScheme });
      expect(await colors()).toEqual(["rgb(17, 17, 17)", "rgba(0, 0, 0, 0)", "rgb(0, 0, 0)"]);
      expect(await page.getByRole("button", { name: "Print…" }).isVisible()).toBe(false);
    },
  );

  test("print what is ticked to be printed, each drawing under its title", async () => {
    visit = await desk.visit();
    const page = await shopPages();
    await page.emulateMedia({ media: "print" });
    const printed = () =>
      page
        .locator("h1, main > section > h2")
        .evaluateAll((titles) => titles.filter((title) => title.checkVisibility()).map((title) => title.textContent));
    const all = ["Cut list by set-up", "Sheets and their cuts", "Story sticks", "Joints at full size"];
    const others = ["Labels", "Hardware by bin", "Drawings"];
    expect(await printed()).toEqual(["Shop pages parts-bench", ...all, ...others]);
    const titles = await page.locator("#drawings figcaption").allTextContents();
    expect(titles.slice(0, 5)).toEqual([
      ...["Front elevation of A", "Spacers of A"],
      ...["Section through A1", "Cross section of A1", "Parts of A1"],
    ]);
    await page.emulateMedia({ media: "screen" });
    for (const title of all) await page.getByRole("checkbox", { name: `Print: ${title}` }).uncheck();
    expect(await page.getByRole("heading", { name: "Story sticks" }).isVisible()).toBe(true);
    await page.emulateMedia({ media: "print" });
    expect(await printed()).toEqual(others);
  });

  test("set labels out on the sheet that was measured, remember it, and say what cannot be read", async () => {
    visit = await desk.visit();
    const page = await shopPages();
    const labels = await page.locator(".label").count();
    const measure = async (name: string, value: string) => page.getByLabel(name, { exact: true }).fill(value);
    await measure("Width of a label", "1 3/4 in");
    await measure("Height of a label", "25.4 mm");
    await measure("Labels across", "4");
    await measure("Labels down", "10");
    await measure("Gap between labels across", "1/8");
    const box = async (place: number) => (await page.locator(".label").nth(place).boundingBox())!;
    const [first, second] = [await box(0), await box(1)];
    expect(first.width).toBeCloseTo(1.75 * 96, 0);
    expect(first.height).toBeCloseTo(96, 0);
    expect(second.x - first.x).toBeCloseTo(1.875 * 96, 0);
    expect(await page.locator(".label-sheet").count()).toBe(Math.ceil(labels / 40));
    await measure("Height of a label", "tall");
    expect(await page.getByLabel("Height of a label").getAttribute("aria-invalid")).toBe("true");
    expect(await page.getByRole("status").textContent()).toContain("cannot be read");
    expect((await box(0)).height).toBeCloseTo(96, 0);
    const again = await shopPages();
    expect(await again.getByLabel("Labels down", { exact: true }).inputValue()).toBe("10");
    expect(await again.locator(".label").count()).toBe(labels);
  });

  test("are refused in words where a workbook has no job, and keep themselves as a file", async () => {
    visit = await desk.visit();
    const page = await shopPages();
    const coming = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save as a file" }).click();
    const file = readFileSync((await (await coming).path())!, "utf8");
    expect(file).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(file.match(/class="label"/g)).toHaveLength(await page.locator(".label").count());
    await visit.sheet("Job");
    await visit.enter(DEPTH, "3");
    await visit.page.getByRole("button", { name: "Shop pages" }).click();
    await visit.page.getByRole("alert").getByText("There are no shop pages.").waitFor();
  });
});
