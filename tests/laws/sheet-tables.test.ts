import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answer, asked, board, sawnSheets, STOCK, sum } from "./sheet-jobs";
import { listed, same } from "./sheet-saw";

const RUNS = { numRuns: 25 };

describe("laws of SHEETS, LAYOUT and CUTS of one job", () => {
  test("all parts are counted by SHEETS, and each has a place in LAYOUT, its sizes as it lies and its grain kept", () => {
    fc.assert(
      fc.property(asked, (job) => {
        const { sheets, layout } = answer(job);
        const pieces = sum(job.parts.map(({ quantity }) => quantity));
        expect(sum(sheets.map((row) => row["Parts"] as number))).toBe(pieces);
        expect(layout.length).toBe(pieces);
        for (const { name, quantity, length, width, grain, material } of job.parts) {
          const rows = layout.filter((row) => row["Part"] === name);
          expect(rows.length).toBe(quantity);
          for (const row of rows) {
            const turned = row["Turned"] as boolean;
            expect([row["Length"], row["Width"]]).toEqual(turned ? [width, length] : [length, width]);
            expect(row["Material"]).toBe(material);
            if (grain !== "any" && length !== width) expect(turned).toBe(grain === "width");
          }
        }
      }),
      RUNS,
    );
  });

  test("the cuts, made one after another, end with just the parts of LAYOUT, with offcuts and with waste no wider than the kerf", () => {
    fc.assert(
      fc.property(asked, (job) => {
        for (const { placed, boards } of sawnSheets(job, answer(job))) {
          const [parts, others] = [
            boards.filter(({ label }) => /^Part /.test(label)),
            boards.filter(({ label }) => !/^Part /.test(label)),
          ];
          expect(listed(parts)).toEqual(listed(placed.map(board)));
          expect(others.map(({ label }) => label)).toEqual(
            others.map(({ length, width }) => (Math.min(length, width) < job.kerf + 1e-9 ? "waste" : "offcut")),
          );
        }
      }),
      RUNS,
    );
  });

  test("every part lies inside its trimmed sheet, a kerf or more from every other", () => {
    fc.assert(
      fc.property(asked, (job) => {
        const { kerf, trim } = job;
        for (const { sheet, placed } of sawnSheets(job, answer(job))) {
          const boxes = placed.map((row) => {
            const [x, y] = [row["From left"] as number, row["From bottom"] as number];
            return { x, y, right: x + (row["Length"] as number), top: y + (row["Width"] as number) };
          });
          for (const [i, a] of boxes.entries()) {
            const room = Math.min(a.x, a.y, sheet.length - a.right, sheet.width - a.top);
            expect(room).toBeGreaterThan(trim - 1e-6);
            for (const b of boxes.slice(0, i)) {
              const apart = Math.max(a.x - b.right, b.x - a.right, a.y - b.top, b.y - a.top);
              expect(apart).toBeGreaterThan(kerf - 1e-6);
            }
          }
        }
      }),
      RUNS,
    );
  });

  test("SHEETS counts the sheets that CUTS cuts, and tells their yield, cost and largest offcut", () => {
    fc.assert(
      fc.property(asked, (job) => {
        const all = answer(job);
        const cut = sawnSheets(job, all);
        expect(cut.length).toBe(sum(all.sheets.map((row) => row["Sheets"] as number)));
        for (const row of all.sheets) {
          const [length, width] = String(row["Sheet"]).split(" × ").map(Number) as [number, number];
          const price = STOCK[job.unit].find((stock) => stock[1] === length && stock[2] === width)![3];
          const mine = cut.filter(
            ({ material, sheet }) =>
              material === row["Material"] && same(sheet.length, length) && same(sheet.width, width),
          );
          expect(mine.length).toBe(row["Sheets"]);
          expect(mine.flatMap(({ placed }) => placed).length).toBe(row["Parts"]);
          expect(row["Cost"]).toBe(mine.length * price);
          const area = sum(mine.flatMap(({ placed }) => placed.map(board)).map((b) => b.length * b.width));
          expect(row["Yield"]).toBeCloseTo(area / (mine.length * length * width), 9);
          const offcuts = mine.flatMap(({ boards }) => boards.filter(({ label }) => label === "offcut"));
          const largest = Math.max(0, ...offcuts.map((b) => b.length * b.width));
          expect(areaOf(row["Largest offcut"])).toBeCloseTo(largest, 4);
        }
      }),
      RUNS,
    );
  });
});

describe("a layout as the parts", () => {
  test("LAYOUT's table, given as the parts, is laid out as it is, on as many sheets for as much", () => {
    fc.assert(
      fc.property(asked, (job) => {
        const first = answer(job);
        const again = answer(job, first.table);
        const sorted = (rows: Record<string, unknown>[]): string[] => rows.map((row) => JSON.stringify(row)).sort();
        expect(sorted(again.layout)).toEqual(sorted(first.layout));
        const counted = (rows: Record<string, unknown>[]) =>
          rows.map(({ "Largest offcut": _, "Least possible": __, ...row }) => row);
        expect(counted(again.sheets)).toEqual(counted(first.sheets));
        for (const { boards, placed } of sawnSheets(job, again))
          expect(listed(boards.filter(({ label }) => /^Part /.test(label)))).toEqual(listed(placed.map(board)));
      }),
      RUNS,
    );
  });
});

/** Of `48 × 23 7/8`; of nothing 0. */
function areaOf(text: unknown): number {
  if (text === "") return 0;
  const [length, width] = String(text)
    .split(" × ")
    .map((side) => sum(side.split(" ").map((n) => Number(n.split("/")[0]) / Number(n.split("/")[1] ?? 1))));
  return length! * width!;
}
