import { columnLetters, columnNumber, MAX_COLUMNS, MAX_ROWS, wrapped } from "../address";
import { isNewFunction } from "../engine/index";
import { nodesOf, type Node } from "../formula/nodes";
import { parseFormula } from "../formula/parse";
import { CORNER } from "../formula/parse-reference";
import { tokenEdits } from "../formula/token-edits";
import { CUSTOM_PREFIX, typedName } from "../formula/typed-name";
import { applyEdits, type Edit } from "../text-edits";
import { isOwnFunction } from "./own-functions";

/**
 * A formula as a file stores it, from what a person types: `=DRAWER.BOXWIDTH(A2)` is stored as
 * `_xldudf_DRAWER_BOXWIDTH(A2)`, `A1#` as `_xlfn.ANCHORARRAY(A1)`, and newer functions and LET's names with prefixes.
 * @param typed with or without its equals sign
 * @param isOwn whether a function of that name is one of ours
 */
export function toStored(typed: string, isOwn: (name: string) => boolean = isOwnFunction): string {
  const text = typed.startsWith("=") ? typed.slice(1) : typed;
  const nodes = readable(text);
  const bound = boundNames(nodes);
  const stored = (name: string): string => {
    if (bound.has(name.toLowerCase())) return `_xlpm.${name}`;
    return isOwn(name) ? ownName(name) : storedName(name);
  };
  const names = tokenEdits(text, ({ kind, text: name }) => {
    if (kind === "call") return stored(name);
    return kind === "name" && bound.has(name.toLowerCase()) ? `_xlpm.${name}` : undefined;
  });
  return applyEdits(text, [...nodes.flatMap(anchored), ...names]);
}

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

/** `DRAWER.BOXWIDTH` as a file has it. */
export const ownName = (name: string): string => CUSTOM_PREFIX + name.toUpperCase().replaceAll(".", "_");

function storedName(name: string): string {
  const upper = name.toUpperCase();
  if (upper === "FILTER" || upper === "SORT") return `_xlfn._xlws.${upper}`;
  return isNewFunction(upper) ? `_xlfn.${upper}` : name;
}

/** All of a formula's nodes; none where it cannot be read, for then it is stored as it was typed, and the engine says why. */
function readable(text: string): Node[] {
  try {
    return nodesOf(parseFormula(text));
  } catch {
    return [];
  }
}

/** The names that LET and LAMBDA bind somewhere in the formula. */
function boundNames(nodes: readonly Node[]): Set<string> {
  const names = new Set<string>();
  for (const node of nodes) {
    if (node.kind !== "call" || (node.name !== "LET" && node.name !== "LAMBDA")) continue;
    const places = node.name === "LET" ? node.args.filter((_, i) => i % 2 === 0) : node.args;
    for (const place of places.slice(0, -1)) if (place.kind === "name") names.add(place.name.toLowerCase());
  }
  return names;
}

/** `A1#` as `_xlfn.ANCHORARRAY(A1)`, in two edits around what stands before the mark. */
function anchored(node: Node): Edit[] {
  if (node.kind !== "unary" || node.operator !== "#") return [];
  const { start, end, operand } = node;
  return [
    { start, end: start, text: "_xlfn.ANCHORARRAY(" },
    { start: operand.end, end, text: ")" },
  ];
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
