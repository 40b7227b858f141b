import type { SheetEdit } from "../edit/index";
import type { SheetFacts } from "./worker/messages";

/** What becomes of the sheets, told by how they are when its turn comes. */
export type SheetsEdit = (sheets: readonly SheetFacts[]) => SheetEdit;

/** The change that leads back from one, while the sheets are as they were before it. */
export function leadingBack(edit: SheetEdit, sheets: readonly SheetFacts[]): SheetEdit {
  const { id } = edit;
  if (edit.kind === "add") return { kind: "delete", id };
  const name = sheets.find((sheet) => sheet.id === id)?.name ?? "";
  if (edit.kind === "rename") return { kind: "rename", id, name };
  const before = inFrontOf(following(sheets, id));
  return edit.kind === "move" ? { kind: "move", id, ...before } : { kind: "add", id, name, ...before };
}

/** The sheet behind another one; undefined behind the last. */
export const following = (sheets: readonly SheetFacts[], id: string): string | undefined =>
  sheets[sheets.findIndex((sheet) => sheet.id === id) + 1]?.id;

export const inFrontOf = (before: string | undefined): { before?: string } => (before === undefined ? {} : { before });
