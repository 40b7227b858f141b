// @vitest-environment happy-dom
import { existsSync } from "node:fs";
import type { Window } from "happy-dom";
import { beforeEach, describe, expect, test } from "vitest";
import { GUIDE_PAGES } from "../../src/guide/index";
import { createPane } from "../../src/taskpane/pane";
import { GROUPS, GUIDE, openPage } from "./page";

beforeEach(() => {
  // What stands in a frame is looked at in a browser.
  const { settings } = (window as unknown as Window).happyDOM;
  settings.disableIframePageLoading = true;
  settings.handleDisabledFileLoadingAsSuccess = true;
  createPane(openPage(), GROUPS, GUIDE);
});

const links = () => [...document.querySelectorAll<HTMLAnchorElement>("#guide a")];
const reader = () => document.querySelector<HTMLElement>("#reader")!;
const list = () => document.querySelector<HTMLElement>(".scroll")!;
const shown = () => reader().querySelector("iframe")?.getAttribute("src");
const click = (link: Element, keys: MouseEventInit = {}) =>
  link.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true, ...keys }));

describe("the guide in the pane", () => {
  test("is a link to each page that there is", () => {
    expect(links().map(({ textContent }) => textContent)).toEqual(GUIDE_PAGES.map(({ title }) => title));
    for (const { name } of GUIDE_PAGES) expect(existsSync(`src/guide/pages/${name}.md`)).toBe(true);
    expect(reader().hidden).toBe(true);
  });

  test.each(GUIDE_PAGES)("opens $name in place of the list, with a way back and a way out", ({ name, title }) => {
    const link = links().find(({ textContent }) => textContent === title)!;
    expect(click(link)).toBe(false);
    expect(shown()).toBe(`guide/${name}.html`);
    expect([reader().hidden, list().hidden]).toEqual([false, true]);
    expect(reader().querySelector(".bar a")!.getAttribute("href")).toBe(`guide/${name}.html`);
    expect(document.activeElement!.textContent).toBe("‹ Functions");
    reader().querySelector("button")!.click();
    expect([reader().hidden, list().hidden]).toEqual([true, false]);
    expect(shown()).toBeUndefined();
    expect(document.activeElement).toBe(link);
  });

  test("closes by Escape", () => {
    click(links()[0]!);
    reader()
      .querySelector("button")!
      .dispatchEvent(new KeyboardEvent("keydown", { key: "Escape", bubbles: true }));
    expect([reader().hidden, list().hidden]).toEqual([true, false]);
  });

  test("has the help of each function", () => {
    click(
      [...document.querySelectorAll(".front a")].find(({ textContent }) => textContent === "BOXWIDTH in the guide")!,
    );
    expect(shown()).toBe("guide/functions.html#boxwidth");
  });

  test.each(["ctrlKey", "metaKey", "shiftKey"])("leaves it to the browser to open a tab of its own, with %s", (key) => {
    let taken = true;
    const see = (event: Event) => {
      taken = event.defaultPrevented;
      // There is nothing here that a tab could show.
      event.preventDefault();
    };
    document.addEventListener("click", see, { once: true });
    click(links()[0]!, { [key]: true });
    expect(taken).toBe(false);
    expect(reader().hidden).toBe(true);
  });
});
