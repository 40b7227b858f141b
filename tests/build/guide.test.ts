import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Window } from "happy-dom";
import { describe, expect, test } from "vitest";
import { anchorOf } from "../../src/build/guide/links";
import { htmlOf } from "../../src/build/guide/markdown";
import { guidePage } from "../../src/build/guide/page";
import { GUIDE_PAGES } from "../../src/guide/index";
import { dist } from "./dist";

const folder = join(dist(), "guide");
const open = (html: string) => new new Window().DOMParser().parseFromString(html, "text/html");
const pages = new Map(GUIDE_PAGES.map(({ name }) => [name, open(readFileSync(join(folder, `${name}.html`), "utf8"))]));

/** Where a link or picture of a page leads; what it names must be there. */
function isThere(from: string, link: string): boolean {
  const [file, anchor] = link.split("#");
  const page = [...pages].find(([name]) => `${name}.html` === (file || `${from}.html`))?.[1];
  if (page && anchor) return page.getElementById(anchor) !== null;
  return existsSync(join(folder, file || `${from}.html`));
}

describe.each(GUIDE_PAGES)("the built page $name", ({ name, title }) => {
  const page = pages.get(name)!;

  test("has its title once, as its first heading, and leads to every page of the guide", () => {
    expect([...page.querySelectorAll("h1")].map(({ textContent }) => textContent)).toEqual([title]);
    expect(page.title).toBe(`${title} – Groove & Reveal`);
    const links = [...page.querySelectorAll("nav a")];
    expect(links.map((link) => link.getAttribute("href"))).toEqual(GUIDE_PAGES.map((one) => `${one.name}.html`));
    expect(links.filter((link) => link.hasAttribute("aria-current")).map(({ textContent }) => textContent)).toEqual([
      title,
    ]);
  });

  test("has no dead link, anchor or picture, and nothing from elsewhere", () => {
    const targets = [
      ...[...page.querySelectorAll("a, link")].map((link) => link.getAttribute("href")!),
      ...[...page.querySelectorAll("img")].map((picture) => picture.getAttribute("src")!),
    ];
    expect(targets.length).toBeGreaterThan(GUIDE_PAGES.length);
    expect(targets.filter((target) => /^\w+:/.test(target) || !isThere(name, target))).toEqual([]);
  });

  test("has every anchor once, a text for every picture, no script and no markup of its source", () => {
    const ids = [...page.querySelectorAll("[id]")].map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)]);
    for (const picture of page.querySelectorAll("img")) expect(picture.getAttribute("alt")).toMatch(/\w+ \w+/);
    expect(page.querySelector("script")).toBeNull();
    const text = page.querySelector("main")!.textContent!;
    expect(text).not.toMatch(/<!--|\]\(|\*\*|\{\{|^\|/m);
  });
});

test("a link to what is not there is found to be dead", () => {
  expect(isThere("start", "tables.html#the-table-openings")).toBe(true);
  expect(isThere("start", "tables.html#the-table-of-openings")).toBe(false);
  expect(isThere("start", "pictures/none.svg")).toBe(false);
  expect(isThere("start", "table.html")).toBe(false);
});

test("the guide is all pages of its folder, and shows all of its pictures", () => {
  const written = readdirSync("src/guide/pages").map((file) => file.replace(".md", ""));
  expect(written.sort()).toEqual(GUIDE_PAGES.map(({ name }) => name).sort());
  const shown = [...pages.values()].flatMap((page) =>
    [...page.querySelectorAll("img")].map((picture) => picture.getAttribute("src")!.replace("pictures/", "")),
  );
  expect([...new Set(shown)].sort()).toEqual(readdirSync("src/guide/pictures").sort());
  expect(readdirSync(join(folder, "pictures")).sort()).toEqual(readdirSync("src/guide/pictures").sort());
});

test("its style sheet has the pane's colors, light and dark", () => {
  const css = readFileSync(join(folder, "guide.css"), "utf8");
  const pane = readFileSync("src/taskpane/colors.css", "utf8");
  const colors = (text: string) => [...text.matchAll(/:root \{[^}]*--ground[^}]*\}/g)].map(([rule]) => rule);
  expect(colors(pane)).toHaveLength(2);
  expect(colors(css)).toEqual(expect.arrayContaining(colors(pane)));
});

describe("a page of Markdown", () => {
  test.each([
    ["The table `openings`", "the-table-openings"],
    ["Try it: 2 ways", "try-it-2-ways"],
    ["BOXWIDTH", "boxwidth"],
  ])("has for the heading %j the anchor %s, as GitHub has", (heading, anchor) => {
    expect(anchorOf(heading)).toBe(anchor);
    expect(htmlOf(`## ${heading}`)).toContain(`<h2 id="${anchor}">`);
  });

  test("leads to built pages and pictures, and shows no marker of the build", () => {
    const html = htmlOf("<!-- part -->\n[a](tables.md#b) [c](money.md) ![d](../pictures/e.svg)\n<!-- /part -->\n");
    expect(html).toContain('<a href="tables.html#b">');
    expect(html).toContain('<a href="money.html">');
    expect(html).toContain('src="pictures/e.svg"');
    expect(html).not.toContain("<!--");
  });

  test("may hold whatever the template's places are called", () => {
    const page = guidePage(GUIDE_PAGES[0]!, "$& {{title}}", "{{title}}<!-- pages --><!-- text -->");
    expect(page).toContain("<p>$&amp; {{title}}</p>");
  });
});
