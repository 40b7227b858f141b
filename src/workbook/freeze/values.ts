import { cellKey, type Scalar } from "../engine/index";
import { NumberFormats } from "../edit/number-formats";
import { writeContents, type NewContent } from "../edit/write-contents";
import { shortenCalcChain } from "../xlsx/calc-chain";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import type { Spot } from "./to-freeze";

/** Puts the values that the file holds in place of formulas, in the formats that the cells have, or their results bring. */
export function withValues(opened: OpenWorkbook, draft: PackageDraft, spots: readonly Spot[]): void {
  const styles = new NumberFormats(opened);
  opened.sheets.forEach((sheet, i) => {
    const ours = spots.filter((spot) => spot.sheet === i);
    if (!sheet || ours.length === 0) return;
    const { cells } = opened.book.sheets[i]!;
    const there = new Map(sheet.rows.flatMap((row) => row.cells).map((cell) => [cellKey(cell.row, cell.column), cell]));
    const own = new Set(ours.map(({ row, column }) => cellKey(row, column)));
    const contents = new Map<number, NewContent>();
    for (const { area, row, column, formats } of ours) {
      for (let y = area.top; y <= area.bottom; y++)
        for (let x = area.left; x <= area.right; x++) {
          const key = cellKey(y, x);
          // Another formula inside the range has a value of its own.
          if (!there.has(key) || (there.get(key)!.formula && !own.has(key))) continue;
          const value: Scalar = cells.get(key)?.value ?? null;
          contents.set(key, { row: y, column: x, value, format: formats?.[y - row]?.[x - column] });
        }
    }
    draft.set(
      sheet.part,
      writeContents(sheet, [...contents.values()], (base, format) => styles.like(base, format)),
    );
  });
  styles.writeTo(opened, draft);
  const gone = new Set(
    spots.map(({ sheet, row, column }) => `${opened.workbook.sheets[sheet]!.sheetId} ${row} ${column}`),
  );
  shortenCalcChain(opened, draft, (sheetId, row, column) => gone.has(`${sheetId} ${row} ${column}`));
}
