import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, test } from "vitest";

interface Rule {
  from: { path?: string };
  to: { path?: string };
}
const rules = createRequire(import.meta.url)("../../.dependency-cruiser.cjs") as { allowed: Rule[]; forbidden: Rule[] };

const files = [
  "package.json",
  ...readdirSync("src", { recursive: true, encoding: "utf8" }).map((name) => `src/${name}`),
];
const imported = files
  .filter((name) => name.endsWith(".ts"))
  .flatMap((name) =>
    [...readFileSync(name, "utf8").matchAll(/from "([^."][^"]*)"/g)].map(([, at]) => `node_modules/${at!}`),
  );

/** A pattern with a choice of names as one pattern a name; `$1` stands for what the other side matched. */
const each = (pattern: string): string[] => {
  const choice = /(?<!\?[!:]?)\((?!\?)([^()]+)\)/.exec(pattern);
  if (!choice) return [pattern.replace("$1", "[^/]+")];
  return choice[1]!.split("|").flatMap((one) => each(pattern.replace(choice[0], one)));
};

const patterns = [...rules.allowed, ...rules.forbidden].flatMap(({ from, to }) =>
  [from.path, to.path].flatMap((path) => (path === undefined ? [] : each(path))),
);

test.each([...new Set(patterns)])("who may import whom: %s is there", (pattern) => {
  expect([...files, ...imported].some((name) => new RegExp(pattern).test(name))).toBe(true);
});
