import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { panePage } from "../../../src/build/page/pane-page";
import { servePage } from "../../../src/build/page/server";

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

test("servePage takes another port where the one asked for is taken, and serves its own files alone", async () => {
  const files = new Map([["index.html", { type: "text/html", bytes: new TextEncoder().encode("here") }]]);
  const first = await servePage(files, 0);
  const second = await servePage(files, Number(new URL(first.address).port));
  try {
    expect(second.address).not.toBe(first.address);
    expect(await (await fetch(second.address)).text()).toBe("here");
    expect((await fetch(`${second.address}package.json`)).status).toBe(404);
    expect((await fetch(second.address, { method: "POST" })).status).toBe(404);
  } finally {
    await Promise.all([first.close(), second.close()]);
  }
});
