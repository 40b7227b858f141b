import "../host";
import * as functions from "../../src/functions";
import { cellKey, type Book, type Cell } from "../../src/workbook/engine/engine";
import { createEngine } from "../../src/workbook/engine/index";

/** Ours, and the same sum as a careful person writes it natively; `#` stands for the row. */
const TWINS: [ours: string, native: string][] = [
  ["_xldudf_DRAWER_BOXWIDTH(A#)", "A#-2*0.5"],
  ["_xldudf_DRAWER_BOXHEIGHT(A#,0.5,0.25,0.125)", "FLOOR(ROUND(A#-0.5-0.25,6),0.125)"],
  ["_xldudf_DRAWER_FRONTHEIGHT(A#,3,0.125)", "(A#-2*0.125)/3"],
];
const CELLS = 10_000;

/** 10,000 cells of ours against the same sums as native formulas, in the engine that recalculates files. */
export function benchEngine(): void {
  const engine = createEngine({ functions: { ...functions } });
  console.log(`milliseconds for ${CELLS.toLocaleString("en")} cells (median of 7): ours, native, ratio`);
  for (const [ours, native] of TWINS) {
    const times = [ours, native].map(() => [] as number[]);
    // In turn, so that a slow moment of the machine falls on both.
    for (let run = 0; run < 9; run++) {
      [ours, native].forEach((formula, i) => {
        const book = bookOf(formula, run);
        const start = performance.now();
        const { results, kept } = engine.calculate(book);
        if (run >= 2) times[i]!.push(performance.now() - start);
        if (results.length !== CELLS || kept.length > 0) throw new Error(`${formula} was not calculated.`);
      });
    }
    const [a, b] = times.map((all) => all.sort((x, y) => x - y)[all.length >> 1]!);
    const name = /DRAWER_([A-Z]+)/.exec(ours)![1]!;
    console.log(
      `  ${name.padEnd(14)}${a!.toFixed(0).padStart(8)}${b!.toFixed(0).padStart(8)}${(a! / b!).toFixed(2).padStart(8)}`,
    );
  }
}

function bookOf(formula: string, run: number): Book {
  const cells = new Map<number, Cell>();
  for (let row = 0; row < CELLS; row++) {
    cells.set(cellKey(row, 0), { row, column: 0, value: 12 + ((row * 7 + run) % 4096) / 64 });
    cells.set(cellKey(row, 1), {
      row,
      column: 1,
      value: 0,
      formula: {
        text: formula.replaceAll("#", String(row + 1)),
        rowShift: 0,
        columnShift: 0,
        kind: "plain",
        area: { top: row, left: 1, bottom: row, right: 1 },
      },
    });
  }
  const sheet = { name: "Bench", cells, merged: [], hiddenRows: new Set<number>(), filters: [] };
  return { sheets: [sheet], names: [], tables: [], date1904: false };
}
