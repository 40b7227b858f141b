import { nodesOf } from "../../workbook/formula/nodes";
import { parseFormula } from "../../workbook/formula/parse";
import { sameName, withSheetRenamed } from "../../workbook/formula/sheet-names";
import { inRanges } from "../../workbook/freeze/in-ranges";
import { NeedsReader, type Named } from "../../workbook/freeze/needs";
import type { Area } from "./style-areas";

/** Row and column from 0, and the formula as it is typed. */
export interface FormulaCell {
  row: number;
  column: number;
  formula: string;
}

/** What becomes of the formulas of a sheet that is copied. */
export interface SheetPlan {
  /** Its place among the sheets. */
  sheet: number;
  /** Those that become values. */
  gone: FormulaCell[];
  kept: FormulaCell[];
}

/**
 * Which sheets are to be copied, for they call functions of ours, and which of their formulas become values: ours, and
 * whatever takes something from where it goes on changing. Native formulas over the copied sheets stay.
 * @param formulas by the place of their sheet
 */
export function frozenPlan(formulas: ReadonlyMap<number, readonly FormulaCell[]>, book: Named): SheetPlan[] {
  const reader = new NeedsReader(book, OURS);
  const calling = [...formulas].filter(([sheet, cells]) =>
    cells.some(({ formula }) => reader.of(formula, sheet).addIn),
  );
  const copied = calling.map(([sheet]) => book.sheets[sheet]!.name);
  return calling.map(([sheet, cells]) => {
    const own = book.sheets[sheet]!.name;
    const isGone = (formula: string): boolean => {
      const { addIn, formulas: isAboutFormulas, elsewhere } = reader.of(formula, sheet);
      if (addIn || isAboutFormulas) return true;
      if (!elsewhere) return false;
      // As if all that is copied stood on one sheet.
      const home = copied.reduce((text, name) => withSheetRenamed(text, name, own), formula);
      return reader.of(home, sheet).elsewhere || namesOtherSheetsNames(formula, own);
    };
    return {
      sheet,
      gone: cells.filter(({ formula }) => isGone(formula)),
      kept: cells.filter(({ formula }) => !isGone(formula)),
    };
  });
}

/**
 * A formula that is kept, as it stands in the copy: over the copies, and over ranges where a function of ours had spilled.
 * @param sheet the place of its sheet
 * @param spilled the range that a cell which is a value now has filled
 * @param copies the names of the copied sheets, each with its copy's
 */
export function keptFormula(
  formula: string,
  sheet: number,
  { sheets }: Named,
  spilled: (sheet: number, row: number, column: number) => Area | undefined,
  copies: readonly (readonly [original: string, copy: string])[],
): string {
  const ranged = inRanges(formula.slice(1), ({ sheet: name, from }) =>
    spilled(name === undefined ? sheet : sheets.findIndex((one) => sameName(one.name, name)), from.row, from.column),
  );
  return copies.reduce((text, [original, copy]) => withSheetRenamed(text, original, copy), `=${ranged}`);
}

/** What the names of our functions begin with, as they are typed. */
const OURS = "DRAWER.";

/** A name that only its own sheet knows may be another in the copy. */
const namesOtherSheetsNames = (formula: string, own: string): boolean =>
  nodesOf(parseFormula(formula)).some(
    (node) => node.kind === "name" && node.sheet !== undefined && !sameName(node.sheet, own),
  );
