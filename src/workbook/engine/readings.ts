import { children, nodesOf, type Node, type NodeOf } from "../formula/nodes";
import { shiftedArea } from "./references";
import type { CellSource } from "./source";
import { tableReference } from "./table-areas";
import { Reference, type Scope, type SheetArea } from "./values";

/** The ranges that a formula's text names, its defined names and tables looked up: what must be worked out before it. */
export function readings({ node, references }: Readable, formula: Scope, cells: CellSource): SheetArea[] {
  const found: SheetArea[] = [];
  if (references) {
    for (const reference of references) addAreas(reference, formula, cells, found);
    // A list that was added to has room for more, and there are as many as formulas.
    return found.slice();
  }
  const seen = new Set<string>();
  // Without recursion: a formula of thousands of terms is a tree as deep, and names may lead to names.
  const open: Below[] = [{ node: node!, scope: formula }];
  for (let next = open.pop(); next; next = open.pop()) {
    for (const below of look(next.node, next.scope, cells, found, seen).reverse()) open.push(below);
  }
  return found;
}

/** A formula's tree; what it reads may have been told for it before. */
interface Readable {
  node?: Node | undefined;
  references?: readonly NodeOf<"reference">[] | undefined;
}

/** All that a formula reads, where it is what stands in its text: no name, no table. Thousands may share its tree. */
export function plainReferences(
  whole: Node,
  isName: (name: string) => boolean,
): readonly NodeOf<"reference">[] | undefined {
  const nodes = nodesOf(whole);
  const isPlain = nodes.every((node) =>
    node.kind === "call" ? !isName(node.name) && !asksForPlace(node) : node.kind !== "name" && node.kind !== "table",
  );
  return isPlain ? nodes.filter((node) => node.kind === "reference") : undefined;
}

/** What is to be looked at below the node; a name is gone into once on every sheet. */
function look(node: Node, scope: Scope, cells: CellSource, found: SheetArea[], seen: Set<string>): Below[] {
  const below: Below[] = [];
  if (node.kind === "reference") addAreas(node, scope, cells, found);
  else if (node.kind === "table") {
    const reference = tableReference(cells, node, scope);
    if (reference instanceof Reference) found.push(...reference.areas);
  } else if (node.kind === "name" || node.kind === "call") {
    const sheet = node.kind === "name" && node.sheet !== undefined ? cells.sheetIndex(node.sheet) : scope.sheet;
    const body = cells.name(node.name, sheet ?? scope.sheet);
    const inner = { ...scope, sheet: sheet ?? scope.sheet, rowShift: scope.row, columnShift: scope.column };
    const key = `${inner.sheet} ${node.name.toLowerCase()}`;
    if (body && !seen.has(key)) below.push({ node: body, scope: inner });
    seen.add(key);
    if (node.kind === "call" && asksForPlace(node)) return below;
  }
  for (const child of children(node)) below.push({ node: child, scope });
  return below;
}

function addAreas(node: NodeOf<"reference">, scope: Scope, cells: CellSource, found: SheetArea[]): void {
  const first = node.sheet === undefined ? scope.sheet : cells.sheetIndex(node.sheet);
  const last = node.lastSheet === undefined ? first : cells.sheetIndex(node.lastSheet);
  if (first === undefined || last === undefined) return;
  const { top, left, bottom, right } = shiftedArea(node.from, node.to, scope);
  for (let sheet = Math.min(first, last); sheet <= Math.max(first, last); sheet++)
    found.push({ sheet, top, left, bottom, right });
}

/** Whether where a reference leads is asked for, and not what stands there. */
const asksForPlace = ({ name, args }: NodeOf<"call">): boolean =>
  ["ROW", "COLUMN", "ROWS", "COLUMNS", "FORMULATEXT"].includes(name) && args[0]?.kind === "reference";

interface Below {
  node: Node;
  scope: Scope;
}
