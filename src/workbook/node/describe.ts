import type { Report } from "../recalculate";
import { shown } from "../xlsx/fault";

/** A report in lines: what was done, what the custom functions say, and what kept its value. */
export function describe(report: Report): { summary: string; errors: string[]; kept: string[] } {
  const { recalculated, changed, kept } = report;
  const mended = report.mended > 0 ? `, ${count(report.mended, "name", "names")} mended` : "";
  const left = kept.length > 0 ? `, ${count(kept.length, "formula", "formulas")} kept as stored` : "";
  return {
    summary: `${count(recalculated, "formula", "formulas")} recalculated, ${count(changed, "cell", "cells")} changed${mended}${left}.`,
    errors: report.errors.map(({ sheet, cell, error, message }) =>
      shown(`${place(sheet, cell)}: ${error}${message ? ` ${message}` : ""}`),
    ),
    kept: kept.map(({ sheet, cell, reason }) => shown(`${place(sheet, cell)} kept its value: it ${reason}.`)),
  };
}

function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}

/** The sheet's name in apostrophes where a formula would write it so. */
function place(sheet: string, cell: string): string {
  return `${/^[\p{L}_][\p{L}\p{N}_.]*$/u.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`}!${cell}`;
}
