import { applyEdits, type Edit } from "../text-edits";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { withAttributes } from "../xlsx/tag-text";
import { decodeEscapes, readXml, type Tag } from "../xlsx/xml";
import { NeedsReader } from "./needs";

/** Takes formulas that cannot stay out of tables' columns: their cells hold values, and new rows would call them anew. */
export function freezeTables(opened: OpenWorkbook, draft: PackageDraft): void {
  const reader = new NeedsReader(opened.book);
  opened.sheets.forEach((sheet, i) => {
    if (!sheet) return;
    for (const { type, target } of opened.source.relationships(sheet.part)) {
      if (type !== "table" || !opened.source.has(target)) continue;
      draft.set(
        target,
        withoutColumns(draft.text(target), target, (formula) => reader.of(formula, i).addIn),
      );
    }
  });
}

const FORMULAS = new Set(["calculatedColumnFormula", "totalsRowFormula"]);

function withoutColumns(text: string, part: string, isGone: (formula: string) => boolean): string {
  const edits: Edit[] = [];
  let column: Tag | undefined;
  let inside: { tag: Tag; text: string } | undefined;
  readXml(text, part, {
    open(tag) {
      if (tag.name === "tableColumn") column = tag;
      if (FORMULAS.has(tag.name)) inside = { tag, text: "" };
    },
    text(found) {
      if (inside) inside.text += found;
    },
    close(name, _prefix, _start, end) {
      if (!inside || name !== inside.tag.name) return;
      const { tag } = inside;
      if (isGone(decodeEscapes(inside.text))) {
        edits.push({ start: tag.start, end, text: "" });
        if (name === "totalsRowFormula" && column)
          edits.push({
            start: column.start,
            end: column.end,
            text: withAttributes(text.slice(column.start, column.end), { totalsRowFunction: null }),
          });
      }
      inside = undefined;
    },
  });
  return applyEdits(text, edits);
}
