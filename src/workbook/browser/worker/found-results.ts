import { sameArea } from "../../address";
import type { EditedWorkbook } from "../../edit/index";
import { CellError, type Outcome, type Result } from "../../engine/index";
import { place, type Results } from "./results";

/** What is told of formulas that are worked out, on sheets with these ids. */
export function resultsOf(worked: readonly Result[], ids: readonly string[]): Results {
  const results = nothing();
  for (const result of worked) {
    const { sheet: at, row, column, area, values, formats } = result;
    const sheet = ids[at]!;
    const own = place(sheet, row, column);
    const value = values[0]?.[0] ?? 0;
    results.values.set(own, value);
    if (isSpilled(result)) results.spills.set(own, { sheet, row, column, area, values });
    if (value instanceof CellError && value.code === "#SPILL!") results.messages.set(own, BLOCKED);
    values.forEach((line, y) =>
      line.forEach((value, x) => {
        const format = formats?.[y]?.[x];
        const message = value instanceof CellError ? value.message : undefined;
        if (!format && !message) return;
        const cell = place(sheet, area.top + y, area.left + x);
        if (message) results.messages.set(cell, message);
        if (format) results.formats.set(cell, format);
      }),
    );
  }
  return results;
}

/** Whether it fills another cell than the formula's own. */
export const isSpilled = ({ row, column, area }: Result): boolean =>
  !sameArea(area, { top: row, left: column, bottom: row, right: column });

const BLOCKED = "The cells that this formula would fill are not empty. Clear them, and it fills them.";

/** What is told of formulas that are not worked out. */
export function keptResults(workbook: EditedWorkbook, kept: Outcome["kept"]): Results {
  const ids = workbook.sheets.map(({ id }) => id);
  const results = nothing();
  for (const { sheet, row, column, reason } of kept) {
    const own = place(ids[sheet]!, row, column);
    results.values.set(own, workbook.storedValue(sheet, row, column));
    results.messages.set(own, `This formula is not worked out here: it ${reason}.`);
  }
  ids.forEach((id, sheet) => {
    for (const { row, column, value } of workbook.keptCells(sheet)) results.filled.set(place(id, row, column), value);
  });
  return results;
}

const nothing = (): Results => ({
  values: new Map(),
  filled: new Map(),
  spills: new Map(),
  messages: new Map(),
  formats: new Map(),
});
