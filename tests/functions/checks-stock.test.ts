import { describe, expect, test } from "vitest";
import { CHECKS, PARTS, QUOTE, SHEETS } from "../../src/functions";
import { column, openings } from "./tables";

const JOB = openings(["A", 18, 20, 20.5, 2]);
const STANDARDS = [
  ["side thickness", "15/32"],
  ["groove depth", "7/32"],
  ["bottom thickness", "7/32"],
  ["front thickness", "23/32"],
  ["front material", "Birch plywood"],
];
const STOCK = [
  ["Material", "Thickness", "Length", "Width", "Price"],
  ["Plywood", "1/2", 96, 48, 60],
  ["Plywood", "1/4", 96, 48, 40],
  ["Birch plywood", "3/4", 96, 48, 90],
];
const RATES: unknown[][] = [
  ["slide price", 18.4],
  ["pull price", 6.25],
  ["screw price", 0.06],
];
const checked = (stock?: unknown, rates?: unknown, standards: unknown[][] = STANDARDS, job = JOB) =>
  CHECKS(job, standards, stock as unknown[][], rates as unknown[][])
    .slice(1)
    .map((row) => row.join("|"));

/** What is found beyond what is without stock and rates. */
function added(...[stock, rates, standards, job]: Parameters<typeof checked>): string[] {
  const bare = checked(undefined, undefined, standards, job);
  return checked(stock, rates, standards, job).filter((row) => !bare.includes(row));
}

