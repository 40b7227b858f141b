import type { FormulaCell } from "./frozen-plan";
import { blocksOf } from "./office-blocks";

/** The formulas of a sheet. @param used its range in use, whose place is loaded */
export async function formulasIn(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  used: Excel.Range,
): Promise<FormulaCell[]> {
  const found: FormulaCell[] = [];
  for (const block of blocksOf(sheet, used)) {
    block.load("formulas, rowIndex, columnIndex");
    // One block after the other, for together they may be too large.
    // eslint-disable-next-line office-addins/no-context-sync-in-loop
    await context.sync();
    const { rowIndex, columnIndex } = block;
    block.formulas.forEach((row, r) =>
      row.forEach((formula, c) => {
        if (typeof formula === "string" && formula.startsWith("="))
          found.push({ row: rowIndex + r, column: columnIndex + c, formula });
      }),
    );
  }
  return found;
}
