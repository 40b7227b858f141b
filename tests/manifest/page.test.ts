import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { SCRIPT_HASH } from "../../src/shop-pages/index";
import { dist } from "../build/dist";

const page = readFileSync(join(dist(), "taskpane.html"), "utf8");
const scripts = [...page.matchAll(/<script defer src="([^"?]+)/g)].map(([, address]) => address);

describe("the built taskpane.html", () => {
  test("loads the host's library from its public address, before the functions that need it", () => {
    expect(scripts).toEqual([
      "taskpane.js",
      "https://appsforoffice.microsoft.com/lib/1/hosted/office.js",
      "functions.js",
    ]);
  });

  test("lets scripts run from nowhere but here and the library's makers, and none that stand in a page but the shop pages' own", () => {
    const policy = /script-src ([^;]+);/.exec(page)![1]!;
    expect(policy.split(" ")).toEqual([
      ...["'self'", `'${SCRIPT_HASH}'`, "https://appsforoffice.microsoft.com", "https://ajax.aspnetcdn.com"],
    ]);
    expect(page.match(/<script/g)).toHaveLength(scripts.length);
    expect(page).not.toMatch(/\son\w+=/);
  });

  test("has a language, a title, and a label for its search field", () => {
    expect(page).toContain('<html lang="en">');
    expect(page).toContain("<title>Groove &amp; Reveal</title>");
    expect(page).toContain('<label for="query">');
  });
});
