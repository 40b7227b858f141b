import { format as formatted } from "numfmt";
import { shownValue } from "../cell-data";
import type { PrintedCell } from "./printed-sheet";

/** What a cell shows. */
export function cellText({ value, style }: PrintedCell, date1904: boolean): string {
  if (value === null) return "";
  const shown = shownValue(value);
  if (typeof shown === "boolean") return shown ? "TRUE" : "FALSE";
  if (typeof shown === "string" && !style.format?.includes("@")) return shown;
  const days = date1904 && typeof shown === "number" ? DAYS_FROM_1900 : 0;
  try {
    return formatted(
      style.format ?? "General",
      typeof shown === "number" && isDate(style.format) ? shown + days : shown,
    )
      .replace(/\s+/g, " ")
      .trim();
  } catch {
    return String(shown);
  }
}

/** From the one first day to the other. */
const DAYS_FROM_1900 = 1462;

const isDate = (format: string | undefined): boolean => /[dy]/i.test(format?.replace(/"[^"]*"|\[[^\]]*\]/g, "") ?? "");
