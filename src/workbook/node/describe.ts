import type { Report } from "../edit/recalculate";
import { shown } from "../xlsx/fault";

/** A report in lines: what was done, what the custom functions say, and what kept its value. */
export function describe(report: Report): { summary: string; errors: string[]; kept: string[] } {
  const { recalculated, changed, kept } = report;
  const mended = report.mended > 0 ? `, ${count(report.mended, "name", "names")} mended` : "";
  const left = kept.length > 0 ? `, ${count(kept.length, "formula", "formulas")} kept as stored` : "";
  return {
    summary: `${count(recalculated, "formula", "formulas")} recalculated, ${count(changed, "cell", "cells")} changed${mended}${left}.`,
    errors: lines(report.errors, "cells with an error", ({ sheet, cell, error, message }) => {
      return `${place(sheet, cell)}: ${error}${message ? ` ${cut(message)}` : ""}`;
    }),
    kept: lines(kept, "formulas that kept their values", ({ sheet, cell, reason }) => {
      return `${place(sheet, cell)} kept its value: it ${cut(reason)}.`;
    }),
  };
}

/** So many are listed one by one, and so much is shown of each: a file may hold millions, each as long as a cell. */
const MOST_LISTED = 1_000;
const LONGEST_SHOWN = 500;

function lines<T>(items: readonly T[], what: string, line: (item: T) => string): string[] {
  const listed = items.slice(0, MOST_LISTED).map((item) => shown(line(item)));
  const more = items.length - listed.length;
  return more > 0 ? [...listed, `… and ${more} more ${what}.`] : listed;
}

function cut(text: string): string {
  return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
}

function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}

/** The sheet's name in apostrophes where a formula would write it so. */
function place(sheet: string, cell: string): string {
  return `${/^[\p{L}_][\p{L}\p{N}_.]*$/u.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`}!${cell}`;
}
