import { cellName } from "../address";
import { cellKey, CellError, type Scalar } from "../engine/index";
import { writtenValue } from "../xlsx/cell-value";
import { applyEdits, type Edit } from "../text-edits";
import { placeCells } from "../xlsx/place-cells";
import type { CellText, SheetText } from "../xlsx/sheet-text";
import { withAttributes } from "../xlsx/tag-text";
import { encodeEscapes, escapeText } from "../xlsx/xml";
import { shifted } from "../formula/typed-text";

/** What a cell shall hold from now on: a value (null: nothing), a formula as it is stored, or its own formula anew. */
export type NewContent = { row: number; column: number } & (
  | { value: Scalar; format?: string | undefined }
  | { formula: string; array: boolean; mark: string | undefined; format?: string | undefined }
  | { keepsFormula: true }
);

/**
 * The sheet's text with those contents in its cells. Styles stay, and so does everything else.
 * @param styleLike the style that is like a given one and has a number format
 */
export function writeContents(sheet: SheetText, contents: readonly NewContent[], styleLike: StyleLike): string {
  const byKey = new Map(contents.map((content) => [cellKey(content.row, content.column), content]));
  const edits: Edit[] = unshared(sheet, byKey);
  const fresh = new Map(byKey);
  for (const cell of sheet.rows.flatMap((row) => row.cells)) {
    const key = cellKey(cell.row, cell.column);
    const content = byKey.get(key);
    fresh.delete(key);
    if (content) edits.push(rewritten(sheet, cell, content, styleLike));
  }
  const made = [...fresh.values()].flatMap((content) =>
    "keepsFormula" in content || ("value" in content && content.value === null && content.format === undefined)
      ? []
      : [{ row: content.row, column: content.column, text: newCell(sheet, content, styleLike) }],
  );
  return applyEdits(sheet.text, [...edits, ...placeCells(sheet, made)]);
}

type StyleLike = (base: number, format: string) => number;

/** What is written into a cell, whatever stood there. */
type Written = Exclude<NewContent, { keepsFormula: true }>;

function newCell(sheet: SheetText, content: Written, styleLike: StyleLike): string {
  const tag = `<${sheet.prefix}c r="${cellName(content.row, content.column)}"/>`;
  return cellElement(sheet, tag, content, styleLike);
}

function rewritten(sheet: SheetText, cell: CellText, content: NewContent, styleLike: StyleLike): Edit {
  const { start, end, tagEnd, formula } = cell;
  const { text } = sheet;
  if ("keepsFormula" in content) {
    const tag = text.slice(formula!.start, formula!.tagEnd);
    return {
      start: formula!.start,
      end: formula!.tagEnd,
      text: withAttributes(tag, { ref: cellName(cell.row, cell.column) }),
    };
  }
  return { start, end, text: cellElement(sheet, text.slice(start, tagEnd), content, styleLike) };
}

/** A cell's element, with the attributes that its start tag has had. */
function cellElement({ prefix }: SheetText, before: string, content: Written, styleLike: StyleLike): string {
  const isFormula = "formula" in content;
  const value = isFormula ? writtenValue(new CellError("#NAME?")) : writtenContent(content.value, prefix);
  const style = content.format !== undefined ? styled(before, content.format, styleLike) : {};
  const tag = withAttributes(before.replace(/\s*\/>$/, ">"), {
    t: value?.type ?? null,
    cm: isFormula ? (content.mark ?? null) : null,
    vm: null,
    ...style,
  });
  if (!isFormula && content.value === null) return tag.replace(/>$/, "/>");
  const formula = isFormula ? formulaElement(content, prefix) : "";
  const inside = isFormula ? `<${prefix}v>${value!.text}</${prefix}v>` : value!.text;
  return `${tag}${formula}${inside}</${prefix}c>`;
}

function styled(tag: string, format: string, styleLike: StyleLike): { s: string } | object {
  const base = Number(/\ss="(\d+)"/.exec(tag)?.[1] ?? 0);
  const style = styleLike(base, format);
  return style === base ? {} : { s: String(style) };
}

function formulaElement(content: Extract<NewContent, { formula: string }>, prefix: string): string {
  const array = content.array ? ` t="array" ref="${cellName(content.row, content.column)}"` : "";
  return `<${prefix}f${array}>${escapeText(encodeEscapes(content.formula))}</${prefix}f>`;
}

/** A typed text is stored in the cell itself, so that the list of shared texts stays as it is. */
function writtenContent(value: Scalar, prefix: string): { type: string | null; text: string } | undefined {
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
