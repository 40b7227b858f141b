import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { NOT_OURS, paneFrame, violations } from "./axe";
import { BOX_WIDTH, WIDTH, WIDTHS } from "./bench";
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

describe.each(["light", "dark"] as const)("in %s colors", (colorScheme) => {
  test("page, pane, message and dialog are accessible", async () => {
    visit = await desk.visit({ colorScheme });
    await visit.enter(WIDTHS[1]!, "1");
    await visit.sheet("Plan");
    await visit.goTo("C9");
    await visit.open("list.txt", new TextEncoder().encode("sides, 4 off"));
    await visit.page.getByRole("button", { name: "Go on without saving" }).click();
    await visit.page
      .getByRole("alert")
      .getByText(/was not opened/)
      .waitFor();
    await visit.pane.getByText("BOXWIDTH", { exact: true }).click();
    expect(await violations(visit.page, NOT_OURS)).toEqual([]);
    expect(await violations(paneFrame(visit.page))).toEqual([]);
    await visit.page.click("#example");
    await visit.page.getByRole("dialog").waitFor();
    expect(await violations(visit.page, NOT_OURS)).toEqual([]);
  });

  test("on a phone nothing of ours is wider than the screen, and the pane is a drawer over the grid", async () => {
    visit = await desk.visit({ colorScheme, viewport: { width: 375, height: 740 } });
    const { page } = visit;
    expect(await page.locator("#pane").isVisible()).toBe(false);
    await page.click("#functions");
    await visit.pane.getByText("Find functions, standards, words").waitFor();
    const [pane, header] = [
      await page.locator("#pane").boundingBox(),
      await page.locator("body > header").boundingBox(),
    ];
    expect([pane!.x, pane!.width, header!.width]).toEqual([0, 375, 375]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(375);
    for (const button of await page.locator("body > header button").all()) {
      const { x, width } = (await button.boundingBox())!;
      expect(x + width).toBeLessThanOrEqual(375);
    }
    expect(await violations(page, NOT_OURS)).toEqual([]);
    await page.getByRole("button", { name: "Close the functions" }).click();
    expect(await page.locator("#pane").isVisible()).toBe(false);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("functions");
  });
});

test.each(["light", "dark"] as const)(
  "every dialog of the toolbar is accessible, %s, and gives the keys back",
  async (colorScheme) => {
    visit = await desk.visit({ colorScheme, viewport: { width: 375, height: 740 } });
    const { page } = visit;
    for (const opener of ["new", "print", "freeze"]) {
      await page.focus(`#${opener}`);
      await page.keyboard.press("Enter");
      await page.locator("dialog[open]").waitFor();
      expect(await violations(page, NOT_OURS), opener).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(375);
      await page.keyboard.press("Escape");
      expect(await page.evaluate(() => document.activeElement?.id)).toBe(opener);
    }
  },
);

test("says what is wrong in the selected cell while the pane is closed", async () => {
  visit = await desk.visit();
  await visit.page.click("#functions");
  await visit.enter(WIDTHS[1]!, "1");
  await visit.sheet("Plan");
  await visit.goTo("C9");
  await visit.page
    .locator("#message")
    .getByText(/^#VALUE! Opening B: opening width is 1 in\./)
    .waitFor();
  await visit.goTo("A6");
  await expect.poll(() => visit.page.locator("#message").isVisible()).toBe(false);
});

test("F6 goes from grid to tabs, pane, search and toolbar, back to the grid where typing goes on; Shift+F6 the other way", async () => {
  visit = await desk.visit();
  const { page } = visit;
  const here = () =>
    page.evaluate(() => {
      const active = document.activeElement;
      if (active?.closest('[data-u-comp="slide-tab-item"]')) return "tabs";
      const inner = (active as HTMLIFrameElement | null)?.contentDocument?.activeElement?.id;
      return inner === "query" ? "search" : (active?.closest("#tools, #grid, #pane")?.id ?? "nowhere");
    });
  const round = async (key: string) => {
    const places: string[] = [];
    for (let i = 0; i < 5; i++) {
      await page.keyboard.press(key);
      places.push(await here());
    }
    return places;
  };
  await visit.goTo(WIDTH);
  expect(await round("F6")).toEqual(["tabs", "pane", "search", "tools", "grid"]);
  expect(await round("Shift+F6")).toEqual(["tools", "search", "pane", "tabs", "grid"]);
  await page.keyboard.type("20");
  await page.keyboard.press("Enter");
  await visit.expectAt(BOX_WIDTH, 19);
  // A grid that is painted says nothing to a screen reader: the page does, once the selection stands still.
  await visit.goTo(WIDTH);
  await page.locator("#cell").getByText(`Job!${WIDTH} 20`, { exact: true }).waitFor({ state: "attached" });
  await page.keyboard.press("F1");
  await page.getByRole("dialog", { name: "Keys" }).waitFor();
  expect(await violations(page, NOT_OURS)).toEqual([]);
  await page.keyboard.press("Escape");
  expect(await here()).toBe("grid");
});

test("Ctrl+S saves", async () => {
  visit = await desk.visit();
  await visit.goTo(WIDTH);
  const [download] = await Promise.all([visit.page.waitForEvent("download"), visit.page.keyboard.press("Control+s")]);
  expect(download.suggestedFilename()).toBe("parts-bench.xlsx");
});

test("is served with a policy that lets nothing in from elsewhere", async () => {
  visit = await desk.visit();
  const response = await fetch(desk.address);
  const policy = response.headers.get("content-security-policy")!;
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src 'self'");
  expect(policy).not.toMatch(/https?:|unsafe-eval|\*/);
  expect((await fetch(`${desk.address}../package.json`)).status).toBe(404);
  await expect(visit.page.evaluate(() => fetch("https://example.org/").then(() => "came through"))).rejects.toThrow();
  expect(visit.faults.some((fault) => fault.includes("Content Security Policy"))).toBe(true);
  visit.faults.length = 0;
});