/** Common practice: a cut list is held against the stock in the rack before a saw is set. */
describe("CHECKS(openings, standards, stock, rates) covers what is cut from and what is charged", () => {
  test("nothing is added by stock that suffices and rates that are all there, nor by blanks", () => {
    expect(checked()).toEqual(["||All clear|"]);
    expect([added(STOCK), added(STOCK, RATES), added("", ""), added([[0]], [[""]]), added(null, RATES)]).toEqual(
      Array.from({ length: 5 }, () => []),
    );
  });

  test("parts that find no stock: one row for each material and thickness, with every drawer", () => {
    expect(added(STOCK.slice(0, 3))).toEqual([
      "A1, A2|wrong|Front: there is no stock of Birch plywood 23/32 in thick.|Add a row of stock of that material, as thick to within 1/32 in (0.8 mm).",
    ]);
    expect(added([STOCK[0]!, STOCK[3]!])).toEqual([
      expect.stringMatching(/^A1, A2\|wrong\|Side, Box front, Box back: .* Plywood 15\/32 in thick\./),
      expect.stringMatching(/^A1, A2\|wrong\|Bottom: .* Plywood 7\/32 in thick\./),
    ]);
  });

  test("every part that is larger than all sheets of its stock is found, not the first alone", () => {
    const small = [...STOCK.slice(0, 3), ["Birch plywood", "3/4", 12, 30, 90]];
    const wide = openings(["A", 18, 20, 20.5, "3 in; 1 part"], ["B", 18, 20, 20.5, "3 in; 1 part"]);
    const found = added(small, undefined, STANDARDS, wide);
    expect(found).toEqual([expect.stringMatching(/^A2.*\|wrong\|Front of A2.*fits no sheet of its stock/)]);
    const tiny = [...STOCK.slice(0, 3), ["Birch plywood", "3/4", 2, 2, 90]];
    expect(added(tiny, undefined, STANDARDS, wide).filter((row) => /Front of/.test(row))).toHaveLength(
      PARTS(wide, STANDARDS).filter(([part]) => part === "Front").length,
    );
  });

  test("sheets that do not suffice", () => {
    const few = [[...STOCK[0]!, "Available"], ["Plywood", "1/2", 48, 24, 60, 1], ...STOCK.slice(2)];
    const many = openings(["A", 18, 20, 20.5, 4], ["B", 30, 20, 20.5, 4], ["C", 30, 20, 20.5, 4]);
    expect(() => SHEETS(PARTS(many, STANDARDS), few)).toThrow();
    expect(added(few, undefined, STANDARDS, many)).toContainEqual(
      expect.stringMatching(/^stock\|wrong\|Plywood 1\/2 in thick: no way was found to cut all parts/),
    );
  });

  test("prices that are missing, all of them at once, where QUOTE would fail for the first", () => {
    const free = STOCK.map((row) => row.slice(0, 4));
    expect(added(free)).toEqual([]);
    const found = added(free, [["edge band price", 1]]);
    expect(found.map((row) => row.split("|").slice(0, 2).join())).toEqual([
      ...Array.from({ length: 3 }, () => "stock,wrong"),
      ...Array.from({ length: 3 }, () => "rates,wrong"),
    ]);
    expect(() => QUOTE(JOB, STANDARDS, free, [["edge band price", 1]])).toThrow();
    expect(found.slice(3).join()).toMatch(/slide price.*pull price.*screw price/);
    expect(added(STOCK, [...RATES, ["box minutes", 30]])).toEqual([
      expect.stringMatching(/^rates\|wrong\|.*labor rate/),
    ]);
    expect(added(STOCK, [...RATES, ["labor rate", 60]])).toEqual([expect.stringMatching(/^rates\|wrong\|.*minutes/)]);
    expect(added([...STOCK.slice(0, 3), STOCK[3]!.slice(0, 4)])).toEqual([]);
    expect(added([...STOCK, ["Plywood", "1/2", 60, 60, ""]])).toEqual([
      expect.stringMatching(/^stock\|wrong\|stock, row 5 has no price, and others have/),
    ]);
  });

  test("fronts in one grain that no sheet takes in one row: one finding for each opening", () => {
    const matched = [...STANDARDS, ["front match", "opening"]];
    const two = openings(["A", 18, 20, 20.5, 2], ["B", 18, 20, 20.5, 2]);
    // Each front, 10 5/8 by 19, fits; two of them and what lies between do not.
    const small = [...STOCK.slice(0, 3), ["Birch plywood", "3/4", 20, 20, 90]];
    expect(added(small, undefined, matched, two)).toEqual(
      ["A", "B"].map((opening) =>
        expect.stringMatching(
          `^${opening}1\\|wrong\\|The parts of grain group "${opening}" in one piece fit no sheet of their stock`,
        ),
      ),
    );
    expect(added(STOCK, undefined, matched, two)).toEqual([]);
  });

  test("sizes that have no measure in common are found for each stock, with its name and a remedy", () => {
    // A width in 64ths, a kerf in ten-thousandths of an inch, sheets in millimeters: together finer than any saw.
    const metric = STOCK.map((row, i) => (i === 0 ? row : [row[0], row[1], "2440 mm", "1220 mm", row[4]]));
    const job = openings(["A", "18 1/64", 20, 20.5, 2]);
    expect(added(metric, undefined, STANDARDS, job)).toEqual([]);
    expect(added(metric, undefined, [...STANDARDS, ["kerf", 0.0937]], job)).toEqual(
      ["Plywood 1/2 in", "Plywood 1/4 in", "Birch plywood 3/4 in"].map((stock) =>
        expect.stringMatching(
          `^stock\\|wrong\\|${stock} thick cannot be laid out. The sizes of parts and stock are too fine to be laid out together: .*\\|Give openings, kerf, trim and sheets in one unit`,
        ),
      ),
    );
  });

  test("a discount beyond the price, where all of the price is known", () => {
    const discount = ["extra discount", -1000];
    expect(added(STOCK, [...RATES, discount])).toEqual([
      expect.stringMatching(/^rates\|wrong\|rates: the extras take the price to -\d+\.\d+, below 0/),
    ]);
    // What is still missing makes the price more.
    expect(added(STOCK, [...RATES.slice(1), discount])).toEqual([
      expect.stringMatching(/^rates\|wrong\|.*slide price/),
    ]);
    expect(added(undefined, [...RATES, discount])).toEqual([]);
  });

  test("headings of stock that are not read, and zeros that could be meant", () => {
    const own = [
      [...STOCK[0]!, "Note", "Available"],
      ...STOCK.slice(1).map((row, i) => [...row, "rack 2", i === 1 ? 0 : ""]),
    ];
    expect(added(own)).toEqual([
      "stock|doubtful|The column Note is not read.|Nothing to do where it is your own; else correct it.",
      "stock|doubtful|The 0 under Available is read as a blank.|Write none or a zero with its unit, as 0 in, where zero is meant.",
    ]);
  });

  test("a table that cannot be read is one finding, and hides nothing of the openings", () => {
    expect(
      added(
        [
          ["Length", "Width"],
          ["long", 48],
        ],
        [["slide prise", 3]],
      ),
    ).toEqual([
      expect.stringMatching(/^stock\|wrong\|stock, row 2, Length is "long"/),
      expect.stringMatching(/^rates\|wrong\|rates, row 1 has the name "slide prise"/),
    ]);
    const bad = openings(["A", 18, 20, 9, 2], ["B", 18, 20, 20.5, 1]);
    expect(column(CHECKS(bad, STANDARDS, STOCK.slice(0, 3), RATES), "Where")).toEqual(["A", "B1"]);
  });

  test("a part that finds sheets and solid stock alike is told, with both rows", () => {
    const both = [
      ...STOCK.map((row, i) => [...row, i === 0 ? "Sold by" : ""]),
      ["Birch plywood", "3/4", "", "", 9, "board foot"],
    ];
    expect(added(both)).toEqual([
      "A1, A2|wrong|Front finds both rows 4 and 5 of stock, not all of them sheets. Tell them apart by Material or Thickness.|Give one of the rows another Material or Thickness.",
    ]);
  });

  test("solid stock counts as stock, and lacks a price alike", () => {
    const solid = [
      ["Material", "Thickness", "Length", "Width", "Price", "Sold by"],
      ...STOCK.slice(1, 3).map((row) => [...row, ""]),
      ["Birch plywood", "3/4", "", "", "", "board foot"],
    ];
    expect(added(solid)).toEqual([]);
    expect(added(solid, RATES)).toEqual([expect.stringMatching(/^stock\|wrong\|stock, row 4 has no price/)]);
    const priced = [...solid.slice(0, 3), ["Birch plywood", "3/4", "", "", 9, "board foot"]];
    expect(added(priced, RATES)).toEqual([]);
  });
});

/** Kerf 3.2 and front gap 3 are the metric defaults: a fifth of a millimeter in the grain is no finding. */
test("metric defaults raise no finding of their own", () => {
  const metric = (more: unknown[][]) =>
    CHECKS(openings(["A", 450, 500, 520, 3]), [["unit", "mm"], ...more])
      .slice(1)
      .map((row) => row[2]);
  expect(metric([])).toEqual(["All clear"]);
  expect(metric([["front match", "opening"]])).toEqual(["All clear"]);
  expect(
    metric([
      ["front match", "opening"],
      ["front gap", 2],
    ]),
  ).toEqual([expect.stringMatching(/^The kerf of 3.2 mm/)]);
});
