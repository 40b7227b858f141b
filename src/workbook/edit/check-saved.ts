import { cellName, contains } from "../address";
import { FileFault } from "../xlsx/fault";
import { openWorkbook } from "../xlsx/open-workbook";
import { cellKey, type Cell } from "../engine/index";
import { contentOf } from "./cell-content";
import { sameContent, type Content } from "./content";

/**
 * Reads a file that was written, and compares it with the workbook that it is of, cell by cell: what does not stand in
 * the file must not be taken for saved.
 * @throws FileFault where it holds anything else
 */
export function checkSaved(saved: Uint8Array, workbook: Held): void {
  const { book } = openWorkbook(saved);
  const names = workbook.sheets.map(({ name }) => name);
  if (book.sheets.length !== names.length || book.sheets.some(({ name }, i) => name !== names[i]))
    throw notHeld("its sheets");
  book.sheets.forEach(({ name, cells }, sheet) => {
    const where = (row: number, column: number) => `${cellName(row, column)} of the sheet ${name}`;
    for (const cell of workbook.cells(sheet)) {
      const { row, column } = cell;
      const written = contentOf(cells.get(cellKey(row, column)));
      if (!sameStored(written, contentOf(cell))) throw notHeld(where(row, column));
    }
    const arrays = [...cells.values()].filter(({ formula }) => formula && formula.kind !== "plain");
    for (const cell of cells.values()) {
      const { row, column, formula, value } = cell;
      if (!formula && value === null) continue;
      if (workbook.content(sheet, row, column) !== null) continue;
      if (formula || !arrays.some((array) => contains(array.formula!.area, row, column)))
        throw notHeld(where(row, column));
    }
  });
}

/** What a workbook holds, sheet by sheet. */
interface Held {
  readonly sheets: readonly { name: string }[];
  cells(sheet: number): Iterable<Cell>;
  content(sheet: number, row: number, column: number): Content;
}

const sameStored = (written: Content, meant: Content): boolean => sameContent(written, meant);

const notHeld = (what: string): FileFault =>
  new FileFault(`The file is not saved: read back, it does not hold ${what} as it stands here.`);
