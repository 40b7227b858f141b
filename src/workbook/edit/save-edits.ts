import { contains, sameArea } from "../address";
import { cellKey, formulaKind, type Result } from "../engine/index";
import { recalculate } from "./recalculate";
import { shortenCalcChain } from "../xlsx/calc-chain";
import { openWorkbook, type OpenWorkbook } from "../xlsx/open-workbook";
import { PackageDraft } from "../xlsx/package-draft";
import type { CellText, SheetText } from "../xlsx/sheet-text";
import { valueOf } from "./cell-content";
import { isFormula } from "./content";
import { provideDynamicMark } from "./dynamic-mark";
import type { CellEdit } from "./cell-edit";
import { toStored } from "./formula-text";
import { NumberFormats } from "./number-formats";
import { OWN_FUNCTIONS } from "./own-functions";
import { writeContents, type NewContent } from "./write-contents";

/**
 * Writes edits into a workbook's file and then works it out, as the command `recalculate` does. Only the cells that
 * were edited, and those whose value changes, are written.
 * @param isKept whether an array formula is not worked out, and keeps what it fills
 */
export function saveEdits(
  bytes: Uint8Array,
  edits: readonly PlacedEdit[],
  isKept: (sheet: number, row: number, column: number) => boolean,
): Uint8Array {
  const written = edits.length === 0 ? bytes : withEdits(bytes, edits, isKept);
  return recalculate(written, { functions: OWN_FUNCTIONS }).bytes;
}

/** An edit whose sheet is counted in the file's order, and for a formula the number formats that its result brings. */
type PlacedEdit = Omit<CellEdit, "sheet"> & { sheet: number; formats?: Result["formats"] };

function withEdits(
  bytes: Uint8Array,
  edits: readonly PlacedEdit[],
  isKept: (sheet: number, row: number, column: number) => boolean,
): Uint8Array {
  const opened = openWorkbook(bytes);
  const draft = new PackageDraft(opened.source);
  const spills = edits.some(
    ({ content }) => isFormula(content) && formulaKind(toStored(content.formula)) === "dynamic",
  );
  const mark = spills ? provideDynamicMark(opened, draft) : undefined;
  const styles = new NumberFormats(opened);
  opened.sheets.forEach((sheet, i) => {
    const ours = edits.filter((edit) => edit.sheet === i);
    if (!sheet || ours.length === 0) return;
    const contents = new Map(ours.map((edit) => [cellKey(edit.row, edit.column), newContent(edit, mark)]));
    for (const released of releasedCells(sheet, contents, (row, column) => isKept(i, row, column)))
      contents.set(cellKey(released.row, released.column), released);
    for (const filled of ours.flatMap(filledCells)) contents.set(cellKey(filled.row, filled.column), filled);
    const text = writeContents(sheet, [...contents.values()], (base, format) => styles.like(base, format));
    draft.set(sheet.part, text);
  });
  styles.writeTo(opened, draft);
  dropFromCalcChain(opened, edits, draft);
  return draft.bytes();
}

function newContent(edit: PlacedEdit, mark: string | undefined): NewContent {
  const { row, column, content } = edit;
  if (!isFormula(content)) return { row, column, value: valueOf(content), format: edit.format };
  const text = toStored(content.formula);
  const isDynamic = formulaKind(text) === "dynamic";
  const format = edit.formats?.[0]?.[0];
  return { row, column, formula: text, array: isDynamic, mark: isDynamic ? mark : undefined, format };
}

/** The cells that a typed formula fills besides its own, as far as it gives them a format; their values come later. */
function filledCells({ row, column, content, formats }: PlacedEdit): NewContent[] {
  if (!isFormula(content) || !formats) return [];
  return formats.flatMap((line, y) =>
    line.flatMap((format, x) =>
      format === undefined || y + x === 0 ? [] : [{ row: row + y, column: column + x, value: null, format }],
    ),
  );
}

/** What array formulas filled around an edited cell: it is theirs no longer, and they fill anew what they can. */
function releasedCells(
  sheet: SheetText,
  contents: ReadonlyMap<number, NewContent>,
  isKept: (row: number, column: number) => boolean,
): NewContent[] {
  const cells = sheet.rows.flatMap((row) => row.cells);
  const released: NewContent[] = [];
  for (const anchor of cells) {
    const area = anchor.formula?.kind === "array" ? anchor.formula.area : undefined;
    if (!area || sameArea(area, own(anchor)) || isKept(anchor.row, anchor.column)) continue;
    const inside = cells.filter((cell) => contains(area, cell.row, cell.column));
    if (!inside.some((cell) => contents.has(cellKey(cell.row, cell.column)))) continue;
    for (const { row, column, formula } of inside) {
      const isAnchor = row === anchor.row && column === anchor.column;
      if (contents.has(cellKey(row, column)) || (formula && !isAnchor)) continue;
      released.push(isAnchor ? { row, column, keepsFormula: true } : { row, column, value: null });
    }
  }
  return released;
}

const own = ({ row, column }: CellText) => ({ top: row, left: column, bottom: row, right: column });

/** A cell that holds no formula any longer must not stand in the order of calculation. */
function dropFromCalcChain(opened: OpenWorkbook, edits: readonly PlacedEdit[], draft: PackageDraft): void {
  const gone = new Set(
    edits
      .filter(({ content }) => !isFormula(content))
      .map(({ sheet, row, column }) => `${opened.workbook.sheets[sheet]!.sheetId} ${row} ${column}`),
  );
  shortenCalcChain(opened, draft, (sheetId, row, column) => gone.has(`${sheetId} ${row} ${column}`));
}
