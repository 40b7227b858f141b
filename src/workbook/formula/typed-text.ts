import { columnLetters, columnNumber, MAX_COLUMNS, MAX_ROWS, wrapped } from "../address";
import { applyEdits, type Edit } from "../text-edits";
import { nodesOf, type Node } from "./nodes";
import { parseFormula } from "./parse";
import { CORNER } from "./parse-reference";
import { tokenEdits } from "./token-edits";
import { typedName } from "./typed-name";

/** A stored formula as a person reads it, with its equals sign. */
export function toTyped(stored: string): string {
  const spills = /anchorarray/i.test(stored) ? readable(stored).flatMap((node) => marked(node, stored)) : [];
  const names = tokenEdits(stored, ({ kind, text, start }) => {
    const isName = (kind === "call" || kind === "name") && !spills.some((spill) => spill.start === start);
    return isName ? typedName(text) : undefined;
  });
  return `=${applyEdits(stored, [...spills, ...names])}`;
}

/** The formula as it reads in a cell so many rows down and columns to the right; what is absolute stays. */
export function shifted(text: string, rows: number, columns: number): string {
  if (rows === 0 && columns === 0) return text;
  const moved = (corner: string) =>
    corner.replace(CORNER, (_, fixed = "", letters, fixedRow = "", row) => {
      const isFixed = fixed !== "" || letters === "";
      const column = isFixed ? letters : columnLetters(wrapped(columnNumber(letters) + columns, MAX_COLUMNS));
      return fixed + column + fixedRow + (fixedRow || !row ? row : wrapped(Number(row) - 1 + rows, MAX_ROWS) + 1);
    });
  const edits = tokenEdits(text, ({ kind, text: token }) =>
    kind === "cell" || kind === "columns" || kind === "rows" ? token.split(":").map(moved).join(":") : undefined,
  );
  return applyEdits(text, edits);
}

/** All of a formula's nodes; none where it cannot be read, for then it stays as it is, and the engine says why. */
export function readable(text: string): Node[] {
  try {
    return nodesOf(parseFormula(text));
  } catch {
    return [];
  }
}

/** The other way round, where a mark may stand behind what is asked for. */
function marked(node: Node, stored: string): Edit[] {
  if (node.kind !== "call" || node.name !== "ANCHORARRAY") return [];
  const [cell, ...others] = node.args;
  const isEnclosed = cell && /^\(.*\)$/s.test(stored.slice(cell.start, cell.end));
  if (!cell || others.length > 0 || (WORKED_OUT.includes(cell.kind) && !isEnclosed)) return [];
  return [
    { start: node.start, end: cell.start, text: "" },
    { start: cell.end, end: node.end, text: "#" },
  ];
}

/** Behind these a mark would stand at their last part alone. */
const WORKED_OUT: readonly Node["kind"][] = ["missing", "binary", "unary", "join"];
