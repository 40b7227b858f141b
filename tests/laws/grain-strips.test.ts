import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { groupsOf } from "../../src/core/drawer";
import { CUTS, LAYOUT, PARTS, PIECES, SETUPS, WORKING } from "../../src/functions";
import { num, records, SET_ASIDE } from "./jobs";

/** Fronts of 3 to 12 in, and what lies between, is glued on and milled off, all in 64ths of an inch. */
const job = fc.record({
  drawers: fc.array(fc.integer({ min: 3 * 64, max: 12 * 64 }), { minLength: 2, maxLength: 4 }),
  gap: fc.integer({ min: 4, max: 32 }),
  band: fc.integer({ min: 0, max: 4 }),
  mill: fc.integer({ min: 0, max: 3 }),
  kerf: fc.integer({ min: 4, max: 10 }),
});

const STOCK = [
  ["Thickness", "Length", "Width"],
  [0.25, 96, 48],
  [0.5, 96, 48],
  [0.75, 96, 48],
];

/** common practice: the grain runs on across the gaps of the hung fronts, so what lies there is cut away */
describe("a grain strip is one length everywhere", () => {
  test("SETUPS, LAYOUT, CUTS and PARTS agree on it, its order and what lies between its fronts", () => {
    fc.assert(
      fc.property(job, ({ drawers, gap, band, mill, kerf }) => {
        const height = (drawers.reduce((sum, one) => sum + one, 0) + (drawers.length - 1) * gap) / 64;
        const table = [
          ["Opening", "Width", "Height", "Depth", "Drawers"],
          ["A", 18, height, 20.5, drawers.map((one) => `${one}/64 in`).join("; ")],
        ];
        const standards = Object.entries({ "front gap": gap, "edge band": band, "pre-mill": mill, kerf }).map(
          ([name, n]) => [name, `${n}/64 in`],
        );
        const matched = [...standards, ["front match", "opening"], ["match heights", "none"], ["height step", "none"]];
        const between = Math.max(kerf, gap + 2 * band - 2 * mill) / 64;
        const parts = PARTS(table, matched);
        const lengths = records(parts).flatMap((row) => (row["Part"] === "Front" ? [num(row["Length"])] : []));
        const strip = lengths.reduce((sum, one) => sum + one, 0) + (lengths.length - 1) * between;

        const setUp = records(SETUPS(table, matched)).find((row) => SET_ASIDE.test(String(row["Setting"])));
        expect(setUp!["Value"]).toBe(strip);

        const fronts = records(LAYOUT(parts, STOCK, `${kerf}/64`, 0, "quick" as never))
          .filter((row) => row["Part"] === "Front")
          .sort((a, b) => num(a["From left"]) - num(b["From left"]));
        expect(fronts.map((row) => row["Drawer"])).toEqual(drawers.map((_, i) => `A${i + 1}`));
        fronts.slice(1).forEach((front, i) => {
          expect(num(front["From left"]) - num(fronts[i]!["From left"]) - num(fronts[i]!["Length"])).toBe(between);
        });

        const cuts = CUTS(parts, STOCK, `${kerf}/64`, 0, "quick" as never).filter(
          (row) => row[0] === fronts[0]!["Sheet"],
        );
        const order = cuts.flatMap((row) =>
          [...String(row[7]).matchAll(/Front \((A\d)\)/g)].map(([, drawer]) => drawer),
        );
        expect(order).toEqual(drawers.map((_, i) => `A${i + 1}`));
        cuts.forEach((row) => {
          const [, kept] = /^Front \(A(\d)\)/.exec(String(row[7])) ?? [];
          if (kept) expect(row[5]).toBe(lengths[Number(kept) - 1]);
        });
      }),
      { numRuns: 40 },
    );
  });

  test("copies of a strip lie one kerf apart, and every front is cut to its size", () => {
    fc.assert(
      fc.property(job, fc.integer({ min: 2, max: 4 }), ({ drawers, gap, band, mill, kerf }, copies) => {
        const height = (drawers.reduce((sum, one) => sum + one, 0) + (drawers.length - 1) * gap) / 64;
        const table = [
          ["Opening", "Width", "Height", "Depth", "Drawers", "Quantity"],
          ["A", 18, height, 20.5, drawers.map((one) => `${one}/64 in`).join("; "), copies],
        ];
        const standards = Object.entries({ "front gap": gap, "edge band": band, "pre-mill": mill, kerf }).map(
          ([name, n]) => [name, `${n}/64 in`],
        );
        const matched = [...standards, ["front match", "opening"], ["match heights", "none"], ["height step", "none"]];
        const parts = PARTS(table, matched);
        const size = new Map(
          records(parts).flatMap((row) => (row["Part"] === "Front" ? [[row["Drawer"], row] as const] : [])),
        );
        const fronts = records(LAYOUT(parts, STOCK, `${kerf}/64`, 0, "quick" as never)).filter(
          (row) => row["Part"] === "Front",
        );
        expect(fronts).toHaveLength(drawers.length * copies);
        const cuts = records(CUTS(parts, STOCK, `${kerf}/64`, 0, "quick" as never));
        let kept = 0;
        for (const { Gives: gives, Setting: setting } of cuts) {
          const drawer = /^Front \((A\d)\)/.exec(String(gives))?.[1];
          if (!drawer) continue;
          kept++;
          expect([size.get(drawer)!["Length"], size.get(drawer)!["Width"]]).toContain(setting);
        }
        expect(kept).toBeGreaterThanOrEqual(copies);
      }),
      { numRuns: 40 },
    );
  });
});

