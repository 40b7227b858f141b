import { cellName, parseCell } from "../../../src/workbook/address";
import { openingCell, standardCell } from "../../workbook/support/bench-places";
import { partsBenchFile } from "../../workbook/support/parts-bench";
import { oneSheet } from "../../workbook/support/handmade";

/** What is put into one cell of a workbook's first sheet, time after time. */
export interface Edited {
  what: string;
  bytes: Uint8Array;
  cell: { row: number; column: number };
  contents: readonly number[];
  /** Milliseconds. */
  target?: number;
}

export function editedCells(): Edited[] {
  const example = partsBenchFile();
  return [
    edited("an opening of the parts bench", example, openingCell("A", "Width"), (i) => 18 + i / 16, 40),
    edited("one that every drawer and price hangs on", example, standardCell("front gap"), (i) => 1 / 8 + i / 64, 80),
    edited(`one of ${CELLS} cells of ours`, ofOurs("A"), "A5000", (i) => 20 + i / 16, 30),
    edited(`one that ${CELLS} cells of ours hang on`, ofOurs("$A$1+A"), "A1", (i) => 20 + i / 16),
    edited(`the first of a chain of ${CELLS} cells`, chain(), "A1", (i) => i, 50),
  ];
}

/** The first edit stands apart: with it the worker reads what it has not read till then. */
export function told({ what, target }: Edited, [first, ...others]: readonly number[]): string {
  const sorted = others.sort((a, b) => a - b);
  const [median, least, most] = [sorted[sorted.length >> 1]!, sorted[0]!, sorted.at(-1)!].map((time) =>
    time.toFixed(1),
  );
  const wanted = target === undefined ? "" : `; target: ${target}`;
  return `  ${what}: ${median} (${first!.toFixed(1)}, ${least} to ${most})${wanted}`;
}

const EDITS = 31;
const CELLS = 10_000;

const edited = (
  what: string,
  bytes: Uint8Array,
  address: string,
  content: (i: number) => number,
  target?: number,
): Edited => ({
  what,
  bytes,
  cell: parseCell(address)!,
  contents: Array.from({ length: EDITS }, (_, i) => content(i)),
  ...(target !== undefined && { target }),
});

const row = (i: number, cells: string): string => `<row r="${i + 1}">${cells}</row>`;

/** Openings in column A, and a box of ours for each. */
const ofOurs = (argument: string): Uint8Array =>
  oneSheet(
    Array.from({ length: CELLS }, (_, i) =>
      row(
        i,
        `<c r="A${i + 1}"><v>${20 + (i % 160) / 16}</v></c><c r="B${i + 1}"><f>_xldudf_DRAWER_BOXWIDTH(${argument}${i + 1})</f><v>0</v></c>`,
      ),
    ).join(""),
  );

const chain = (): Uint8Array =>
  oneSheet(
    Array.from({ length: CELLS }, (_, i) =>
      row(i, `<c r="${cellName(i, 0)}">${i === 0 ? "<v>1</v>" : `<f>A${i}+1</f><v>0</v>`}</c>`),
    ).join(""),
  );
