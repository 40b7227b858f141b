/** Cells that are asked for at a time, so that no answer is too large for the host. */
const BLOCK = 20_000;

interface Place {
  rowIndex: number;
  columnIndex: number;
  rowCount: number;
  columnCount: number;
}

/**
 * A part of a sheet as ranges of whole rows, to be read one after the other.
 * @param most cells that are looked at; the last rows are left out where there are more
 */
export function* blocksOf(
  sheet: Excel.Worksheet,
  { rowIndex, columnIndex, rowCount, columnCount }: Place,
  most = Infinity,
  block = BLOCK,
): Generator<Excel.Range> {
  const height = Math.max(1, Math.floor(block / columnCount));
  const last = Math.min(rowCount, Math.floor(most / columnCount));
  for (let first = 0; first < last; first += height)
    yield sheet.getRangeByIndexes(rowIndex + first, columnIndex, Math.min(height, rowCount - first), columnCount);
}
