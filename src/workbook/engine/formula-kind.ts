import { children, type Node, type NodeOf } from "../formula/nodes";
import { parseFormula } from "../formula/parse";
import { signatureOf } from "./library";
import { isNewFunction } from "./univer/new-functions";

/**
 * Whether a typed formula is stored as one that may spill. Older formulas take one value where a range is given and one
 * is wanted, so only those stay plain that cannot tell the difference.
 */
export function formulaKind(stored: string): "plain" | "dynamic" {
  try {
    return mayDiffer(parseFormula(stored), false) ? "dynamic" : "plain";
  } catch {
    return "plain";
  }
}

function mayDiffer(node: Node, rangeIsWelcome: boolean): boolean {
  switch (node.kind) {
    case "reference": {
      const { from, to, whole, lastSheet } = node;
      const isCell = !whole && !lastSheet && from.row === to.row && from.column === to.column;
      return !isCell && !rangeIsWelcome;
    }
    case "call":
      return callMayDiffer(node);
    case "number":
    case "text":
    case "boolean":
    case "error":
    case "missing":
      return false;
    case "unary":
      return node.operator === "#" || mayDiffer(node.operand, false);
    case "binary":
      return children(node).some((child) => mayDiffer(child, false));
    default:
      return true;
  }
}

/** Functions that came later may spill, and so may those that nothing is known of, ours among them. */
function callMayDiffer({ name, args }: NodeOf<"call">): boolean {
  const signature = LOOK_FIRST[name] ?? signatureOf(name);
  if (signature === undefined || isNewFunction(name) || GIVE_SEVERAL.has(name)) return true;
  return args.some((arg, i) => mayDiffer(arg, signature[Math.min(i, signature.length - 1)] !== "V"));
}

/** Functions that look at their arguments before they are worked out have no signature; these give one value. */
const LOOK_FIRST: Readonly<Record<string, string>> = { IF: "V", IFERROR: "V", ROWS: "R", COLUMNS: "R" };

/** Older functions that give several values. */
const GIVE_SEVERAL = new Set("FREQUENCY MMULT MODE.MULT MUNIT TRANSPOSE".split(" "));
