import { isInternalEditorID, ObjectMatrix, type ICellData, type IExecutionOptions } from "@univerjs/core";
import { MAX_COLUMNS, MAX_ROWS } from "../address";

/**
 * All that may change in the grid; whatever is not named here is refused. What stands in cells goes into the workbook
 * (see ./calculation). Looks that come along with it are left out, for the file keeps its own. Widths and heights may be
 * pulled, to read what a cell cuts off. The rest is the library's own bookkeeping, of which nothing is saved.
 * @param params may be changed, so that only what is understood is left of it
 * @returns false where the mutation must not run
 */
export function admitted(id: string, params: object | undefined, options: IExecutionOptions | undefined): boolean {
  if (options?.["fromFormula"]) return true;
  const take = MUTATIONS[id];
  return take !== undefined && take((params ?? {}) as never);
}

const yes = (): boolean => true;

const MUTATIONS: Record<string, (params: never) => boolean> = {
  "sheet.mutation.set-range-values": contentsOnly,
  "sheet.mutation.set.numfmt": nothingOf,
  "sheet.mutation.remove.numfmt": nothingOf,
  "sheet.mutation.empty": yes,
  "sheet.mutation.set-worksheet-col-width": yes,
  "sheet.mutation.set-worksheet-row-height": yes,
  "sheet.mutation.set-worksheet-row-auto-height": yes,
  "sheet.mutation.set-worksheet-row-is-auto-height": yes,
  "formula.mutation.set-formula-data": yes,
  "formula.mutation.set-array-formula-data": yes,
  "formula.mutation.set-image-formula-data": yes,
  "formula.mutation.set-formula-calculation-start": yes,
  "formula.mutation.set-trigger-formula-calculation-start": yes,
  "formula.mutation.set-formula-calculation-stop": yes,
  "formula.mutation.set-formula-calculation-notification": yes,
  "formula.mutation.set-formula-calculation-result": yes,
  "formula.mutation.register-function": yes,
  // The text that is being typed stands in a document of its own.
  "doc.mutation.rich-text-editing": ({ unitId }: { unitId: string }) => isInternalEditorID(unitId),
};

/** The names of all that is let through. */
export const UNDERSTOOD: readonly string[] = Object.keys(MUTATIONS);

/** Where a cell is emptied, its looks stay. Some commands miscount at the sheet's edge, and write beside it. */
function contentsOnly({ cellValue }: { cellValue?: Record<number, Record<number, ICellData | null>> }): boolean {
  let isOnSheet = true;
  new ObjectMatrix(cellValue ?? {}).forValue((row, column, cell) => {
    isOnSheet &&= row >= 0 && column >= 0 && row < MAX_ROWS && column < MAX_COLUMNS;
    cellValue![row]![column] = cell ? contentOf(cell) : { ...EMPTY };
  });
  return isOnSheet;
}

const EMPTY: ICellData = { v: null, t: null, f: null, si: null, p: null };

function contentOf(cell: ICellData): ICellData {
  const { v, t, f, si, p } = cell;
  const given = { v, t, f, si, p };
  return Object.fromEntries(Object.entries(given).filter(([, part]) => part !== undefined));
}

/** Number formats that the grid would give to cells. */
function nothingOf(params: { values?: object; ranges?: object[] }): boolean {
  if (params.values) params.values = {};
  if (params.ranges) params.ranges = [];
  return true;
}
