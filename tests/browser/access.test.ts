import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { NOT_OURS, paneFrame, violations } from "./axe";
import { BOX_WIDTH, HEIGHT, WIDTH } from "./bench";
import { openDesk, type Desk, type Visit } from "./desk";
import { shopWorkbook } from "./shop-workbook";

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

/** What has the keys, in the page or in the pane. */
const focused = () =>
  visit.page.evaluate(() => {
    const of = (element: Element | null | undefined): string => {
      if (!element || element === document.documentElement) return "nothing";
      if (element instanceof HTMLIFrameElement) return `pane: ${of(element.contentDocument?.activeElement)}`;
      if (element.closest('[data-u-comp="slide-tab-item"]')) return "tab";
      return element.closest("#grid, [id^='univer']") ? "grid" : element.id || element.localName;
    };
    return document.activeElement === document.body ? "body" : of(document.activeElement);
  });

/** A workbook of an earlier visit waits for a choice. */
async function leaveWork(): Promise<void> {
  const other = await visit.another();
  await other.enter(WIDTH, "21");
  await other.expectValue(WIDTH, "21");
  await other.untilKept();
  await other.page.close({ runBeforeUnload: false });
  await visit.load();
  await visit.page.locator("#offers li").waitFor();
}

test.each(["light", "dark"] as const)(
  "what comes and goes on the page and in the pane is accessible in %s colors",
  async (colorScheme) => {
    visit = await desk.visit({ colorScheme });
    const { page, pane } = visit;
    await leaveWork();
    await page.evaluate(() => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File(["1"], "shop.xlsx"));
      const hold = () => document.body.dispatchEvent(new DragEvent("dragover", { dataTransfer, bubbles: true }));
      Object.assign(window, { held: setInterval(hold, 100) });
    });
    await page.locator("#drop").waitFor();
    expect(await violations(page, NOT_OURS), "drop, offers").toEqual([]);
    await page.evaluate(() => clearInterval((window as unknown as { held: number }).held));
    await page.locator("#drop").waitFor({ state: "hidden" });

    await page.evaluate(() => {
      const line = document.querySelector<HTMLElement>("#busy")!;
      line.querySelector("p")!.textContent = "Working out what you changed…";
      line.hidden = false;
    });
    await page.getByRole("tab", { name: "Job" }).click({ button: "right" });
    await page.getByRole("menu", { name: "Sheet" }).waitFor();
    expect(await violations(page, NOT_OURS), "menu, busy line").toEqual([]);
    await page.keyboard.press("Escape");
    await page.evaluate(() => (document.querySelector<HTMLElement>("#busy")!.hidden = true));

    await visit.enter(WIDTH, "18; 18 1/2");
    await visit.sheet("Plan");
    await visit.goTo("C7");
    await pane.getByRole("heading", { name: "Findings: 0 wrong, 5 doubtful" }).click();
    expect(await violations(paneFrame(page)), "findings").toEqual([]);
    await pane.locator("#query").fill("gap");
    await pane.locator("#found details").first().waitFor();
    await paneFrame(page).evaluate(() =>
      document.querySelectorAll("#found details").forEach((one) => ((one as HTMLDetailsElement).open = true)),
    );
    await pane.locator("#found svg").first().waitFor();
    expect(await violations(paneFrame(page)), "search").toEqual([]);
  },
);

test("at twice the size nothing is cut off, and toolbar, pane and sheets are within reach", async () => {
  visit = await desk.visit({ viewport: { width: 640, height: 400 }, deviceScaleFactor: 2 });
  const { page } = visit;
  const within = async (what: string) => {
    const beyond = await page.evaluate(() =>
      [...document.querySelectorAll("body > header button, dialog[open], dialog[open] button, #pane, #pane > button")]
        .filter((part) => part.getClientRects().length > 0)
        .filter((part) => {
          const { left, right, top, bottom } = part.getBoundingClientRect();
          return left < 0 || right > innerWidth || top < 0 || bottom > innerHeight;
        })
        .map(({ outerHTML }) => outerHTML.slice(0, 120)),
    );
    expect(beyond, what).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), what).toBe(640);
  };
  await within("page");
  // Room is left to work in.
  const heights = await page
    .locator("#grid canvas")
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
  expect(Math.max(...heights)).toBeGreaterThan(200);
  expect(await page.getByRole("tab", { name: "Job" }).isVisible()).toBe(true);
  await page.click("#functions");
  await visit.pane.locator("#query").waitFor();
  await within("pane");
  await visit.pane.locator("#query").fill("gap");
  // A find is seen without moving the list.
  const find = (await visit.pane.locator("#found .front").first().boundingBox())!;
  const foot = (await visit.pane.locator("footer").boundingBox())!;
  expect(find.y + 40).toBeLessThan(foot.y);
  await page.getByRole("button", { name: "Close the functions" }).click();
  for (const opener of ["new", "print", "freeze"]) {
    await page.click(`#${opener}`);
    await page.locator("dialog[open]").waitFor();
    await within(opener);
    await page.keyboard.press("Escape");
  }
  await page.keyboard.press("F1");
  await within("keys");
});

