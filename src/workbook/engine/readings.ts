import { children, type Node } from "../formula/nodes";
import { shiftedArea } from "./references";
import type { CellSource } from "./source";
import { tableReference } from "./table-areas";
import { Reference, type Scope, type SheetArea } from "./values";

/** The ranges that a formula's text names, its defined names and tables looked up: what must be worked out before it. */
export function readings(whole: Node, formula: Scope, cells: CellSource): SheetArea[] {
  const found: SheetArea[] = [];
  const seen = new Set<string>();
  // Without recursion: a formula of thousands of terms is a tree as deep, and names may lead to names.
  const open: Below[] = [{ node: whole, scope: formula }];
  for (let next = open.pop(); next; next = open.pop()) {
    for (const below of look(next.node, next.scope, cells, found, seen).reverse()) open.push(below);
  }
  return found;
}

/** What is to be looked at below the node; a name is gone into once on every sheet. */
function look(node: Node, scope: Scope, cells: CellSource, found: SheetArea[], seen: Set<string>): Below[] {
  const below: Below[] = [];
  if (node.kind === "reference") {
    const first = node.sheet === undefined ? scope.sheet : cells.sheetIndex(node.sheet);
    const last = node.lastSheet === undefined ? first : cells.sheetIndex(node.lastSheet);
    if (first === undefined || last === undefined) return [];
    const area = shiftedArea(node.from, node.to, scope);
    for (let sheet = Math.min(first, last); sheet <= Math.max(first, last); sheet++) found.push({ sheet, ...area });
  } else if (node.kind === "table") {
    const reference = tableReference(cells, node, scope);
    if (reference instanceof Reference) found.push(...reference.areas);
  } else if (node.kind === "name" || node.kind === "call") {
    const sheet = node.kind === "name" && node.sheet !== undefined ? cells.sheetIndex(node.sheet) : scope.sheet;
    const body = cells.name(node.name, sheet ?? scope.sheet);
    const inner = { ...scope, sheet: sheet ?? scope.sheet, rowShift: scope.row, columnShift: scope.column };
    const key = `${inner.sheet} ${node.name.toLowerCase()}`;
    if (body && !seen.has(key)) below.push({ node: body, scope: inner });
    seen.add(key);
  }
  if (
    node.kind === "call" &&
    ["ROW", "COLUMN", "ROWS", "COLUMNS", "FORMULATEXT"].includes(node.name) &&
    node.args[0]?.kind === "reference"
  ) {
    return below;
  }
  for (const child of children(node)) below.push({ node: child, scope });
  return below;
}

interface Below {
  node: Node;
  scope: Scope;
}
