import { CellError, cellKey, createEngine, type EngineOptions, type Scalar } from "../engine/index";
import { applyEdits, type Edit } from "../text-edits";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { decodeEscapes, encodeEscapes, escapeText, readXml, type Tag } from "../xlsx/xml";
import { NeedsReader } from "./needs";

/**
 * Writes what a defined name stands for in its place, where that calls a function of ours; where one sheet stands alone,
 * takes the names out that lead elsewhere.
 * @param before the workbook as it was, whose formulas can be worked out
 * @param only the sheet that stands alone
 */
export function freezeNames(
  before: OpenWorkbook,
  draft: PackageDraft,
  options: EngineOptions,
  only: number | undefined,
): void {
  const { part } = before.workbook;
  const reader = new NeedsReader(before.book);
  const edits: Edit[] = [];
  let list: { tag: Tag; kept: number } | undefined;
  let named: { tag: Tag; text: string } | undefined;
  const text = draft.text(part);
  readXml(text, part, {
    open(tag) {
      if (tag.name === "definedNames") list = { tag, kept: 0 };
      if (tag.name === "definedName") named = { tag, text: "" };
    },
    text(found) {
      if (named) named.text += found;
    },
    close(name, _prefix, start, end) {
      if (name === "definedNames" && list!.kept === 0 && edits.length > 0)
        edits.splice(0, edits.length, { start: list!.tag.start, end, text: "" });
      if (name !== "definedName" || !named) return;
      const { tag } = named;
      const local = tag.attributes.localSheetId;
      const sheet = local === undefined ? (only ?? 0) : Number(local);
      const formula = decodeEscapes(named.text);
      const { addIn, elsewhere } = reader.of(formula, sheet);
      // Those of the other sheets go with their sheets.
      if (only !== undefined && elsewhere && sheet === only) edits.push({ start: tag.start, end, text: "" });
      else {
        list!.kept++;
        if (addIn)
          edits.push({
            start: tag.end,
            end: start,
            text: escapeText(encodeEscapes(literal(before, formula, options))),
          });
      }
      named = undefined;
    },
  });
  draft.set(part, applyEdits(text, edits));
}

/** Larger tables are too long for a formula. */
const MOST_CELLS = 400;

/** A formula's result as a formula writes it, a value or a table of values: it is worked out on a sheet of its own. */
function literal({ book }: OpenWorkbook, text: string, options: EngineOptions): string {
  const area = { top: 0, left: 0, bottom: 0, right: 0 };
  const formula = { text, rowShift: 0, columnShift: 0, kind: "dynamic" as const, area };
  const cells = new Map([[cellKey(0, 0), { row: 0, column: 0, value: null, formula }]]);
  const sheet = { name: "", cells, merged: [], hiddenRows: new Set<number>(), filters: [] };
  const { results } = createEngine(options).calculate({ ...book, sheets: [...book.sheets, sheet] });
  const values = results.find((result) => result.sheet === book.sheets.length)?.values;
  if (!values || values.flat().length > MOST_CELLS) return "#N/A";
  const rows = values.map((row) => row.map(written).join(","));
  return values.flat().length === 1 ? rows[0]! : `{${rows.join(";")}}`;
}

function written(value: Scalar): string {
  if (value === null) return '""';
  if (value instanceof CellError) return value.code;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "number" ? String(value) : `"${value.replaceAll('"', '""')}"`;
}
