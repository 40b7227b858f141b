import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { STANDARD_NAMES, usualWritten, type StandardName } from "../../src/core/drawer";

/** Rows of the README's table of standards: name, default in inches, in millimeters. */
const rows = [...readFileSync("README.md", "utf8").matchAll(/^\| `([a-z -]+)` \| ([^|]*)\| ([^|]*)\| [^|]*\|$/gm)].map(
  ([, name, inches, mm]) => [name!, inches!.trim(), mm!.trim()],
);

test("the README lists every standard, in order, with its defaults", () => {
  expect(rows.map(([name]) => name)).toEqual(["unit", ...STANDARD_NAMES]);
  for (const [name, inches, mm] of rows.slice(1)) {
    const usual = (["in", "mm"] as const).map((unit) => usualWritten(name as StandardName, unit));
    if (usual[0] === undefined)
      expect(["", "none"].includes(inches!) || /^(as|by) the|^by slide/.test(inches!), name).toBe(true);
    else expect([inches, mm || inches], name).toEqual(usual);
  }
});
