import { columnNumber, MAX_COLUMNS, MAX_ROWS } from "../address";
import type { Cursor } from "./cursor";
import type { Corner, NodeOf } from "./nodes";

/** Takes a cell, a range, whole columns or whole rows, if one stands here. */
export function takeReference(cursor: Cursor): NodeOf<"reference"> | undefined {
  const token = cursor.take("columns", "rows", "cell");
  if (!token) return undefined;
  const { text, start } = token;
  if (token.kind !== "cell") {
    const [first, last] = text.split(":") as [string, string];
    const whole = token.kind as "columns" | "rows";
    return { kind: "reference", from: corner(first, 0), to: corner(last, Infinity), whole, start, end: token.end };
  }
  const from = corner(text, 0);
  const isRange = cursor.token?.text === ":" && cursor.next?.kind === "cell";
  const to = isRange && cursor.takeOperator(":") ? corner(cursor.take("cell")!.text, 0) : from;
  return { kind: "reference", from, to, start, end: cursor.end };
}

/** Mark and letters of a column, mark and number of a row, of which one pair may be missing. */
export const CORNER = /^(\$(?=[A-Za-z]))?([A-Za-z]*)(\$)?(\d*)$/;

/** @param missing the row of a whole column, the column of a whole row; the grid's last where it is beyond */
function corner(text: string, missing: number): Corner {
  const [, columnMark = "", letters, rowMark = "", row] = CORNER.exec(text)!;
  return {
    row: row ? Number(row) - 1 : Math.min(missing, MAX_ROWS - 1),
    column: letters ? columnNumber(letters) : Math.min(missing, MAX_COLUMNS - 1),
    rowAbsolute: !row || rowMark === "$",
    columnAbsolute: !letters || columnMark === "$",
  };
}
