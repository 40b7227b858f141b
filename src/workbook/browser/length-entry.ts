import { carryFormats } from "./carried-formats";
import { showDatesFrom1904 } from "./dates-from-1904";
import { readingIn, readTyped } from "./entries";
import { notices } from "./notices";
import { part } from "./part";
import { readPasted } from "./paste";
import type { OpenInGrid } from "./session";
import { showTypedFormats } from "./show-formats";
import { TypedFormats } from "./typed-formats";
import type { TypedNumbers } from "./typed-numbers";
import type { Grid } from "./univer";

/** Every text that comes into a cell is read in one way, whether it is typed, pasted, or filled in from other cells. */
export function readEntries(grid: Grid, open: () => OpenInGrid): TypedNumbers {
  const formats = new TypedFormats(open);
  const reading = readingIn(grid, formats, open);
  readTyped(grid, formats, reading);
  readPasted(grid, formats, reading, (words) => notices(part("notice")).fault(words));
  carryFormats(grid, formats, reading);
  showTypedFormats(grid, formats);
  showDatesFrom1904(grid, open);
  return {
    note: (...cell) => formats.note(...cell),
    format: (sheet, row, column, content) =>
      typeof content === "number" && !reading.isFormatted(open().unitId, sheet, row, column)
        ? formats.of(sheet, row, column, content)
        : undefined,
  };
}
