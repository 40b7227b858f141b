import { cellName, sameArea } from "../address";
import type { CellText, FormulaText, SheetText } from "../xlsx/sheet-text";
import { applyEdits, type Edit } from "../text-edits";
import { openWorkbook, type OpenWorkbook } from "../xlsx/open-workbook";
import { PackageDraft } from "../xlsx/package-draft";
import { withAttributes } from "../xlsx/tag-text";
import { decodeEscapes, encodeEscapes, escapeText, readXml } from "../xlsx/xml";
import { provideDynamicMark } from "./dynamic-mark";
import { mender, type Mend } from "./mended-formula";

/** A workbook whose formulas call our functions in the way that the spreadsheet program resolves. */
export interface Mended {
  bytes: Uint8Array;
  opened: OpenWorkbook;
  /** How many calls were stored in another way. */
  mended: number;
}

/**
 * Opens a workbook. Where the spreadsheet program knew no such function, as while the add-in was not loaded, it stored
 * `DRAWER.BOXWIDTH(24)` as it was typed and never looks again; such calls are written anew, in cells, defined names and
 * tables' columns, and a cell that calls one is made one that may spill. A file without any stays as it is.
 * @param functions ours, by their names without the namespace
 * @throws FileFault where the bytes are no usable workbook
 */
export function mendNames(bytes: Uint8Array, functions: Readonly<Record<string, unknown>>, namespace: string): Mended {
  const opened = openWorkbook(bytes);
  const mend = mender(functions, namespace);
  const draft = new PackageDraft(opened.source);
  let mark: string | undefined;
  const dynamicMark = (): string => (mark ??= provideDynamicMark(opened, draft));
  const write = (part: string, edits: readonly Edit[]): void => {
    if (edits.length > 0) draft.set(part, applyEdits(opened.source.text(part), edits));
  };
  // A table that is pointed to more often is one table all the same.
  const tables = new Set<string>();
  for (const sheet of opened.sheets) {
    if (!sheet) continue;
    write(sheet.part, inCells(sheet, mend, dynamicMark));
    for (const { type, target } of opened.source.relationships(sheet.part)) {
      if (type === "table") tables.add(target);
    }
  }
  for (const table of tables) write(table, inElements(opened, table, TABLE_FORMULAS, mend));
  write(opened.workbook.part, inElements(opened, opened.workbook.part, ["definedName"], mend));
  if (mend.count === 0) return { bytes, opened, mended: 0 };
  const written = draft.bytes();
  return { bytes: written, opened: openWorkbook(written), mended: mend.count };
}

const TABLE_FORMULAS = ["calculatedColumnFormula", "totalsRowFormula"];

function inCells(sheet: SheetText, mend: Mend, dynamicMark: () => string): Edit[] {
  const edits: Edit[] = [];
  for (const { cells } of sheet.rows) {
    for (const cell of cells) {
      const { formula } = cell;
      const text = formula && formula.kind !== "dataTable" ? mend.formula(formula.text) : undefined;
      if (text !== undefined) edits.push(...rewritten(sheet, cell, formula!, text, dynamicMark));
    }
  }
  return edits;
}

/** An array formula that somebody entered over a range keeps it; what is shared stays shared. */
function rewritten(
  { text: source, prefix }: SheetText,
  cell: CellText,
  formula: FormulaText,
  text: string,
  dynamicMark: () => string,
): Edit[] {
  const { row, column } = cell;
  const own = { top: row, left: column, bottom: row, right: column };
  const tag = source.slice(formula.start, formula.tagEnd);
  const becomesDynamic =
    formula.kind === "normal" ||
    (formula.kind === "array" && !cell.isDynamic && /\saca=/.test(tag) && sameArea(formula.area ?? own, own));
  const attributes = {
    // The program works such a cell out at every change, for it cannot tell what it calls.
    aca: null,
    ca: null,
    ...(becomesDynamic && { t: "array", ref: cellName(row, column) }),
  };
  const written = `${withAttributes(tag, attributes)}${escapeText(encodeEscapes(text))}</${prefix}f>`;
  const edits: Edit[] = [{ start: formula.start, end: formula.end, text: written }];
  if (becomesDynamic) {
    const start = source.slice(cell.start, cell.tagEnd);
    edits.push({ start: cell.start, end: cell.tagEnd, text: withAttributes(start, { cm: dynamicMark() }) });
  }
  return edits;
}

/** Formulas that are all that an element holds. */
function inElements({ source }: OpenWorkbook, part: string, names: readonly string[], mend: Mend): Edit[] {
  const edits: Edit[] = [];
  let inside: { start: number; text: string } | undefined;
  readXml(source.text(part), part, {
    open: ({ name, end, selfClosing }) => {
      if (names.includes(name) && !selfClosing) inside = { start: end, text: "" };
    },
    text: (found) => {
      if (inside) inside.text += found;
    },
    close: (name, _prefix, start) => {
      if (!inside || !names.includes(name)) return;
      const text = mend.formula(decodeEscapes(inside.text));
      if (text !== undefined) edits.push({ start: inside.start, end: start, text: escapeText(encodeEscapes(text)) });
      inside = undefined;
    },
  });
  return edits;
}