const row = fc.record({
  widths: fc.array(fc.integer({ min: 8 * 64, max: 24 * 64 }), { minLength: 2, maxLength: 3 }),
  count: fc.integer({ min: 1, max: 3 }),
  copies: fc.integer({ min: 1, max: 3 }),
  grain: fc.constantFrom("vertical", "horizontal"),
  gap: fc.integer({ min: 4, max: 32 }),
  band: fc.integer({ min: 0, max: 4 }),
  mill: fc.integer({ min: 0, max: 3 }),
  kerf: fc.integer({ min: 4, max: 10 }),
});

/** common practice: fronts beside each other come in order from one board, and what hangs between them is cut away */
describe("a strip across a cabinet", () => {
  test("holds each front of its level once, from the left, and is as long as they and what lies between them", () => {
    fc.assert(
      fc.property(row, ({ widths, count, copies, grain, gap, band, mill, kerf }) => {
        const labels = widths.map((_, i) => "ABC"[i]!);
        const table = [
          ["Opening", "Width", "Height", "Depth", "Drawers", "Cabinet", "Quantity"],
          ...widths.map((width, i) => [labels[i]!, width / 64, 24, 20.5, count, "row", copies]),
        ];
        const matched = [
          ...Object.entries({ "front gap": gap, "edge band": band, "pre-mill": mill, kerf }).map(([name, n]) => [
            name,
            `${n}/64 in`,
          ]),
          ["front match", "cabinet"],
          ["front grain", grain],
        ];
        const along = grain === "vertical" ? "Width" : "Length";
        const between = Math.max(kerf, gap + 2 * band - 2 * mill) / 64;
        const fronts = records(PIECES(table, matched)).filter((piece) => piece["Part"] === "Front");
        const strips = groupsOf(fronts, (piece) => String(piece["Grain group"]));
        expect(strips.length).toBe(count * copies);

        const lengths = strips.map((pieces) => {
          const level = String(pieces[0]!["Drawer"]).slice(1);
          expect(pieces.map((piece) => piece["Drawer"]).sort()).toEqual(labels.map((label) => label + level));
          return pieces.reduce((sum, piece) => sum + num(piece[along]), 0) + (widths.length - 1) * between;
        });
        expect(new Set(lengths).size).toBe(1);
        const told = records(SETUPS(table, matched)).find((step) => SET_ASIDE.test(String(step["Setting"])));
        expect([told!["Value"], told!["Pieces"]]).toEqual([lengths[0], count * copies]);
        expect(WORKING(table, "A1", matched).find(([name]) => name === "Front strip")![1]).toBe(lengths[0]);
      }),
      { numRuns: 60 },
    );
  });
});
