import type { Area } from "../address";
import { shifted } from "../formula/typed-text";
import { cellKey, type Cell, type Outcome, type Result } from "../engine/index";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import { NeedsReader } from "./needs";

/** A formula that is to become values: where it stands, and all that it fills. */
export interface Spot {
  sheet: number;
  row: number;
  column: number;
  area: Area;
  /** The number formats that its values bring. */
  formats?: Result["formats"];
}

/**
 * The formulas that cannot stay, for what they need will not be there: our functions, formulas to be read as texts, and
 * where one sheet stands alone all the others.
 * @param only the sheet that stands alone
 */
export function toFreeze(opened: OpenWorkbook, outcome: Outcome, only: number | undefined): Spot[] {
  const reader = new NeedsReader(opened.book);
  const formats = new Map(
    outcome.results.map((result) => [keyOf(result.sheet, result.row, result.column), result.formats]),
  );
  const spots: Spot[] = [];
  const later: Spot[] = [];
  opened.book.sheets.forEach(({ cells }, sheet) => {
    if (only !== undefined && sheet !== only) return;
    const dataTables = dataTablesOf(opened, sheet);
    for (const cell of cells.values()) {
      if (!cell.formula) continue;
      const { row, column } = cell;
      const spot = { sheet, row, column, area: cell.formula.area, formats: formats.get(keyOf(sheet, row, column)) };
      const { addIn, elsewhere, formulas } = reader.of(textOf(cell), sheet);
      if (addIn || (elsewhere && only !== undefined)) spots.push(spot);
      // These are as they were where nothing else changes.
      else if (formulas || dataTables.has(cellKey(row, column))) later.push(spot);
    }
  });
  const changes = spots.length > 0 || (only !== undefined && opened.book.sheets.length > 1);
  return changes ? [...spots, ...later] : [];
}

const keyOf = (sheet: number, row: number, column: number): string => `${sheet} ${cellKey(row, column)}`;

const textOf = ({ formula }: Cell): string => shifted(formula!.text, formula!.rowShift, formula!.columnShift);

/** Such a table puts numbers into other cells and reads what comes of it, which would be the same each time. */
const dataTablesOf = ({ sheets }: OpenWorkbook, sheet: number): Set<number> =>
  new Set(
    (sheets[sheet]?.rows ?? []).flatMap(({ cells }) =>
      cells.flatMap(({ row, column, formula }) => (formula?.kind === "dataTable" ? [cellKey(row, column)] : [])),
    ),
  );
