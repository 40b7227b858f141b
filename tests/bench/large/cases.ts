import { cellName } from "../../../src/workbook/address";
import { oneSheet } from "../../workbook/support/handmade";

/** A workbook that is large in one way, and what it may take. */
export interface LargeCase {
  what: string;
  make(): Uint8Array;
  /** `recalculate` as the command does, `open` as the page does. */
  way: "recalculate" | "open";
  target: { seconds: number; megabytes?: number };
}

const LAST_ROW = 1_048_576;

export const LARGE: Record<string, LargeCase> = {
  sums: {
    what: "1,000 SUM(A:A) over a column with a stray cell in its last row",
    make: () =>
      rows(
        [...numbers(1_000, (row) => [value(row, 0, row), formula(row, 1, `SUM(A:A)+${row}`)])],
        `<row r="${LAST_ROW}"><c r="A${LAST_ROW}"><v>1</v></c></row>`,
      ),
    way: "recalculate",
    target: { seconds: 2 },
  },
  unique: {
    what: "UNIQUE of 100,000 values",
    make: () =>
      rows(
        numbers(100_000, (row) => [
          value(row, 0, (row * 7_919) % 100_003),
          row === 0 ? `<c r="C1" cm="1"><f t="array" ref="C1">_xlfn.UNIQUE(A1:A100000)</f><v>0</v></c>` : "",
        ]),
      ),
    way: "recalculate",
    target: { seconds: 2 },
  },
  lookups: {
    what: "20,000 exact VLOOKUPs over 20,000 rows",
    make: () =>
      rows(
        numbers(20_000, (row) => [
          value(row, 0, (row * 7_919) % 20_000),
          value(row, 1, row),
          formula(row, 3, `VLOOKUP(${row},A$1:B$20000,2,FALSE)`),
        ]),
      ),
    way: "recalculate",
    target: { seconds: 2 },
  },
  counts: {
    what: "20,000 COUNTIFs, and as many RANKs, over 20,000 rows",
    make: () =>
      rows(
        numbers(20_000, (row) => [
          value(row, 0, (row * 7_919) % 20_000),
          formula(row, 2, `COUNTIF(A$1:A$20000,A${row + 1})`),
          formula(row, 3, `RANK(A${row + 1},A$1:A$20000)`),
        ]),
      ),
    way: "recalculate",
    target: { seconds: 2 },
  },
  ranges: {
    what: "20,000 SUMs, and as many LARGEs, over one range of 20,000 rows",
    make: () =>
      rows(
        numbers(20_000, (row) => [
          value(row, 0, (row * 7_919) % 20_000),
          formula(row, 2, `A${row + 1}/SUM(A$1:A$20000)`),
          formula(row, 3, `LARGE(A$1:A$20000,${row + 1})`),
        ]),
      ),
    way: "recalculate",
    target: { seconds: 3 },
  },
  filter: {
    what: "FILTER of 100,000 rows by a column of conditions",
    make: () =>
      rows(
        numbers(100_000, (row) => [
          value(row, 0, (row * 7_919) % 100_003),
          value(row, 1, row),
          row === 0
            ? `<c r="D1" cm="1"><f t="array" ref="D1">_xlfn._xlws.FILTER(A1:B100000,A1:A100000&gt;50000)</f><v>0</v></c>`
            : "",
        ]),
      ),
    way: "recalculate",
    target: { seconds: 4 },
  },
  values: {
    what: "990,000 cells of values (more elements are not read)",
    make: () =>
      rows(numbers(9_900, (row) => Array.from({ length: 100 }, (_, column) => value(row, column, row * 100 + column)))),
    way: "recalculate",
    target: { seconds: 8, megabytes: 800 },
  },
  formulas: {
    what: "100,000 formulas, opened",
    make: () =>
      rows(
        numbers(10_000, (row) => [
          value(row, 0, row),
          ...Array.from({ length: 10 }, (_, i) =>
            formula(row, i + 1, `ROUND(${cellName(row, i)}*1.5+${cellName(row, 0)},2)`),
          ),
        ]),
      ),
    way: "open",
    target: { seconds: 3, megabytes: 600 },
  },
  chain: {
    what: "a chain of 10,000 cells, opened",
    make: () => rows(numbers(10_000, (row) => [row === 0 ? value(0, 0, 1) : formula(row, 0, `A${row}+1`)])),
    way: "open",
    target: { seconds: 1 },
  },
};

function rows(lines: readonly string[], more = ""): Uint8Array {
  return oneSheet(lines.map((line, i) => `<row r="${i + 1}">${line}</row>`).join("") + more);
}

const numbers = (count: number, of: (row: number) => string[]): string[] =>
  Array.from({ length: count }, (_, row) => of(row).join(""));

const value = (row: number, column: number, number: number): string =>
  `<c r="${cellName(row, column)}"><v>${number}</v></c>`;

const formula = (row: number, column: number, text: string): string =>
  `<c r="${cellName(row, column)}"><f>${text}</f><v>0</v></c>`;
