import { cellName, columnLetters, type Area } from "../address";
import { nodesOf, type Node, type NodeOf } from "../formula/nodes";
import { parseFormula } from "../formula/parse";
import { applyEdits, type Edit } from "../text-edits";

/**
 * A formula, without its equals sign, in which `A5#` is the range that it has spilled into.
 * @param areaOf that range, undefined where the mark stays
 */
export function inRanges(formula: string, areaOf: (anchor: NodeOf<"reference">) => Area | undefined): string {
  let nodes: Node[];
  try {
    nodes = nodesOf(parseFormula(formula));
  } catch {
    return formula;
  }
  const edits = nodes.flatMap((node): Edit[] => {
    const anchor = anchorOf(node);
    const area = anchor?.kind === "reference" ? areaOf(anchor) : undefined;
    if (!area || anchor?.kind !== "reference") return [];
    const { rowAbsolute, columnAbsolute } = anchor.from;
    const last = `${columnAbsolute ? "$" : ""}${columnLetters(area.right)}${rowAbsolute ? "$" : ""}${area.bottom + 1}`;
    const first = formula.slice(anchor.start, anchor.end);
    const isCell = cellName(area.top, area.left) === cellName(area.bottom, area.right);
    return [{ start: node.start, end: node.end, text: isCell ? first : `${first}:${last}` }];
  });
  return applyEdits(formula, edits);
}

/** Before the mark: a file has a function in its place. */
function anchorOf(node: Node): Node | undefined {
  if (node.kind === "unary" && node.operator === "#") return node.operand;
  return node.kind === "call" && node.name === "ANCHORARRAY" ? node.args[0] : undefined;
}
