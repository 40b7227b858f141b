import type { ErrorCode } from "./error-codes";

/** One corner of a reference. A relative part moves with the formula; an absolute one stays. */
export interface Corner {
  row: number;
  column: number;
  rowAbsolute: boolean;
  columnAbsolute: boolean;
}

export type Operator = "+" | "-" | "*" | "/" | "^" | "&" | "=" | "<>" | "<" | "<=" | ">" | ">=";

export type TableItem = "all" | "data" | "headers" | "totals" | "row";

/** A formula as a tree, each node with its place in the text. `missing` is an argument left out between commas. */
export type Node = Unplaced & Place;

export interface Place {
  start: number;
  end: number;
}

/** A node of the kind. */
export type NodeOf<K extends Node["kind"]> = Extract<Unplaced, { kind: K }> & Place;

type Unplaced =
  | { kind: "number"; value: number }
  | { kind: "text"; value: string }
  | { kind: "boolean"; value: boolean }
  | { kind: "error"; code: ErrorCode }
  | { kind: "missing" }
  | { kind: "array"; rows: Node[][] }
  | { kind: "reference"; sheet?: string; lastSheet?: string; from: Corner; to: Corner; whole?: "rows" | "columns" }
  | { kind: "name"; sheet?: string; name: string }
  | { kind: "table"; table: string; items: TableItem[]; first?: string; last?: string }
  | { kind: "external"; text: string }
  | { kind: "call"; name: string; args: Node[] }
  | { kind: "invoke"; callee: Node; args: Node[] }
  | { kind: "unary"; operator: "-" | "+" | "%" | "@" | "#"; operand: Node }
  | { kind: "binary"; operator: Operator; left: Node; right: Node }
  | { kind: "join"; operator: ":" | " " | ","; left: Node; right: Node };

/** The parts directly below a node, in the order written. */
export function children(node: Node): Node[] {
  switch (node.kind) {
    case "array":
      return node.rows.flat();
    case "call":
      return [...node.args];
    case "invoke":
      return [node.callee, ...node.args];
    case "unary":
      return [node.operand];
    case "binary":
    case "join":
      return [node.left, node.right];
    default:
      return [];
  }
}

/** The node and everything below it; without recursion, for a sum of thousands of terms is as deep. */
export function nodesOf(node: Node): Node[] {
  const found: Node[] = [];
  const open = [node];
  for (let next = open.pop(); next; next = open.pop()) {
    found.push(next);
    for (const child of children(next).reverse()) open.push(child);
  }
  return found;
}
