import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { panePage } from "../../../src/build/page/pane-page";

const page = readFileSync("src/taskpane/taskpane.html", "utf8");

test("panePage leaves the pane as it is, without anything from elsewhere", () => {
  const made = panePage(page);
  expect(made).not.toMatch(/https?:|functions\.js|Content-Security-Policy|\{\{/);
  expect(made).toContain('<script defer src="pane.js" type="module"></script>');
  expect(made.slice(made.indexOf("<body>"))).toBe(
    page.slice(page.indexOf("<body>")).replace("icons/icon-64.png", "icon.svg"),
  );
});

test("panePage says so where the pane's page has become another", () => {
  expect(() => panePage(page.replace("functions.js", "other.js"))).toThrow("The pane's page has changed");
});
