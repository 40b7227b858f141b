import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { GUIDE_PAGES } from "../../src/guide/index";
import { paneFrame, violations } from "./axe";
import { BOX_WIDTH, WIDTH } from "./bench";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;
beforeAll(async () => {
  desk = await openDesk();
  visit = await desk.visit();
});
afterAll(() => desk.close());
afterEach(() => {
  expect(visit.faults).toEqual([]);
  expect(visit.elsewhere).toEqual([]);
});

test("opens in the pane from a function's front at that function's help, and the pane comes back", async () => {
  const { page, pane } = visit;
  await pane.getByText("BOXWIDTH", { exact: true }).click();
  await pane.getByRole("link", { name: "BOXWIDTH in the guide" }).click();
  const help = pane.frameLocator("#reader iframe");
  const heading = help.getByRole("heading", { name: "BOXWIDTH" });
  await heading.waitFor();
  await expect.poll(async () => Math.abs((await heading.boundingBox())!.y) < 400).toBe(true);
  await help.getByRole("link", { name: "Cautions" }).first().click();
  await help.getByRole("heading", { name: "At the saw" }).waitFor();
  expect(await violations(paneFrame(page))).toEqual([]);
  await pane.getByRole("button", { name: "‹ Functions" }).click();
  await pane.getByText("BOXWIDTH", { exact: true }).waitFor();
  // The functions have seen nothing of it.
  await visit.enter(WIDTH, "20");
  await visit.expectAt(BOX_WIDTH, 19);
});

/** The narrowest pane, a phone, windows, and paper, which is white whatever the screen is. */
const SHOWN = [
  { width: 320, media: "screen", colorScheme: "dark" },
  { width: 375, media: "screen", colorScheme: "light" },
  { width: 375, media: "screen", colorScheme: "dark" },
  { width: 1280, media: "screen", colorScheme: "light" },
  { width: 1280, media: "screen", colorScheme: "dark" },
  { width: 720, media: "print", colorScheme: "dark" },
] as const;

test.each(SHOWN)(
  "every page opens on $media, $width wide and $colorScheme, accessible and no wider than that",
  async ({ width, media, colorScheme }) => {
    const { page } = visit;
    await page.setViewportSize({ width, height: 800 });
    await page.emulateMedia({ media, colorScheme });
    for (const { name, title } of GUIDE_PAGES) {
      await page.goto(`${desk.address}guide/${name}.html`);
      expect(await page.locator("h1").textContent()).toBe(title);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), name).toBeLessThanOrEqual(width);
      expect(await violations(page), name).toEqual([]);
      const widths = await page
        .locator("img")
        .evaluateAll((pictures) => pictures.map((picture) => (picture as HTMLImageElement).naturalWidth));
      expect(widths, name).not.toContain(0);
      if (media === "print")
        expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe("rgb(255, 255, 255)");
    }
  },
);
