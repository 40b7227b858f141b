import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type axe from "axe-core";
import type { Frame, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { GUIDE_PAGES } from "../../src/guide/index";
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

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

async function violations(where: Page | Frame): Promise<string[]> {
  await where.evaluate(AXE);
  return where.evaluate(async () => {
    const { axe: checker } = globalThis as unknown as { axe: typeof axe };
    const found = await checker.run();
    return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
}

/** The narrowest pane, and a window; one is light, the other dark. */
const SCREENS = [
  { width: 320, height: 740, colorScheme: "dark" },
  { width: 1280, height: 800, colorScheme: "light" },
] as const;

describe.each(SCREENS)("the guide, $width wide and $colorScheme", ({ width, height, colorScheme }) => {
  test("every page opens, is accessible, and no wider than the screen", async () => {
    visit = await desk.visit({ viewport: { width, height }, colorScheme });
    const { page } = visit;
    for (const { name, title } of GUIDE_PAGES) {
      await page.goto(`${desk.address}guide/${name}.html`);
      expect(await page.locator("h1").textContent()).toBe(title);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), name).toBe(width);
      expect(await violations(page), name).toEqual([]);
      const pictures = await page
        .locator("img")
        .evaluateAll((all) => all.map((one) => (one as HTMLImageElement).naturalWidth));
      expect(pictures, name).not.toContain(0);
    }
  });
});

test("opens in the pane from a function's front at that function's help, and the pane comes back", async () => {
  visit = await desk.visit();
  const { page, pane } = visit;
  await pane.getByText("BOXWIDTH", { exact: true }).click();
  await pane.getByRole("link", { name: "BOXWIDTH in the guide" }).click();
  const help = pane.frameLocator("#reader iframe");
  const heading = help.getByRole("heading", { name: "BOXWIDTH" });
  await heading.waitFor();
  await expect.poll(async () => Math.abs((await heading.boundingBox())!.y) < 400).toBe(true);
  await help.getByRole("link", { name: "Cautions" }).first().click();
  await help.getByRole("heading", { name: "At the saw" }).waitFor();
  expect(await violations(page.frames().find((frame) => frame.url().endsWith("pane.html"))!)).toEqual([]);
  await pane.getByRole("button", { name: "‹ Functions" }).click();
  await pane.getByText("BOXWIDTH", { exact: true }).waitFor();
  // The page beside it, and what was typed there, have seen nothing of it.
  await visit.expectValue("B29", 17);
});
