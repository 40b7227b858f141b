import { cellName } from "../address";
import { cellKey, CellError, type Scalar } from "../engine/index";
import { writtenValue } from "../xlsx/cellValue";
import { applyEdits, type Edit } from "../xlsx/edits";
import { readSheet } from "../xlsx/readSheet";
import type { CellText, SheetText } from "../xlsx/sheetText";
import { withAttributes } from "../xlsx/tagText";
import { writeSheet } from "../xlsx/writeSheet";
import { encodeEscapes, escapeText } from "../xlsx/xml";
import { shifted } from "./formulaText";

/** What a cell shall hold from now on: a value (null: nothing), a formula as it is stored, or its own formula anew. */
export type NewContent = { row: number; column: number } & (
  | { value: Exclude<Scalar, CellError>; isFraction?: boolean }
  | { formula: string; array: boolean; mark: string | undefined }
  | { keepsFormula: true }
);

/**
 * The sheet's text with those contents in its cells. Styles stay, and so does everything else.
 * @param fractionStyle the style that is like a given one and shows fractions
 */
export function writeContents(
  sheet: SheetText,
  contents: readonly NewContent[],
  fractionStyle: (base: number) => number,
): string {
  const filled = contents.filter((content) => !("value" in content && content.value === null));
  const known = new Set(sheet.rows.flatMap((row) => row.cells).map((cell) => cellKey(cell.row, cell.column)));
  // Cells that are not there yet are made first, empty of meaning; then every cell can be written in its place.
  const fresh = filled.filter(({ row, column }) => !known.has(cellKey(row, column)));
  const made = writeSheet(
    sheet,
    fresh.map(({ row, column }) => ({ row, column, value: 0, writesValue: true })),
  );
  const present = readSheet(made, sheet.part, new Set());
  const byKey = new Map(contents.map((content) => [cellKey(content.row, content.column), content]));
  const edits: Edit[] = [];
  for (const cell of present.rows.flatMap((row) => row.cells)) {
    const content = byKey.get(cellKey(cell.row, cell.column));
    if (content) edits.push(rewritten(present, cell, content, fractionStyle));
  }
  return applyEdits(made, [...edits, ...unshared(present, byKey)]);
}

function rewritten(
  sheet: SheetText,
  cell: CellText,
  content: NewContent,
  fractionStyle: (base: number) => number,
): Edit {
  const { start, end, tagEnd } = cell;
  const { prefix, text } = sheet;
  if ("keepsFormula" in content) {
    const { formula } = cell;
    const tag = text.slice(formula!.start, formula!.tagEnd);
    return {
      start: formula!.start,
      end: formula!.tagEnd,
      text: withAttributes(tag, { ref: cellName(cell.row, cell.column) }),
    };
  }
  const isFormula = "formula" in content;
  const value = isFormula ? writtenValue(new CellError("#NAME?")) : writtenContent(content.value, prefix);
  const style = "value" in content && content.isFraction ? styled(text.slice(start, tagEnd), fractionStyle) : {};
  const tag = withAttributes(text.slice(start, tagEnd).replace(/\s*\/>$/, ">"), {
    t: value?.type ?? null,
    cm: isFormula ? (content.mark ?? null) : null,
    vm: null,
    ...style,
  });
  if (!isFormula && content.value === null) return { start, end, text: tag.replace(/>$/, "/>") };
  const formula = isFormula ? formulaElement(content, cell, prefix) : "";
  const inside = isFormula ? `<${prefix}v>${value!.text}</${prefix}v>` : value!.text;
  return { start, end, text: `${tag}${formula}${inside}</${prefix}c>` };
}

function styled(tag: string, fractionStyle: (base: number) => number): { s: string } | object {
  const base = Number(/\ss="(\d+)"/.exec(tag)?.[1] ?? 0);
  const style = fractionStyle(base);
  return style === base ? {} : { s: String(style) };
}

function formulaElement(content: Extract<NewContent, { formula: string }>, cell: CellText, prefix: string): string {
  const array = content.array ? ` t="array" ref="${cellName(cell.row, cell.column)}"` : "";
  return `<${prefix}f${array}>${escapeText(encodeEscapes(content.formula))}</${prefix}f>`;
}

/** A typed text is stored in the cell itself, so that the list of shared texts stays as it is. */
function writtenContent(
  value: Exclude<Scalar, CellError>,
  prefix: string,
): { type: string | null; text: string } | undefined {
  if (value === null) return undefined;
  if (typeof value === "string") {
    const text = escapeText(encodeEscapes(value));
    return {
      type: "inlineStr",
      text: `<${prefix}is><${prefix}t xml:space="preserve">${text}</${prefix}t></${prefix}is>`,
    };
  }
  const { type, text } = writtenValue(value);
  return { type, text: `<${prefix}v>${text}</${prefix}v>` };
}

/** Where the cell that holds a shared formula's text is rewritten, the others get the formula in their own words. */
function unshared(sheet: SheetText, contents: ReadonlyMap<number, NewContent>): Edit[] {
  const cells = sheet.rows.flatMap((row) => row.cells);
  const isEdited = (cell: CellText) => contents.has(cellKey(cell.row, cell.column));
  const masters = cells.filter(({ formula }) => formula?.kind === "shared" && formula.text !== "");
  return masters.filter(isEdited).flatMap((master) =>
    cells
      .filter((cell) => cell !== master && !isEdited(cell) && cell.formula?.sharedIndex === master.formula!.sharedIndex)
      .map(({ row, column, formula }) => {
        const text = shifted(master.formula!.text, row - master.row, column - master.column);
        const { prefix } = sheet;
        const element = `<${prefix}f>${escapeText(encodeEscapes(text))}</${prefix}f>`;
        return { start: formula!.start, end: formula!.end, text: element };
      }),
  );
}
