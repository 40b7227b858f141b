import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { PROVEN_FUNCTIONS } from "../../../src/workbook/engine/proven";
import { computedByLibreOffice, type Value } from "../../libreoffice";
import { factFiles, factsOf, functionsOf } from "../support/facts";
import { bookOf, results, type Given } from "../support/sheet";

const linesOf = (name: string) =>
  readFileSync(new URL(`../../workbooks/${name}`, import.meta.url), "utf8")
    .trimEnd()
    .split("\n");

/** One formula a line: kinds of arguments combined, in which LibreOffice and the spreadsheet program do not differ. */
const FORMULAS = linesOf("native-combinations.txt");

const BENCH: Value[][] = [
  ["Part", "Qty", "Length", "Date", null, null, null, "Part", "Qty"],
  ["Side", 4, 22.5, 46351, null, null, null, "S", null],
  ["Front", 2, 18.0625, 46352, null, null, null, null, null],
  ["Back", 2, 17.5, 46380, null, null, null, "Part", "Qty"],
  ["Bottom", 1, 9.25, 45000.75, null, null, null, "Back", null],
  ["Rail", 3, 8.125, 60, null, null, null, null, ">2"],
  [],
  [null, null, null, null, null, null, null, "Qty", null],
  [null, null, null, null, null, null, null, ">=2", null],
];

/** Newer than LibreOffice's own, of the day, or of lambdas: their values stand, worked by hand, in the tests beside this. */
const BY_HAND = words(`
  ANCHORARRAY BYCOL BYROW CHOOSECOLS CHOOSEROWS CODE EXPAND HSTACK NOW REDUCE SINGLE SORT SORTBY TODAY TOROW UNIQUE VSTACK
  WRAPCOLS WRAPROWS MAP MAKEARRAY SCAN LET LAMBDA
`);

it("kinds of arguments combined come out as LibreOffice works them out", async () => {
  const theirs = await computedByLibreOffice([...BENCH, ...FORMULAS.map((formula) => [`=${formula}`])]);
  const given: Given = {};
  BENCH.forEach((row, y) =>
    row.forEach((value, x) => value !== null && (given[`${String.fromCharCode(65 + x)}${y + 1}`] = value)),
  );
  FORMULAS.forEach((formula, i) => (given[`K${i + 20}`] = `=${formula}`));
  const ours = results(bookOf(given));
  const differing = FORMULAS.filter((_, i) => !equal(theirs[BENCH.length + i]![0]!, ours[`K${i + 20}`]));
  expect(differing).toEqual([]);
  expect(FORMULAS.length).toBeGreaterThan(4000);
});

it("every function that is worked out is proven by stored values, by LibreOffice or by hand", () => {
  const met = factFiles()
    .flatMap(factsOf)
    .filter((fact) => !fact.kept && fact.agrees);
  const confirmed = [...FORMULAS, ...linesOf("native-formulas.txt")].flatMap(functionsOf);
  const proven = new Set([...met.flatMap((fact) => fact.functions), ...confirmed, ...BY_HAND]);
  expect([...PROVEN_FUNCTIONS].filter((name) => !proven.has(name))).toEqual([]);
});

function equal(theirs: Value, ours: unknown): boolean {
  if (typeof theirs === "number" && typeof ours === "number")
    return Math.abs(theirs - ours) <= 1e-9 * Math.max(Math.abs(theirs), Math.abs(ours), 1e-6);
  return theirs === ours || (theirs === null && ours === "");
}

function words(text: string): string[] {
  return text.trim().split(/\s+/);
}
