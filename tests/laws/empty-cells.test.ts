import { describe, expect, test } from "vitest";
import { functionFiles, functionReference } from "../../src/build";
import { STANDARD_NAMES } from "../../src/core/drawer";
import { RATE_NAMES } from "../../src/functions/tables/rates";
import * as functions from "../../src/functions";
import { shown } from "../cell";
import { callOf } from "../functions/literals";

// Hosts hand an empty cell over as null, as an empty text or as the number 0, and leave out what is not typed. Whatever
// a call makes of it, it makes the same of all of them, or refuses the 0 and says how to write zero.
const EMPTY = [null, "", undefined];
const REMEDY = /which an empty cell also gives(: write none or 0 |\. Give it, or write none )/;

/** TAPE shows what stands in a cell, and a 0 is seen for what it is. */
const SHOWS_ZERO = new Set(["TAPE length"]);

const call = (name: string, args: readonly unknown[]): unknown =>
  shown(() => (functions[name as keyof typeof functions] as (...args: readonly unknown[]) => unknown)(...args));

/** @param withEmpty the call's result with the given value in the place that is tried */
function expectOneMeaning(withEmpty: (value: unknown) => unknown): void {
  const [blank, ...others] = EMPTY.map(withEmpty).map(written);
  for (const other of others) expect(other).toBe(blank);
  const zero = written(withEmpty(0));
  if (!REMEDY.test(zero)) expect(zero.replace(/ is 0(?!\.?\d)/g, " is blank")).toBe(blank);
}

/** Error cells as their messages. */
const written = (result: unknown): string =>
  JSON.stringify(result, (_, value: unknown) => (value instanceof Error ? value.message : value));

const documented = functionReference(functionFiles("src/functions")).flatMap((group) => group.functions);
const places = documented.flatMap(({ name, examples, parameters }) =>
  examples.flatMap(({ formula }) =>
    parameters.map((parameter, i) => ({
      name,
      args: callOf(formula).args as unknown[],
      place: i,
      parameter: parameter.name,
    })),
  ),
);

describe("an argument that is an empty cell means one thing, in whatever form it comes", () => {
  test.each(places.filter(({ name, parameter }) => !SHOWS_ZERO.has(`${name} ${parameter}`)))(
    "$name, $parameter",
    ({ name, args, place }) => expectOneMeaning((value) => call(name, replaced(args, place, value))),
  );
});

const replaced = (args: readonly unknown[], place: number, value: unknown): unknown[] =>
  Array.from({ length: Math.max(args.length, place + 1) }, (_, i) => (i === place ? value : args[i]));

const OPENINGS = [
  ["Opening", "Width", "Height", "Depth", "Drawers", "Quantity", "Cabinet"],
  ["A", 18, 26, 23.25, 2, 1, "one"],
  ["B", 24, 26, 23.25, "5 1/2; 1 part", 1, "one"],
];
const CABINETS = [
  ["Cabinet", "Width", "Height", "Depth", "Columns", "Drawers", "Toe kick", "Back thickness", "Back inset", "Quantity"],
  ["one", 40, 34.5, 24, 2, "5 1/2; 1 part", 4, "1/2", "3/4", 2],
];
const STOCK = [
  ["Material", "Thickness", "Length", "Width", "Price", "Available", "Grain"],
  ["Plywood", 0.25, 96, 48, 32, 9, "length"],
  ["Plywood", 0.5, 96, 48, 58, 9, "length"],
  ["Plywood", 0.75, 96, 48, 66, 9, "none"],
];
const RATES: [string, unknown][] = [
  ["labor rate", 45],
  ["box minutes", 30],
  ["slide price", 18],
  ["pull price", 6],
  ["screw price", 0.06],
  ["edge band price", 0.8],
];
const PLANNING = ["PLAN", "PARTS", "PIECES", "HARDWARE", "SETUPS", "MOUNTING", "FIT", "CHECKS"];

describe("a standard that is an empty cell means one thing, in whatever form it comes", () => {
  const others = [["edge band", "1/32"]];
  test.each(["unit", ...STANDARD_NAMES])("%s", (standard) => {
    for (const name of PLANNING) {
      const rows = others.filter(([other]) => other !== standard);
      expectOneMeaning((value) => call(name, [OPENINGS, [...rows, [standard, value]]]));
    }
  });
});

describe("a rate that is an empty cell means one thing, in whatever form it comes", () => {
  const own = (rate: string, value: unknown) => [...RATES.filter(([name]) => name !== rate), [rate, value]];
  test.each([...RATE_NAMES.map((name) => name.replace("labor", "labour")), "extra delivery"])("%s", (rate) =>
    expectOneMeaning((value) => call("QUOTE", [OPENINGS, [["edge band", "1/32"]], STOCK, own(rate, value)])),
  );
});

describe("a cell of a table that is empty means one thing, in whatever form it comes", () => {
  const cells = (table: readonly unknown[][]) => table[0]!.map((heading, column) => ({ heading, column }));
  const put = (table: readonly unknown[][], column: number, value: unknown) =>
    table.map((row, i) => (i === 1 ? replaced(row, column, value) : row));
  const parts = functions.PARTS(OPENINGS);

  test.each(cells(OPENINGS))("openings, $heading", ({ column }) => {
    for (const name of PLANNING.filter((planning) => planning !== "CHECKS"))
      expectOneMeaning((value) => call(name, [put(OPENINGS, column, value)]));
  });
  test.each(cells(CABINETS))("cabinets, $heading", ({ column }) =>
    expectOneMeaning((value) => call("OPENINGS", [put(CABINETS, column, value)])),
  );
  test.each(cells(parts))("parts, $heading", ({ column }) =>
    expectOneMeaning((value) => call("SHEETS", [put(parts, column, value), STOCK, "1/8", "none", "quick"])),
  );
  test.each(cells(STOCK))("stock, $heading", ({ column }) => {
    expectOneMeaning((value) => call("LAYOUT", [parts, put(STOCK, column, value), "1/8", "none", "quick"]));
    expectOneMeaning((value) => call("QUOTE", [OPENINGS, [["edge band", "1/32"]], put(STOCK, column, value), RATES]));
  });
});

test("CHECKS names a 0 that was read as a blank, once a column, where zero could be meant", () => {
  const table = [
    ["Width", "Height", "Depth", "Drawers", "Quantity", "Front gap", "Bottom overhang", "Rail above", "Side thickness"],
    [18, 26, 23.25, 2, 0, 0, 0, 0, 0],
    [18, 26, 23.25, 2, 0, 0, 0, 0, 0],
  ];
  const found = functions.CHECKS(table).map((row) => String(row[2]));
  expect(found.filter((finding) => finding.includes("read as a blank"))).toEqual([
    "The 0 under Quantity is read as a blank.",
    "The 0 under Front gap is read as a blank.",
  ]);
});

test.each([
  ["none", 0],
  ["0", 0],
  ["0 in", 0],
  ["0 mm", 0],
])("%s is zero for every length that may be zero", (typed) => {
  expect(functions.BOXWIDTH(24, typed)).toBe(24);
  expect(functions.FRONTHEIGHT(27, 2, typed)).toBe(13.5);
  expect(functions.BOXHEIGHT(10, typed, typed)).toBe(10);
  expect(functions.PLAN(OPENINGS, [["space below", typed]])[2]![8]).toBe(0);
});
