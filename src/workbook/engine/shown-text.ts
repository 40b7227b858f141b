import { shifted, toTyped } from "../formula/typed-text";
import type { Formula } from "./engine";
import { formulaKind } from "./formula-kind";
import { unproven } from "./proven";

/**
 * A formula as the spreadsheet program shows it.
 * @throws Unsupported where it shows otherwise what the file holds: older array formulas in brackets, an at sign before
 * what might spill, other workbooks by their names, a table's own row in short
 */
export function shownText({ text, kind, rowShift, columnShift }: Formula): string {
  if (kind === "fixed") throw unproven("FORMULATEXT", "an array formula");
  if (kind === "plain" && formulaKind(text) === "dynamic")
    throw unproven("FORMULATEXT", "a formula of an older kind that would spill today");
  if (/\bSINGLE\(|\[#This Row\]|\[\d+\]/i.test(text))
    throw unproven("FORMULATEXT", "a formula that is shown otherwise than it is stored");
  return toTyped(shifted(text, rowShift, columnShift));
}
