import { contains, sameArea } from "../address";
import { cellKey } from "../engine/index";
import { recalculate } from "../recalculate";
import { withoutCells } from "../xlsx/calcChain";
import { openWorkbook, type OpenWorkbook } from "../xlsx/openWorkbook";
import type { CellText, SheetText } from "../xlsx/sheetText";
import { writeArchive } from "../xlsx/writeZip";
import { isFormula, valueOf } from "./content";
import { provideDynamicMark } from "./dynamicMark";
import { FractionStyles } from "./fractionStyles";
import type { CellEdit } from "./cell-edit";
import { formulaKind } from "./formulaKind";
import { toStored } from "./formulaText";
import { OWN_FUNCTIONS } from "./ownFunctions";
import { writeContents, type NewContent } from "./writeContents";

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

/** An edit whose sheet is counted in the file's order. */
type PlacedEdit = Omit<CellEdit, "sheet"> & { sheet: number };

function withEdits(
  bytes: Uint8Array,
  edits: readonly PlacedEdit[],
  isKept: (sheet: number, row: number, column: number) => boolean,
): Uint8Array {
  const opened = openWorkbook(bytes);
  const replaced = new Map<string, Uint8Array>();
  const spills = edits.some(
    ({ content }) => isFormula(content) && formulaKind(toStored(content.formula)) === "dynamic",
  );
  const mark = spills ? provideDynamicMark(opened, replaced) : undefined;
  const styles = new FractionStyles(opened);
  opened.sheets.forEach((sheet, i) => {
    const ours = edits.filter((edit) => edit.sheet === i);
    if (!sheet || ours.length === 0) return;
    const contents = new Map(ours.map((edit) => [cellKey(edit.row, edit.column), newContent(edit, mark)]));
    for (const released of releasedCells(sheet, contents, (row, column) => isKept(i, row, column)))
      contents.set(cellKey(released.row, released.column), released);
    const text = writeContents(sheet, [...contents.values()], (base) => styles.like(base));
    replaced.set(opened.source.entryName(sheet.part), new TextEncoder().encode(text));
  });
  const { changed } = styles;
  if (changed) replaced.set(opened.source.entryName(changed.part), new TextEncoder().encode(changed.text));
  dropFromCalcChain(opened, edits, replaced);
  return writeArchive(opened.source.archive, replaced);
}

function newContent({ row, column, content, isFraction }: PlacedEdit, mark: string | undefined): NewContent {
  if (!isFormula(content)) return { row, column, value: valueOf(content), isFraction };
  const text = toStored(content.formula);
  const isDynamic = formulaKind(text) === "dynamic";
  return { row, column, formula: text, array: isDynamic, mark: isDynamic ? mark : undefined };
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
function dropFromCalcChain(
  opened: OpenWorkbook,
  edits: readonly PlacedEdit[],
  replaced: Map<string, Uint8Array>,
): void {
  const { source, workbook } = opened;
  const part = source.relationships(workbook.part).find(({ type }) => type === "calcChain")?.target;
  if (part === undefined || !source.has(part)) return;
  const gone = new Set(
    edits
      .filter(({ content }) => !isFormula(content))
      .map(({ sheet, row, column }) => `${workbook.sheets[sheet]!.sheetId} ${row} ${column}`),
  );
  const text = source.text(part);
  const shorter = withoutCells(text, part, (sheetId, row, column) => gone.has(`${sheetId} ${row} ${column}`));
  if (shorter !== text) replaced.set(source.entryName(part), new TextEncoder().encode(shorter));
}
