import { describe, expect, test } from "vitest";
import { FIT } from "../../src/functions";
import { column, messageOf, openings } from "./tables";

const one = openings(["B", 24, 26.25, 23.25, 1]);
const row = (standards?: unknown[][], table = one) => FIT(table, standards)[1]!;
const verdict = (standards?: unknown[][]) => row(standards)[8];
/** Opening, thickness and cut tolerance, and what the slide allows. */
const tolerances = (o: unknown, t: unknown, c: unknown, low: unknown, high: unknown) => [
  ["opening tolerance", o === 0 ? "0" : o],
  ["thickness tolerance", t === 0 ? "0" : t],
  ["cut tolerance", c === 0 ? "0" : c],
  ["slide tolerance low", low === 0 ? "0" : low],
  ["slide tolerance high", high === 0 ? "0" : high],
];

describe("FIT(openings, standards): the side space per side", () => {
  test("has one row a drawer under the headings of the contract", () => {
    const table = FIT(openings(["B", 24, 26.25, 23.25, 3]));
    expect(table[0]).toEqual([
      "Drawer",
      "Nominal",
      "Least",
      "Most",
      "Likely least",
      "Likely most",
      "Allowed least",
      "Allowed most",
      "Verdict",
    ]);
    expect(column(table, "Drawer")).toEqual(["B1", "B2", "B3"]);
  });

  test("an undermount slide's data sheet decides, which states the inside width with a tolerance of its own", () => {
    const undermount = [
      ["slide", "undermount"],
      ["undermount deduction", "1 5/8"],
    ];
    // 1 5/8 less two sides of 1/2 leave 5/8: 5/16 a side, of which the slide takes no less and 1/32 more.
    expect(row(undermount).slice(1, 2).concat(row(undermount).slice(6, 8))).toEqual([5 / 16, 5 / 16, 11 / 32]);
    expect(verdict(undermount)).toMatch(
      / The slide's data sheet decides: it states the inside width and what that may err by\.$/,
    );
    expect(verdict()).not.toMatch(/data sheet/);
    // Half of what a data sheet lets the inside width err by is what the side space may.
    const wide = [
      ["slide tolerance low", "1/16"],
      ["slide tolerance high", "1/16"],
    ];
    expect(verdict([...undermount, ...wide])).toBe("Fits even at worst.");
  });

  test("butt joints: b = c + 2t, and a likely range of the root of o² + c² + (2t)²", () => {
    const [o, c, t] = [1 / 32, 1 / 64, 1 / 64];
    expect(row().slice(1, 8)).toEqual([
      0.5,
      0.5 - (o + c + 2 * t) / 2,
      0.5 + (o + c + 2 * t) / 2,
      0.5 - 3 / 128,
      0.5 + 3 / 128,
      0.5,
      17 / 32,
    ]);
  });

  test.each(["rabbet", "dado"])("%s: b = 3c + 2t, for both joints' depths are cut too", (joint) => {
    const cells = row([
      ["corner joint", joint],
      ["joint depth", "1/4"],
      ...tolerances("1/32", "1/64", "1/64", 0, "1/32"),
    ]);
    expect(cells.slice(2, 4)).toEqual([0.5 - 7 / 128, 0.5 + 7 / 128]);
    expect(cells[4]).toBeCloseTo(0.5 - Math.sqrt(4 + 3 + 4) / 128, 14);
  });

  test.each(["dovetail", "box joint"])("%s: b = c, for the ends run to the outer faces", (joint) => {
    const cells = row([["corner joint", joint]]);
    expect(cells.slice(2, 4)).toEqual([0.5 - 3 / 128, 0.5 + 3 / 128]);
    expect(cells[4]).toBeCloseTo(0.5 - Math.sqrt(4 + 1) / 128, 14);
  });

  test("millimeters have tolerances of their own: 12.7 ∓ 0.6 likely, up to 13.5 allowed", () => {
    const cells = row([["unit", "mm"]], openings(["B", 600, 660, 590, 1]));
    expect(cells.slice(1, 8)).toEqual([12.7, 11.7, 13.7, 12.1, 13.3, 12.7, 13.5]);
  });

  test("nominal is half of what the box leaves, also under a deduction", () => {
    const cells = row([
      ["slide", "undermount"],
      ["undermount deduction", "1 5/8"],
      ["side thickness", "5/8"],
    ]);
    expect(cells[1]).toBe(0.1875);
  });
});

