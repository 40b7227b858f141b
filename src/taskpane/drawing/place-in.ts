/** A range and its sheet. */
interface Table {
  sheet: string;
  address: string;
}

/**
 * The row of a cell in a range, from 0; undefined where it lies outside.
 * @example placeIn("Job!B7", { sheet: "Job", address: "A5:F9" }) // 2
 */
export function placeIn(cell: string, { sheet, address }: Table): number | undefined {
  const mark = cell.lastIndexOf("!");
  const on = cell
    .slice(0, mark)
    .replace(/^'(.*)'$/s, "$1")
    .replace(/''/g, "'");
  const [at] = corners(cell.slice(mark + 1));
  const [first, last = first] = corners(address);
  if (on !== sheet || !at || !first || !last) return undefined;
  const inside = first.row <= at.row && at.row <= last.row && first.column <= at.column && at.column <= last.column;
  return inside ? at.row - first.row : undefined;
}

function corners(address: string): { row: number; column: number }[] {
  return address.split(":").map((cell) => {
    const [, letters = "", row = "0"] = /^\$?([A-Z]+)\$?(\d+)$/i.exec(cell) ?? [];
    let column = 0;
    for (const letter of letters.toUpperCase()) column = 26 * column + letter.charCodeAt(0) - 64;
    return { row: Number(row), column };
  });
}

/**
 * A cell of a range by its row and column in it, from 0.
 * @example cellIn("A5:F9", 2, 1) // "B7"
 */
export function cellIn(range: string, row: number, column: number): string {
  const [first] = corners(range);
  let letters = "";
  for (let rest = first!.column + column; rest > 0; rest = Math.floor((rest - 1) / 26))
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return `${letters}${first!.row + row}`;
}
