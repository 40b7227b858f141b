import "../../host";
import { cellName, parseCell } from "../../../src/workbook/address";
import { Bookkeeper } from "../../../src/workbook/browser/worker/bookkeeper";
import { openingCell, standardCell } from "../../workbook/support/bench-places";
import { partsBenchFile } from "../../workbook/support/parts-bench";
import { oneSheet } from "../../workbook/support/handmade";

const EDITS = 31;
const CELLS = 10_000;

function edit(
  what: string,
  bytes: Uint8Array,
  address: string,
  content: (i: number) => number | { formula: string },
  target?: number,
): void {
  const bookkeeper = new Bookkeeper();
  const { sheets } = bookkeeper.answer("open", { bytes, edits: [] });
  const place = { sheet: sheets[0]!.id, ...parseCell(address)! };
  const times = Array.from({ length: EDITS }, (_, i) => {
    const start = performance.now();
    const { difference } = bookkeeper.answer("put", { edits: [{ ...place, content: content(i) }] });
    const time = performance.now() - start;
    if (i > 0 && difference.values.set.size === 0) throw new Error(`Nothing follows from ${address}.`);
    return time;
  });
  const [first, ...others] = times;
  others.sort((a, b) => a - b);
  const [median, least, most] = [others[others.length >> 1]!, others[0]!, others.at(-1)!].map((time) =>
    time.toFixed(1),
  );
  const wanted = target === undefined ? "" : `; target: ${target}`;
  console.log(`  ${what}: ${median} (${first!.toFixed(1)}, ${least} to ${most})${wanted}`);
}

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

console.log("milliseconds of an edit: median (first, least to most) of the others; target");
const example = partsBenchFile();
edit("an opening of the parts bench", example, openingCell("A", "Width"), (i) => 18 + i / 16, 40);
edit("one that every drawer and price hangs on", example, standardCell("front gap"), (i) => 1 / 8 + i / 64, 80);
edit(`one of ${CELLS} cells of ours`, ofOurs("A"), "A5000", (i) => 20 + i / 16, 30);
edit(`one that ${CELLS} cells of ours hang on`, ofOurs("$A$1+A"), "A1", (i) => 20 + i / 16);
edit(`the first of a chain of ${CELLS} cells`, chain(), "A1", (i) => i, 50);
