import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { groupsOf } from "../../src/core/drawer";
import { LAYOUT, PARTS, PIECES, SETUPS, SHEETS, WORKING } from "../../src/functions";
import { num, records, SET_ASIDE, type Cell } from "./jobs";

type Row = Record<string, Cell>;

/** Columns of 8 to 24 in, and what lies between fronts, is glued on and milled off, all in 64ths of an inch. */
const bank = fc.record({
  widths: fc.array(fc.integer({ min: 8 * 64, max: 24 * 64 }), { minLength: 2, maxLength: 3 }),
  rows: fc.integer({ min: 2, max: 3 }),
  copies: fc.integer({ min: 1, max: 2 }),
  grain: fc.constantFrom("vertical", "horizontal"),
  style: fc.constantFrom("overlay", "inset"),
  gap: fc.integer({ min: 4, max: 32 }),
  band: fc.integer({ min: 0, max: 4 }),
  mill: fc.integer({ min: 0, max: 3 }),
  kerf: fc.integer({ min: 4, max: 10 }),
  sheet: fc.constantFrom("as it lies", "turned"),
});
type Bank = typeof bank extends fc.Arbitrary<infer T> ? T : never;

function jobOf({ widths, rows, copies, grain, style, gap, band, mill, kerf }: Bank) {
  const openings = [
    ["Opening", "Width", "Height", "Depth", "Drawers", "Cabinet", "Quantity"],
    ...widths.map((width, i) => ["ABC"[i]!, width / 64, 24, 20.5, rows, "bank", copies]),
  ];
  const sizes = Object.entries({ "front gap": gap, "edge band": band, "pre-mill": mill, kerf });
  const standards = [
    ...sizes.map(([name, n]) => [name, `${n}/64 in`]),
    ["front match", "panel"],
    ["front grain", grain],
    ["front style", style],
  ];
  /** Between rows the gap; between columns the gap, or the partition of 3/4 with two inset gaps of 3/32; bands on both. */
  const [down, across] = [gap, style === "inset" ? 60 : gap].map(
    (apart) => Math.max(kerf, apart + 2 * band - 2 * mill) / 64,
  ) as [number, number];
  return { openings, standards, down, across };
}

/** How the columns and rows of a cabinet follow each other on a sheet: a quarter turn from one way to the next, no mirror. */
const WAYS = {
  "vertical false": { right: ["From bottom", "Width", 1], down: ["From left", "Length", 1] },
  "horizontal false": { right: ["From left", "Length", 1], down: ["From bottom", "Width", -1] },
  "vertical true": { right: ["From left", "Length", -1], down: ["From bottom", "Width", 1] },
  "horizontal true": { right: ["From bottom", "Width", 1], down: ["From left", "Length", 1] },
} as const;
type Way = (typeof WAYS)["vertical false"]["right" | "down"] | (typeof WAYS)["horizontal false"]["down"];

/** The front that lies beside another the given way, so far from it, in line with it. */
function beside(
  one: Row,
  label: string,
  [at, side, sign]: Way | readonly [string, string, number],
  apart: number,
  all: Row[],
) {
  const line = at === "From left" ? "From bottom" : "From left";
  return all.filter((other) => {
    const [first, second] = sign > 0 ? [one, other] : [other, one];
    return (
      other["Drawer"] === label &&
      other["Sheet"] === one["Sheet"] &&
      other[line] === one[line] &&
      num(second[at]) === num(first[at]) + num(first[side]) + apart
    );
  });
}

/** common practice: the fronts of a bank come from one panel as they hang, and what lies between them is cut away */
describe("the panel of a cabinet's fronts", () => {
  test("holds each of them once, and is as large each way as they and what lies between them", () => {
    fc.assert(
      fc.property(bank, (drawn) => {
        const { openings, standards, down, across } = jobOf(drawn);
        const { widths, rows, copies, grain } = drawn;
        const fronts = records(PIECES(openings, standards)).filter((piece) => piece["Part"] === "Front");
        const panels = groupsOf(fronts, (piece) => piece["Grain group"]);
        expect(panels.length).toBe(copies);
        const [up, wide] = grain === "vertical" ? ["Length", "Width"] : ["Width", "Length"];
        const sums = panels.map((pieces) => {
          expect(new Set(pieces.map((piece) => piece["Drawer"])).size).toBe(widths.length * rows);
          expect(pieces.length).toBe(widths.length * rows);
          const sum = (of: RegExp, side: string, apart: number) => {
            const line = pieces.filter((piece) => of.test(String(piece["Drawer"])));
            return line.reduce((total, piece) => total + num(piece[side]), 0) + (line.length - 1) * apart;
          };
          return [sum(/^A/, up!, down), sum(/1$/, wide!, across)];
        });
        const [height, width] = sums[0]!;
        expect(new Set(sums.map(String)).size).toBe(1);
        const told = records(SETUPS(openings, standards)).filter((step) => SET_ASIDE.test(String(step["Setting"])));
        const along = grain === "vertical" ? [height, width] : [width, height];
        expect(told.map((step) => [step["Value"], step["Pieces"]])).toEqual(along.map((size) => [size, copies]));
        const working = WORKING(openings, "B2", standards).filter(([name]) =>
          /^Front (strip|panel)/.test(String(name)),
        );
        expect(working.map(([, size]) => size)).toEqual([...along].reverse());
      }),
      { numRuns: 60 },
    );
  });

  test("lies on a sheet of its own size as it hangs, turned but never mirrored, and on none that is smaller", () => {
    fc.assert(
      fc.property(bank, (drawn) => {
        const { openings, standards, down, across } = jobOf(drawn);
        const { widths, rows, copies, grain, kerf, sheet } = drawn;
        const steps = records(SETUPS(openings, standards)).filter((step) => SET_ASIDE.test(String(step["Setting"])));
        const [length, width] = steps.map((step) => num(step["Value"])) as [number, number];
        const stock = (short: number) => [
          ["Thickness", "Length", "Width", "Grain"],
          [0.25, 96, 48, ""],
          [0.5, 96, 48, ""],
          sheet === "turned" ? [0.75, width - short, length, "none"] : [0.75, length, width - short, "length"],
        ];
        const parts = PARTS(openings, standards);
        const fronts = records(LAYOUT(parts, stock(0), `${kerf}/64`, 0, "quick" as never)).filter(
          (row) => row["Part"] === "Front",
        );
        expect(fronts.length).toBe(widths.length * rows * copies);
        expect(new Set(fronts.map((front) => front["Sheet"])).size).toBe(copies);
        for (const front of fronts) {
          const ways = WAYS[`${grain} ${String(front["Turned"])}` as keyof typeof WAYS];
          const [, column, row] = /^([ABC])(\d)$/.exec(String(front["Drawer"]))!;
          const place = "ABC".indexOf(column!);
          if (place + 1 < widths.length)
            expect(beside(front, `${"ABC"[place + 1]!}${row!}`, ways.right, across, fronts)).toHaveLength(1);
          if (Number(row) < rows)
            expect(beside(front, `${column!}${Number(row) + 1}`, ways.down, down, fronts)).toHaveLength(1);
        }
        expect(() => SHEETS(parts, stock(1 / 64), `${kerf}/64`, 0, "quick" as never)).toThrow(/one piece/);
      }),
      { numRuns: 60 },
    );
  });
});
