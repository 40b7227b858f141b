import { isNewFunction } from "../engine/index";
import type { Node } from "../formula/nodes";
import { tokenEdits } from "../formula/token-edits";
import { CUSTOM_PREFIX } from "../formula/typed-name";
import { readable } from "../formula/typed-text";
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

/** `DRAWER.BOXWIDTH` as a file has it. */
export const ownName = (name: string): string => CUSTOM_PREFIX + name.toUpperCase().replaceAll(".", "_");

function storedName(name: string): string {
  const upper = name.toUpperCase();
  if (upper === "FILTER" || upper === "SORT") return `_xlfn._xlws.${upper}`;
  return isNewFunction(upper) ? `_xlfn.${upper}` : name;
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
