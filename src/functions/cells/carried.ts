import { Fault } from "../../core/length";
import type { CellResult } from "./cell-result";

/**
 * A table as it may leave a function. The spreadsheet on the web refuses a batch of answers over 5 MB, in which each
 * quote is written twice, and says nothing of it: the cell stays busy. What may come near that is refused here.
 * @throws Fault `result.tooLarge`, and `result.longText` for a text that no cell can hold
 */
export function carried(rows: CellResult[][]): CellResult[][] {
  let size = 0;
  rows.forEach((cells, r) => {
    for (const cell of cells) {
      if (typeof cell === "string" && cell.length > LONGEST_TEXT) {
        throw new Fault("result.longText", { row: r + 1, length: written(cell.length), most: written(LONGEST_TEXT) });
      }
      size += sizeOf(cell);
    }
  });
  if (size <= MOST_BYTES) return rows;
  const megabytes = (bytes: number): string => String(Math.round(bytes / 1e5) / 10);
  const data = { rows: written(rows.length), size: megabytes(size), most: megabytes(MOST_BYTES) };
  throw new Fault("result.tooLarge", data);
}

const MOST_BYTES = 2_000_000;
/** What a cell of the spreadsheet holds. */
const LONGEST_TEXT = 32_767;

/** Bytes of a cell as it is handed over, rather more than fewer. */
function sizeOf(cell: CellResult): number {
  if (typeof cell === "string") return 3 + bytesOf(cell);
  if (typeof cell !== "object") return 20;
  return 70 + ("message" in cell ? bytesOf(cell.message ?? "") : 0);
}

/** Whatever is no plain letter takes up to three bytes. */
function bytesOf(text: string): number {
  let bytes = text.length;
  for (let i = 0; i < text.length; i++) if (text.charCodeAt(i) > 127) bytes += 2;
  return bytes;
}

/** Not by the locale: equal answers are equal texts everywhere. */
const written = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, ",");
