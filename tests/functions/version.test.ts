import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { VERSION } from "../../src/functions";

test("VERSION() is the package's version", () => {
  const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
  expect(version).toMatch(/^\d+\.\d+\.\d+$/);
  expect(VERSION()).toBe(version);
});
