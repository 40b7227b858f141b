import { applyEdits, type Edit } from "../text-edits";
import { tokens } from "./lexer";
import { prefixText, sheetsOf, type SheetPrefix } from "./sheet-prefix";

/**
 * The formula after a sheet has been given another name. Texts, and other workbooks' sheets, stay.
 * @param stored the name as it stands in formulas
 */
export function withSheetRenamed(formula: string, stored: string, name: string): string {
  const renamed = (sheet: string) => (sameName(sheet, stored) ? name : sheet);
  return eachName(formula, {
    prefix({ first, last }) {
      if (!sameName(first, stored) && (last === undefined || !sameName(last, stored))) return undefined;
      return prefixText({ first: renamed(first), ...(last === undefined ? {} : { last: renamed(last) }) });
    },
  });
}

/**
 * The formula after a sheet has gone, as the spreadsheet program writes it: `#REF!A1` for its cells. Where it was the
 * first or last of several, the next one among them takes its place.
 * @param order all sheets' names, the one that goes among them
 * @param tables the names of its tables
 */
export function withoutSheet(
  formula: string,
  gone: string,
  order: readonly string[],
  tables: readonly string[] = [],
): string {
  const position = (name: string) => order.findIndex((sheet) => sameName(sheet, name));
  return eachName(formula, {
    prefix({ first, last }, isLost) {
      const isFirst = sameName(first, gone);
      const isLast = last !== undefined && sameName(last, gone);
      if (!isFirst && !isLast) return undefined;
      const lost = isLost ? "" : "#REF!";
      if (last === undefined || (isFirst && isLast)) return lost;
      const [from, to] = [position(first), position(last)];
      if (from < 0 || to < 0) return lost;
      const step = Math.sign(to - from);
      const ends = isFirst ? [order[from + step]!, last] : [first, order[to - step]!];
      return prefixText(sameName(ends[0]!, ends[1]!) ? { first: ends[0]! } : { first: ends[0]!, last: ends[1]! });
    },
    table: (name) => (tables.some((table) => sameName(table, name)) ? "#REF!" : undefined),
  });
}

/** Whether the formula names the sheet. */
export function namesSheet(formula: string, name: string): boolean {
  let found = false;
  eachName(formula, {
    prefix({ first, last }) {
      found ||= sameName(first, name) || (last !== undefined && sameName(last, name));
      return undefined;
    },
  });
  return found;
}

export function sameName(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}

interface Changes {
  /** What stands in place of a sheet's name and its mark. */
  prefix(sheets: SheetPrefix, isLost: boolean): string | undefined;
  /** What stands in place of a table and the columns that are asked of it. */
  table?(name: string): string | undefined;
}

function eachName(formula: string, changes: Changes): string {
  const all = tokens(formula);
  const edits = all.flatMap(({ kind, text, start, end }, index): Edit[] => {
    const next = all[index + 1];
    if (kind === "sheet") {
      const sheets = sheetsOf(text);
      const change = sheets && changes.prefix(sheets, next?.text.toUpperCase() === "#REF!");
      return change === undefined ? [] : [{ start, end, text: change }];
    }
    const change = kind === "name" ? changes.table?.(text) : undefined;
    if (change === undefined) return [];
    return [{ start, end: next?.kind === "brackets" ? next.end : end, text: change }];
  });
  return applyEdits(formula, edits);
}
