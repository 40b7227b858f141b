import { parseCell } from "../address";
import { dropParts } from "./drop-parts";
import { applyEdits, type Edit } from "../text-edits";
import type { OpenWorkbook } from "./open-workbook";
import type { PackageDraft } from "./package-draft";
import { withAttributes } from "./tag-text";
import { readXml } from "./xml";

/** Takes cells without a formula out of the order of calculation; one without cells is none that a file may have. */
export function shortenCalcChain({ source, workbook }: OpenWorkbook, draft: PackageDraft, gone: IsGone): void {
  const part = source.linked(workbook.part, "calcChain");
  if (part === undefined || !draft.has(part)) return;
  const shorter = withoutCells(draft.text(part), part, gone);
  if (/<(?:[\w.-]+:)?c[\s/>]/.test(shorter)) draft.set(part, shorter);
  else dropParts(source, draft, workbook.part, part);
}

type IsGone = (sheetId: string, row: number, column: number) => boolean;

/**
 * The order of calculation without some cells.
 * An entry without a sheet number has that of the entry before it, which must not be lost with it.
 */
function withoutCells(text: string, part: string, gone: IsGone): string {
  const edits: Edit[] = [];
  let sheetId = "";
  let written = "";
  let removed: Edit | undefined;
  readXml(text, part, {
    open({ name, attributes, start, end }) {
      if (name !== "c") return;
      sheetId = attributes.i ?? sheetId;
      const place = parseCell(attributes.r ?? "");
      if (place && gone(sheetId, place.row, place.column)) edits.push((removed = { start, end, text: "" }));
      else {
        if (attributes.i === undefined && written !== sheetId) {
          edits.push({ start, end, text: withAttributes(text.slice(start, end), { i: sheetId }) });
        }
        written = sheetId;
      }
    },
    close(name, _prefix, _start, end) {
      if (name === "c" && removed) removed.end = end;
      removed = undefined;
    },
  });
  return applyEdits(text, edits);
}
