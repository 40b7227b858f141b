import { parseCell } from "../address";
import { applyEdits, type Edit } from "./edits";
import { withAttributes } from "./tagText";
import { readXml } from "./xml";

/**
 * The order of calculation without the cells that no array fills any longer.
 * An entry without a sheet number has that of the entry before it, which must not be lost with it.
 */
export function withoutCells(
  text: string,
  part: string,
  gone: (sheetId: string, row: number, column: number) => boolean,
): string {
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
