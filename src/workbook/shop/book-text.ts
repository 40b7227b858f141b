import { readShopJob, shopPages, type BookText } from "../../shop-pages/index";
import { contains, parseArea, type Area } from "../address";
import { isFormula, type EditedWorkbook } from "../edit/index";
import { CellError, type Scalar } from "../engine/index";

/** A workbook's formulas, and what stands in its cells as it is worked out. */
export function bookText(workbook: EditedWorkbook): BookText {
  const { results } = workbook.calculate();
  const place = (name: string): number =>
    workbook.sheets.findIndex((sheet) => sheet.isWorksheet && sheet.name.toLowerCase() === name.toLowerCase());
  const value = (sheet: number, row: number, column: number): Scalar => {
    const found = results.find((one) => one.sheet === sheet && contains(one.area, row, column));
    if (found) return found.values[row - found.area.top]?.[column - found.area.left] ?? null;
    return workbook.storedValue(sheet, row, column);
  };
  return {
    formulas: workbook.sheets.flatMap(({ name, isWorksheet }, sheet) =>
      isWorksheet
        ? [...workbook.cells(sheet)].flatMap(({ row, column }) => {
            const content = workbook.content(sheet, row, column);
            return isFormula(content) ? [{ sheet: name, formula: content.formula }] : [];
          })
        : [],
    ),
    values({ sheet: name, address, isSpilled }) {
      const sheet = place(name);
      const named = parseArea(address);
      if (sheet < 0 || !named) return undefined;
      const spilled = results.find((one) => one.sheet === sheet && one.row === named.top && one.column === named.left);
      if (isSpilled && !spilled) return undefined;
      return read(isSpilled ? spilled!.area : named, (row, column) => value(sheet, row, column));
    },
  };
}

/**
 * The shop pages of a workbook, as one HTML document.
 * @param title what the workbook is called
 */
export function shopPagesOf(workbook: EditedWorkbook, title: string): { html: string } | { why: string } {
  const job = readShopJob(bookText(workbook));
  return "why" in job ? job : { html: shopPages(job, title) };
}

/** More cells than these no table has that a function of ours reads. */
const MOST = 200_000;

function read({ top, left, bottom, right }: Area, value: (row: number, column: number) => Scalar) {
  if ((bottom - top + 1) * (right - left + 1) > MOST) return undefined;
  return Array.from({ length: bottom - top + 1 }, (_, y) =>
    Array.from({ length: right - left + 1 }, (_, x) => shown(value(top + y, left + x))),
  );
}

/** As functions get it: blanks as "", errors as their code. */
const shown = (value: Scalar): unknown => (value === null ? "" : value instanceof CellError ? value.code : value);
