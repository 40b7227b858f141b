import { shifted } from "../formula/typed-text";
import { cellKey } from "../engine/index";
import { withReferences } from "../sheets/references";
import { applyEdits, type Edit } from "../text-edits";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import { PackageDraft } from "../xlsx/package-draft";
import type { SheetText } from "../xlsx/sheet-text";
import { encodeEscapes, escapeText } from "../xlsx/xml";
import { inRanges } from "./in-ranges";
import type { Spot } from "./to-freeze";

/**
 * The file with `A5#` written as the range that it is, wherever the formula in A5 is one of those that go: a mark behind
 * a plain value would be an error.
 */
export function withRanges(opened: OpenWorkbook, spots: readonly Spot[]): Uint8Array {
  const draft = new PackageDraft(opened.source);
  const areas = new Map(spots.map(({ sheet, row, column, area }) => [`${sheet} ${cellKey(row, column)}`, area]));
  const names = opened.book.sheets.map(({ name }) => name.toLowerCase());
  const ranged = (formula: string, sheet: number): string =>
    MARK.test(formula)
      ? inRanges(formula, ({ sheet: name, from }) => {
          const at = name === undefined ? sheet : names.indexOf(name.toLowerCase());
          return areas.get(`${at} ${cellKey(from.row, from.column)}`);
        })
      : formula;
  opened.sheets.forEach((sheet, i) => {
    if (sheet)
      draft.set(
        sheet.part,
        inCells(sheet, opened, i, (formula) => ranged(formula, i)),
      );
  });
  const parts = [opened.workbook.part, ...opened.sheets.flatMap((sheet) => sheet?.part ?? []), ...drawn(draft)];
  for (const part of parts) {
    if (!MARK.test(draft.text(part))) continue;
    const sheet = Math.max(
      0,
      opened.sheets.findIndex((one) => one?.part === part),
    );
    draft.set(part, withReferences(draft.text(part), part, { formula: (formula) => ranged(formula, sheet) }));
  }
  return draft.bytes();
}

const MARK = /anchorarray/i;

/** Tables and charts, which name ranges too. */
const drawn = (draft: PackageDraft): string[] =>
  draft.names.filter((name) => /(?:^|\/)(?:tables|charts)\/[^/]+\.xml$/i.test(name));

/** A shared formula with a mark becomes each cell's own, for the ranges do not move with it. */
function inCells(
  { text, rows, prefix }: SheetText,
  opened: OpenWorkbook,
  index: number,
  ranged: (formula: string) => string,
): string {
  const { cells } = opened.book.sheets[index]!;
  const edits = rows.flatMap((row) =>
    row.cells.flatMap((cell): Edit[] => {
      const known = cells.get(cellKey(cell.row, cell.column))?.formula;
      const { formula } = cell;
      if (!formula || !known || !MARK.test(known.text)) return [];
      const isShared = formula.kind === "shared";
      const before = shifted(known.text, known.rowShift, known.columnShift);
      const after = ranged(before);
      if (after === before && !isShared) return [];
      const tag = isShared ? `<${prefix}f>` : text.slice(formula.start, formula.tagEnd);
      const written = `${tag}${escapeText(encodeEscapes(after))}</${prefix}f>`;
      return [{ start: formula.start, end: formula.end, text: written }];
    }),
  );
  return applyEdits(text, edits);
}
