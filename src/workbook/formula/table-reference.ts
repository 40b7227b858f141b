import type { Node, TableItem } from "./nodes";

const ITEMS: Record<string, TableItem> = {
  "#all": "all",
  "#data": "data",
  "#headers": "headers",
  "#totals": "totals",
  "#this row": "row",
};

/**
 * Reads what stands in brackets after a table's name: `[Width]`, `[#All]`,
 * `[[#This Row],[Width]]`, `[[First]:[Last]]`, `[@Width]`. Gives the node and where the brackets end.
 */
export function readTableReference(text: string, start: number, table: string): { node: Node; end: number } {
  const end = closingBracket(text, start);
  const inner = text.slice(start + 1, end - 1).trim();
  const node: Extract<Node, { kind: "table" }> = { kind: "table", table, items: [] };
  let rest = inner;
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
  return { node, end };
}

/** The place just after the bracket that closes the one at `start`; an apostrophe escapes the next character. */
function closingBracket(text: string, start: number): number {
  let depth = 0;
  for (let i = start; i < text.length; i++) {
    if (text[i] === "'") i++;
    else if (text[i] === "[") depth++;
    else if (text[i] === "]" && --depth === 0) return i + 1;
  }
  throw new SyntaxError("A table reference is not closed.");
}

function bracketed(text: string): string[] {
  const parts: string[] = [];
  for (let i = 0; i < text.length;) {
    if (text[i] === "[") {
      const end = closingBracket(text, i);
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
