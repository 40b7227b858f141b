import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import lock from "../../package-lock.json";

/** What is installed here; a few packages are for other systems alone. */
const installed = Object.keys(lock.packages).filter(
  (folder) => folder !== "" && existsSync(join(folder, "package.json")),
);

const says = (folder: string): unknown => {
  const { license, licenses } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  return license ?? licenses;
};
const hasText = (folder: string): boolean => readdirSync(folder).some((name) => /^(licen[cs]e|copying)/i.test(name));

test("every package that is installed, for development too, says its license or carries its text", () => {
  expect(installed.length).toBeGreaterThan(500);
  expect(installed.filter((folder) => !says(folder) && !hasText(folder))).toEqual([]);
});

test("no package forbids what is done with it", () => {
  expect(
    installed.filter((folder) => /UNLICENSED|commercial|proprietary/i.test(JSON.stringify(says(folder) ?? ""))),
  ).toEqual([]);
});

test("what ships has nothing to install: every package is bundled or for development", () => {
  const { dependencies, peerDependencies, optionalDependencies } = lock.packages[""] as Record<string, unknown>;
  expect([dependencies, peerDependencies, optionalDependencies]).toEqual([undefined, undefined, undefined]);
});
