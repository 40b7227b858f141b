import { closingBracket } from "./brackets";
import type { NodeOf, Place, TableItem } from "./nodes";

const ITEMS: Record<string, TableItem> = {
  "#all": "all",
  "#data": "data",
  "#headers": "headers",
  "#totals": "totals",
  "#this row": "row",
};

/**
 * Reads what stands in brackets after a table's name: `[Width]`, `[#All]`,
 * `[[#This Row],[Width]]`, `[[First]:[Last]]`, `[@Width]`.
 */
export function readTableReference(table: string, brackets: string): TableReference {
  const node: TableReference = { kind: "table", table, items: [] };
  let rest = brackets.slice(1, -1).trim();
  if (rest.startsWith("@")) {
    node.items.push("row");
    rest = rest.slice(1).trim();
  }
  for (const part of rest.startsWith("[") ? bracketed(rest) : [rest]) {
    if (part === "") continue;
    const item = ITEMS[part.toLowerCase()];
    if (item) node.items.push(item);
    else if (node.first === undefined) node.first = node.last = unescape(part);
    else node.last = unescape(part);
  }
  return node;
}

type TableReference = Omit<NodeOf<"table">, keyof Place>;

export const NOT_CLOSED = "A table reference is not closed.";

function bracketed(text: string): string[] {
  const parts: string[] = [];
  for (let i = 0; i < text.length;) {
    if (text[i] === "[") {
      const end = closingBracket(text, i);
      if (end === undefined) throw new SyntaxError(NOT_CLOSED);
      parts.push(text.slice(i + 1, end - 1));
      i = end;
    } else if (/[\s,:]/.test(text[i]!)) i++;
    else throw new SyntaxError(`A table reference holds “${text.slice(i)}”.`);
  }
  return parts;
}

function unescape(name: string): string {
  return name.replace(/'(.)/gs, "$1");
}
