import { children, type Node } from "../formula/nodes";
import { parseFormula } from "../formula/parse";
import { CUSTOM_PREFIX } from "../formula/typed-name";

/** Functions that take whole ranges and give one value, in the older kind of formula too. */
const ONE_VALUE = new Set(
  "SUM COUNT COUNTA AVERAGE MIN MAX PRODUCT SUMPRODUCT COUNTBLANK MEDIAN ROWS COLUMNS".split(" "),
);

/**
 * Whether a typed formula is stored as one that may spill. Older formulas take one value where a range is given, so
 * only those stay plain that cannot tell the difference.
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
      if (node.name.startsWith(CUSTOM_PREFIX.toUpperCase())) return true;
      if (OLD.has(node.name)) return node.args.some((arg) => mayDiffer(arg, ONE_VALUE.has(node.name)));
      return true;
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

/** Functions that were there before formulas could spill, and give one value for single values. */
const OLD = new Set([
  ...ONE_VALUE,
  ..."IF IFERROR AND OR NOT ROUND ROUNDUP ROUNDDOWN CEILING FLOOR ABS INT MOD SQRT POWER TEXT LEFT RIGHT MID LEN".split(
    " ",
  ),
  ..."UPPER LOWER TRIM CONCATENATE ISNUMBER ISTEXT ISBLANK ISERROR ISNA VALUE PI SIGN".split(" "),
]);
