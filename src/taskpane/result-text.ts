/**
 * Reads an example's result, written as a formula's constant, into the rows and cells that it fills.
 * @example resultCells('{"Pass","Fence";1,0.375}') // [["Pass", "Fence"], ["1", "0.375"]]
 * @example resultCells('"23 7/16"""') // [['23 7/16"']]
 */
export function resultCells(constant: string): string[][] {
  const inner = /^\{(.*)\}$/.exec(constant)?.[1];
  if (inner === undefined) return [[unquoted(constant)]];
  const rows: string[][] = [[]];
  for (const [, cell = "", mark] of inner.matchAll(/("(?:[^"]|"")*"|[^,;"]+)([,;]|$)/g)) {
    rows[rows.length - 1]!.push(unquoted(cell));
    if (mark === ";") rows.push([]);
  }
  return rows;
}

const unquoted = (cell: string): string =>
  cell.startsWith('"') && cell.endsWith('"') ? cell.slice(1, -1).replace(/""/g, '"') : cell.trim();
