import type { SheetDefinition, WorkbookDefinition } from "../author/definition";
import { sameName, withSheetRenamed } from "../formula/sheet-names";

/** What a workbook already calls by name. */
export interface Taken {
  sheets: readonly string[];
  names: readonly string[];
}

/** The same sheets beside those of another workbook: what is taken gets the next free name, and formulas follow. */
export function beside<S extends string>(workbook: WorkbookDefinition<S>, taken: Taken): WorkbookDefinition<S> {
  // A new name must not be one that another new sheet still goes by.
  const own = workbook.sheets.map(({ name }) => name);
  const renamed = own.flatMap((name): [string, string][] =>
    isTaken(name, taken.sheets) ? [[name, free(name, " ", [...taken.sheets, ...own])]] : [],
  );
  const followed = (formula: string): string =>
    formula.startsWith("=") ? renamed.reduce((text, [from, to]) => withSheetRenamed(text, from, to), formula) : formula;
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...withFormulas(sheet, followed),
      name: renamed.find(([from]) => from === sheet.name)?.[1] ?? sheet.name,
    })),
    names: Object.fromEntries(
      Object.entries(workbook.names ?? {}).map(([name, area]) => [
        isTaken(name, taken.names) ? free(name, "_", taken.names) : name,
        followed(`=${area}`).slice(1),
      ]),
    ),
  };
}

const isTaken = (name: string, taken: readonly string[]): boolean => taken.some((one) => sameName(one, name));

/** `Job 2`, `openings_2`. */
function free(name: string, between: string, taken: readonly string[]): string {
  for (let n = 2; ; n++) if (!isTaken(`${name}${between}${n}`, taken)) return `${name}${between}${n}`;
}

function withFormulas<S extends string>(
  sheet: SheetDefinition<S>,
  followed: (formula: string) => string,
): SheetDefinition<S> {
  return {
    ...sheet,
    rows: sheet.rows.map((row) => ({
      ...row,
      cells: row.cells.map(
        (cell) =>
          cell && { ...cell, content: typeof cell.content === "string" ? followed(cell.content) : cell.content },
      ),
    })),
    ...(sheet.rules
      ? { rules: sheet.rules.map((rule) => ("when" in rule ? { ...rule, when: followed(rule.when) } : rule)) }
      : {}),
  };
}
