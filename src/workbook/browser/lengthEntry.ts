import { carryFormats } from "./carried-formats";
import { readingIn, readTyped } from "./entries";
import { FRACTION } from "./entry";
import { notices } from "./notices";
import { part } from "./part";
import { readPasted } from "./paste";
import { showTypedFormats } from "./show-formats";
import { TypedFormats } from "./typed-formats";
import type { Grid } from "./univer";

/** What was typed as a fraction, by sheet and cell. */
export interface TypedFractions {
  has(sheet: string, row: number, column: number, value: unknown): boolean;
}

/** Every text that comes into a cell is read in one way, whether it is typed, pasted, or filled in from other cells. */
export function readFractions(grid: Grid): TypedFractions {
  const formats = new TypedFormats();
  const reading = readingIn(grid, formats, () => false);
  readTyped(grid, formats, reading);
  readPasted(grid, formats, reading, (words) => notices(part("notice")).fault(words));
  carryFormats(grid, formats, reading);
  showTypedFormats(grid, formats);
  return {
    has: (sheet, row, column, value) => typeof value === "number" && formats.of(sheet, row, column, value) === FRACTION,
  };
}
