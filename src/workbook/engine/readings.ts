import { children, type Node } from "../formula/nodes";
import { shiftedArea } from "./references";
import type { CellSource } from "./source";
import { tableReference } from "./tableAreas";
import { Reference, type Scope, type SheetArea } from "./values";

/** The ranges that a formula's text names, its defined names and tables looked up: what must be worked out before it. */
export function readings(node: Node, scope: Scope, cells: CellSource, found: SheetArea[] = [], depth = 0): SheetArea[] {
  if (node.kind === "reference") {
    const first = node.sheet === undefined ? scope.sheet : cells.sheetIndex(node.sheet);
    const last = node.lastSheet === undefined ? first : cells.sheetIndex(node.lastSheet);
    if (first === undefined || last === undefined) return found;
    const area = shiftedArea(node.from, node.to, scope);
    for (let sheet = Math.min(first, last); sheet <= Math.max(first, last); sheet++) found.push({ sheet, ...area });
  } else if (node.kind === "table") {
    const reference = tableReference(cells, node, scope);
    if (reference instanceof Reference) found.push(...reference.areas);
  } else if ((node.kind === "name" || node.kind === "call") && depth < 32) {
    const sheet = node.kind === "name" && node.sheet !== undefined ? cells.sheetIndex(node.sheet) : scope.sheet;
    const body = cells.name(node.name, sheet ?? scope.sheet);
    const inner = { ...scope, sheet: sheet ?? scope.sheet, rowShift: scope.row, columnShift: scope.column };
    if (body) readings(body, inner, cells, found, depth + 1);
  }
  if (
    node.kind === "call" &&
    ["ROW", "COLUMN", "ROWS", "COLUMNS"].includes(node.name) &&
    node.args[0]?.kind === "reference"
  ) {
    return found;
  }
  for (const child of children(node)) readings(child, scope, cells, found, depth);
  return found;
}
