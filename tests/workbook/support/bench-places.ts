import { cellName } from "../../../src/workbook/address";
import { PARTS_BENCH } from "./parts-bench";

const HEADINGS = 4;

/** The cell of an opening of the example, by the table's heading. */
export function openingCell(opening: string, heading: string): string {
  const column = contents("Job", HEADINGS).indexOf(heading);
  if (column < 0) throw new Error(`No column ${heading}`);
  return cellName(rowOf("Job", opening), column);
}

/** The headings of the example's openings. */
export const OPENING_HEADINGS = contents("Job", HEADINGS) as string[];

/** The cell that a standard is typed into. */
export const standardCell = (name: string): string => cellName(rowOf("Job", name), 1);

/** The cell of a rate, on the sheet Prices. */
export const rateCell = (name: string): string => cellName(rowOf("Prices", name), 1);

function rowOf(sheet: string, label: string): number {
  const row = rows(sheet).findIndex(({ cells }) => cells[0]?.content === label);
  if (row < 0) throw new Error(`No row ${label} on the sheet ${sheet}`);
  return row;
}

function contents(sheet: string, row: number) {
  return rows(sheet)[row]!.cells.map((cell) => cell?.content);
}

function rows(sheet: string) {
  return PARTS_BENCH.sheets.find(({ name }) => name === sheet)!.rows;
}