test("nothing moves by itself where less motion is wanted, the grid’s own bars and dialogs included", async () => {
  visit = await desk.visit({ reducedMotion: "reduce" });
  const { page, pane } = visit;
  const moving = () =>
    page.evaluate(() => {
      const inner = document.querySelector<HTMLIFrameElement>("#pane iframe")!.contentDocument!;
      // What is over within a millisecond is a change, and no movement.
      return [document, inner]
        .flatMap((where) => where.getAnimations().map((one) => one.effect as KeyframeEffect))
        .filter((effect) => Number(effect.getComputedTiming().activeDuration) > 1)
        .map(({ target }) => target?.outerHTML.slice(0, 200));
    });
  const still = async (what: string) => expect(await moving(), what).toEqual([]);
  // What the grid's library turns while somebody waits for it.
  await page.evaluate(() => document.body.insertAdjacentHTML("beforeend", '<p class="univer-animate-spin">'));
  await page.waitForTimeout(100);
  await still("what waits");
  await pane.locator("#functions summary").first().click();
  await still("front");
  await page.click("#new");
  await page.locator("dialog[open]").waitFor();
  await still("dialog");
  await page.keyboard.press("Escape");
  await page.getByRole("tab", { name: "Job" }).click({ button: "right" });
  await page.getByRole("menu").waitFor();
  await still("menu");
  await page.keyboard.press("Escape");
  await page.locator("#grid input").first().click();
  await page.locator("#grid").getByText("Plan", { exact: true }).click();
  await still("sheets");
});

test("the keys are never lost: they are with the grid, or with the button that opened what is closed", async () => {
  visit = await desk.visit();
  const { page } = visit;
  const settle = () =>
    page.waitForFunction(
      () => !document.querySelector<HTMLElement>("#desk")!.inert && !document.querySelector("dialog[open]"),
    );
  /** Once what takes the keys away late has had its time. */
  const expectFocus = async (what: string, wanted: string) => {
    await page.waitForTimeout(200);
    expect(await focused(), what).toBe(wanted);
  };
  await leaveWork();
  await expectFocus("start", "grid");
  await page.focus("#offers button:last-child");
  await page.keyboard.press("Enter");
  await page.locator("#offers li").waitFor({ state: "detached" });
  await expectFocus("offer", "grid");
  for (const opener of ["new", "print", "freeze"])
    for (const way of ["Escape", "Cancel"]) {
      await page.focus(`#${opener}`);
      await page.keyboard.press("Enter");
      await page.locator("dialog[open]").waitFor();
      if (way === "Escape") await page.keyboard.press("Escape");
      else await page.locator("dialog[open] button[value=stay]").press("Enter");
      await expectFocus(`${opener} ${way}`, opener);
    }
  await visit.goTo(HEIGHT);
  await page.keyboard.press("F1");
  await page.keyboard.press("Enter");
  await expectFocus("keys from grid", "grid");
  await visit.pane.locator("#query").focus();
  await page.keyboard.press("F1");
  await page.keyboard.press("Escape");
  await expectFocus("keys from pane", "pane: query");
  await page.focus("#freeze");
  await page.keyboard.press("Enter");
  await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  await page.locator("#notice").waitFor();
  await expectFocus("frozen", "freeze");
  await page.locator("#notice button").press("Enter");
  await expectFocus("notice", "grid");
  await visit.enter(WIDTH, "20");
  await visit.expectAt(BOX_WIDTH, 19);
  await page.focus("#example");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Escape");
  await expectFocus("ask, stay", "example");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Go on without saving" }).press("Enter");
  await page.waitForFunction(() => document.querySelector("#file-state")!.textContent === "");
  await settle();
  await expectFocus("example", "grid");
  await page.focus("#new");
  await page.keyboard.press("Enter");
  await page.locator("dialog[open] button[value=begin]").press("Enter");
  await page.getByText("my-job.xlsx").waitFor();
  await settle();
  await expectFocus("new job", "grid");
  await page.keyboard.press("Control+s");
  await page.focus("#open");
  await visit.open("shop.xlsx", await shopWorkbook());
  await page.getByText("shop.xlsx is open.").waitFor();
  await settle();
  await expectFocus("open", "grid");
  await page.focus("#save");
  await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  await expectFocus("save", "save");
  await visit.goTo("H20");
  await page.keyboard.type("1");
  await page.keyboard.press("Enter");
  await page.focus("#undo");
  await page.keyboard.press("Enter");
  await expectFocus("undo", "grid");
  await page.getByRole("tab", { name: "Job" }).click({ button: "right" });
  await page.getByRole("menuitem", { name: "Add a sheet" }).press("Enter");
  await page.getByRole("tab", { name: "Sheet1" }).waitFor();
  await expectFocus("sheet added", "grid");
  await page.keyboard.press("F6");
  await page.keyboard.press("Shift+F10");
  await page.getByRole("menu").waitFor();
  await page.keyboard.press("Escape");
  await expectFocus("menu, Escape", "tab");
  await visit.pane.locator("#query").focus();
  await page.setViewportSize({ width: 800, height: 800 });
  await expectFocus("pane, in a window made narrow", "functions");
});

test("Ctrl+PageDown goes to the next sheet and Ctrl+PageUp back; on the tabs arrows do", async () => {
  visit = await desk.visit();
  const { page } = visit;
  const sheet = async () => (await visit.selection()).address.split("!")[0]!.replaceAll("'", "");
  const tabs = await page.getByRole("tab").allTextContents();
  await visit.goTo(WIDTH);
  for (const [key, wanted] of [
    ["Control+PageDown", tabs[1]],
    ["Control+PageDown", tabs[2]],
    ["Control+PageUp", tabs[1]],
    ["Control+Alt+PageUp", tabs[0]],
    ["Control+PageUp", tabs[0]],
  ]) {
    await page.keyboard.press(key!);
    await expect.poll(sheet, { message: key! }).toBe(wanted);
  }
  expect(await focused()).toBe("grid");
  await page.keyboard.press("F6");
  expect(await focused()).toBe("tab");
  await page.keyboard.press("ArrowRight");
  await expect.poll(sheet).toBe(tabs[1]);
  expect(await focused()).toBe("tab");
});
