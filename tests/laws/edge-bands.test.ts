import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { HARDWARE, PARTS, PIECES, PLAN } from "../../src/functions";
import { num, openings, records, standards, type Cell, type Table } from "./jobs";

const EDGES = ["top", "bottom", "left", "right"] as const;
const thickness = fc.constantFrom("none", "1/64", "1/32", "1/8");
const bands = fc.record({ top: thickness, bottom: thickness, left: thickness, right: thickness, box: thickness });
const SIZES: Record<string, number> = { none: 0, "1/64": 1 / 64, "1/32": 1 / 32, "1/8": 1 / 8 };

describe("laws of edge bands", () => {
  test("cut and banded, a front is as the plan has it, and every band is bought once, by its edges' lengths", () => {
    fc.assert(
      fc.property(openings, standards, bands, fc.constantFrom(0, 1, 2), (table, values, own, allowance) => {
        const all: Table = [
          ...values,
          ...EDGES.map((edge): Cell[] => [`${edge} edge band`, own[edge]]),
          ["box edge band", own.box],
          ["edge band allowance", allowance === 0 ? "none" : allowance],
        ];
        const upright = values.some(([name, value]) => name === "front grain" && value === "vertical");
        const fronts = records(PARTS(table, all, false)).filter((part) => part["Part"] === "Front");
        const needed = new Map<string, number>();
        records(PLAN(table, all)).forEach((drawer, i) => {
          const [length, width] = [num(fronts[i]!["Length"]), num(fronts[i]!["Width"])];
          const [high, wide] = upright ? [length, width] : [width, length];
          expect(high + SIZES[own.top]! + SIZES[own.bottom]!).toBeCloseTo(num(drawer["Front height"]), 12);
          expect(wide + SIZES[own.left]! + SIZES[own.right]!).toBeCloseTo(num(drawer["Front width"]), 12);
          for (const edge of EDGES) {
            const along = edge === "top" || edge === "bottom" ? "Front width" : "Front height";
            put(own[edge], "3/4", num(fronts[i]!["Qty"]) * (num(drawer[along]) + allowance));
          }
        });
        for (const part of records(PARTS(table, all, false)))
          if (/^(Side|Box|Divider)/.test(String(part["Part"])))
            put(own.box, String(part["Thickness"]), num(part["Qty"]) * (num(part["Length"]) + allowance));
        const bought = records(HARDWARE(table, all)).filter((item) => item["Item"] === "Edge band");
        const feet = [...needed.values()].map((inches) => Math.ceil(Number((inches / 1.2).toFixed(6))) / 10);
        // Stock of one thickness has one row, whichever parts are of it.
        expect(total(bought.map((item) => num(item["Qty"])))).toBeCloseTo(total(feet), 6);

        function put(band: string, stock: string, inches: number): void {
          if (band === "none") return;
          const key = `${band} ${stock === "0.75" ? "3/4" : stock}`;
          needed.set(key, (needed.get(key) ?? 0) + inches);
        }
      }),
      { numRuns: 40 },
    );
  });

  test("PIECES marks every banded edge, and no other", () => {
    fc.assert(
      fc.property(openings, bands, (table, own) => {
        const all = EDGES.map((edge): Cell[] => [`${edge} edge band`, own[edge]]);
        const banded = EDGES.filter((edge) => own[edge] !== "none");
        for (const piece of records(PIECES(table, [...all, ["box edge band", own.box]]))) {
          const edges = String(piece["Edges"]);
          if (piece["Part"] === "Bottom") expect(edges).toBe("");
          else if (piece["Part"] !== "Front") expect(edges).toBe(own.box === "none" ? "" : `top ${own.box} in`);
          else if (!edges.startsWith("all four")) expect(edges.match(/top|bottom|left|right/g) ?? []).toEqual(banded);
          else expect(banded).toHaveLength(4);
        }
      }),
      { numRuns: 20 },
    );
  });
});

const total = (numbers: number[]): number => numbers.reduce((sum, one) => sum + one, 0);
