import { columnNumber, MAX_COLUMNS, MAX_ROWS } from "../address";
import type { Corner, Node } from "./nodes";
import { PATTERN, type Scanner } from "./scanner";

/** A cell, a range, whole columns or whole rows, if one stands here. */
export function reference(scanner: Scanner): Extract<Node, { kind: "reference" }> | undefined {
  const start = scanner.position;
  const columns = scanner.take(PATTERN.columns);
  if (columns) {
    const from = corner("$", "1", columns[1]!, columns[2]!);
    const to = corner("$", String(MAX_ROWS), columns[3]!, columns[4]!);
    if (from && to) return { kind: "reference", from, to, whole: "columns" };
  }
  const rows = columns ? undefined : scanner.take(PATTERN.rows);
  if (rows) {
    const from = corner(rows[1]!, rows[2]!, "$", "A");
    const to = corner(rows[3]!, rows[4]!, "$", "XFD");
    if (from && to) return { kind: "reference", from, to, whole: "rows" };
  }
  const from = takeCell(scanner);
  if (from) {
    const before = scanner.position;
    if (scanner.takeText(":")) {
      const to = takeCell(scanner);
      if (to) return { kind: "reference", from, to };
      scanner.position = before;
    }
    return { kind: "reference", from, to: from };
  }
  scanner.position = start;
  return undefined;
}

function takeCell(scanner: Scanner): Corner | undefined {
  const before = scanner.position;
  const match = scanner.take(PATTERN.cell);
  const found = match && corner(match[3]!, match[4]!, match[1]!, match[2]!);
  if (!found) scanner.position = before;
  return found;
}

function corner(rowMark: string, row: string, columnMark: string, letters: string): Corner | undefined {
  const found = {
    row: Number(row) - 1,
    column: columnNumber(letters),
    rowAbsolute: rowMark === "$",
    columnAbsolute: columnMark === "$",
  };
  return found.row < MAX_ROWS && found.column < MAX_COLUMNS ? found : undefined;
}