describe("FIT(openings, standards): the verdict", () => {
  test("fits even at worst", () => {
    expect(verdict(tolerances(0, 0, 0, 0, 0))).toBe("Fits even at worst.");
    expect(verdict(tolerances("1/32", "1/64", "1/64", "1/16", "1/16"))).toBe("Fits even at worst.");
  });

  test("fits in likelihood: how far the worst case misses", () => {
    expect(verdict(tolerances("1/32", "1/64", "1/64", "3/128", "3/128"))).toBe(
      "Fits in all likelihood; at worst 1/64 in short or 1/64 in over a side: try the first box before the rest.",
    );
    expect(verdict(tolerances("1/32", "1/64", "1/64", "3/128", "1/16"))).toBe(
      "Fits in all likelihood; at worst 1/64 in short a side: try the first box before the rest.",
    );
  });

  test("binds: how far, and how much narrower the boxes must be", () => {
    expect(verdict(tolerances("1/32", "1/64", "1/64", 0, "1/16"))).toBe(
      "May bind: up to 1/32 in short a side. Make the boxes 1/16 in narrower.",
    );
    expect(verdict()).toBe(
      "May bind: up to 1/32 in short a side. Make the boxes 1/32 in narrower, and measure closer: opening and stock vary more than the slide allows.",
    );
  });

  test("loose: how far, and to make the boxes wider or shim", () => {
    expect(verdict(tolerances("1/32", "1/64", "1/64", "1/16", 0))).toBe(
      "May be loose: up to 1/32 in over a side. Make the boxes 1/16 in wider, or shim the slides where they are loose.",
    );
  });

  test("both ways: measure closer", () => {
    expect(verdict(tolerances("1/32", "1/64", "1/64", "1/128", "1/128"))).toBe(
      "May bind or be loose: up to 1/64 in short or 1/64 in over a side. Measure closer: opening and stock vary more than the slide allows.",
    );
  });

  test("too narrow in one place and too wide in another: no box gets wider, which would bind the more; slides are shimmed", () => {
    const spread = (low: unknown) =>
      FIT(openings(["A", "20; 20 3/8", 20, 20.5, 1]), [["slide tolerance low", low]])[1]![8];
    const closer = "measure closer: opening and stock vary more than the slide allows.";
    const shim = `Shim the slides where they are loose, and ${closer}`;
    expect(spread(0)).toBe(`May bind or be loose: up to 1/32 in short or 3/16 in over a side. ${shim}`);
    expect(spread("1/16")).toBe(`May be loose: up to 3/16 in over a side. ${shim}`);
  });

  test("a shim takes play away and gives none: boxes that may bind are made narrower, and shimmed where they are loose", () => {
    expect(verdict(tolerances("1/16", "1/32", "1/64", 0, "1/32"))).toBe(
      "May bind or be loose: up to 3/64 in short or 1/64 in over a side. Make the boxes 1/32 in narrower, shim the slides where they are loose, and measure closer: opening and stock vary more than the slide allows.",
    );
  });

  test("a box made narrower as the verdict says fits", () => {
    const standards = tolerances("1/32", "1/64", "1/64", 0, "1/16");
    const moved = tolerances("1/32", "1/64", "1/64", "1/32", "1/32");
    expect(String(verdict(standards))).toMatch(/^May bind/);
    const cells = row([...moved, ["side clearance", "17/32"]]);
    expect(cells.slice(6, 8)).toEqual(row(standards).slice(6, 8));
    expect(cells[8]).toMatch(/^Fits in all likelihood/);
  });

  test("an opening that cannot be planned gives one row of errors, and the others are right", () => {
    const table = FIT(openings(["A", "wide", 20, 20.5, 2], ["B", 18, 20, 20.5, 1]));
    expect(table.length).toBe(3);
    expect(table[1]![0]).toBe("A");
    expect(messageOf(table[1]![8])).toMatch(/^#VALUE! openings, row 2, Width is "wide", which is no length/);
    expect(table[2]![1]).toBe(0.5);
  });
});

describe("FIT(openings, standards): an opening that is not equally wide", () => {
  test("nominal and least come from the least measurement, most from the greatest", () => {
    const cells = row(undefined, openings(["A", "20; 20 3/8", 20, 20.5, 1]));
    // The box is 19: at the wide end 1 3/8 is left, 11/16 a side.
    expect(cells.slice(1, 8)).toEqual([
      0.5,
      0.5 - 5 / 128,
      11 / 16 + 5 / 128,
      0.5 - 3 / 128,
      11 / 16 + 3 / 128,
      0.5,
      17 / 32,
    ]);
    const spread = tolerances(0, 0, 0, 0, "1/32");
    expect(row(spread, openings(["A", "20; 20 3/8", 20, 20.5, 1]))[8]).toMatch(
      /^May be loose: up to 5\/32 in over a side/,
    );
    expect(row(spread, openings(["A", "20 1/16; 20", 20, 20.5, 1]))[8]).toBe("Fits even at worst.");
  });
});

describe("FIT(openings, standards): boxes on wood runners", () => {
  const runners = (...more: unknown[][]) => row([["slide", "wood runner"], ...more], openings(["A", 18, 20, 20.5, 1]));

  test("are judged by their own play: from a hair to 1/8 in a side, whatever slides at the side allow", () => {
    expect(runners().slice(6)).toEqual([1 / 64, 0.125, "Fits even at worst."]);
    expect(runners(["slide tolerance high", "none"]).slice(6, 8)).toEqual([1 / 64, 0.125]);
    expect(runners(["side clearance", "1/64"])[8]).toMatch(/^May bind: up to 1\/32 in short a side/);
    expect(runners(["side clearance", "1/4"])[8]).toMatch(/^May be loose/);
    const mm = FIT(openings(["A", 450, 500, 520, 1]), [
      ["unit", "mm"],
      ["slide", "wood runner"],
    ])[1]!;
    expect(mm.slice(6)).toEqual([0.4, 3, "Fits even at worst."]);
  });

  test("a strip in a groove meets its bottom before the box meets the case", () => {
    expect(runners(["runner", "side groove"]).slice(6, 8)).toEqual([1 / 32, 0.125]);
  });
});
