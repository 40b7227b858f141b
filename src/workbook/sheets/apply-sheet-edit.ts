import type { OpenWorkbook } from "../xlsx/open-workbook";
import { PackageDraft } from "../xlsx/package-draft";
import { addSheet } from "./add-sheet";
import { deleteSheet } from "./delete-sheet";
import { moveSheet } from "./move-sheet";
import { renameSheet } from "./rename-sheet";
import { SheetFault, sheetNameFault, type SheetEdit } from "./sheet-edit";

/** A workbook's file after its sheets were changed. */
export interface Resheeted {
  bytes: Uint8Array;
  /** The sheets' ids in their order. */
  ids: string[];
  /** What becomes of a formula that stands in no file yet, as it is typed. */
  formula(typed: string): string;
}

/**
 * Changes a workbook's sheets, and everything in the file that names or counts them. All other parts keep every byte.
 * @param ids the sheets' ids in their order
 * @throws SheetFault where it is refused; nothing has then been changed
 */
export function applySheetEdit(opened: OpenWorkbook, ids: readonly string[], edit: SheetEdit): Resheeted {
  const draft = new PackageDraft(opened.source);
  const formula = change(opened, draft, ids, edit);
  return { bytes: draft.bytes(), ids: idsAfter(ids, edit), formula };
}

function change(
  opened: OpenWorkbook,
  draft: PackageDraft,
  ids: readonly string[],
  edit: SheetEdit,
): (typed: string) => string {
  const { sheets } = opened.workbook;
  const at = ids.indexOf(edit.id);
  if (edit.kind === "add" ? at >= 0 : at < 0) throw new SheetFault("There is no such sheet, or there is one already.");
  if (edit.kind === "add" || edit.kind === "rename") {
    const fault = sheetNameFault(
      edit.name,
      sheets.filter((_, i) => i !== at).map(({ name }) => name),
    );
    if (fault) throw new SheetFault(fault);
  }
  if (edit.kind === "rename") return renameSheet(opened, draft, at, edit.name);
  if (edit.kind === "delete") return deleteSheet(opened, draft, at);
  if (edit.kind === "move") moveSheet(opened, draft, orderAfter(ids, edit));
  else addSheet(opened, draft, edit.name, placeOf(ids, edit.before));
  return (typed) => typed;
}

function idsAfter(ids: readonly string[], edit: SheetEdit): string[] {
  if (edit.kind === "rename") return [...ids];
  const others = ids.filter((id) => id !== edit.id);
  if (edit.kind === "delete") return others;
  others.splice(placeOf(others, edit.before), 0, edit.id);
  return others;
}

/** Which sheet, as it is counted before, stands at each place after. */
function orderAfter(ids: readonly string[], edit: SheetEdit): number[] {
  return idsAfter(ids, edit).map((id) => ids.indexOf(id));
}

/** Where a sheet is to stand: before another one, or at the end. */
function placeOf(ids: readonly string[], before: string | undefined): number {
  const place = before === undefined ? -1 : ids.indexOf(before);
  return place < 0 ? ids.length : place;
}
