import { applyEdits } from "../text-edits";
import { tokenEdits } from "./token-edits";

/** How a file marks a function of an add-in: the prefix, the add-in's namespace, and the function's own name. */
export const CUSTOM_PREFIX = "_xldudf_";

/**
 * A function's or a variable's name as a person types it.
 * @example typedName("_xlfn._xlws.FILTER") // "FILTER"
 * @example typedName("_xldudf_DRAWER_BOXWIDTH") // "DRAWER.BOXWIDTH"
 */
export function typedName(stored: string): string {
  const bare = stored.replace(/^(?:_xlfn\.)?(?:_xlws\.)?(?:_xlpm\.)?/i, "");
  if (!bare.toLowerCase().startsWith(CUSTOM_PREFIX)) return bare;
  const [namespace, ...name] = bare.slice(CUSTOM_PREFIX.length).split("_");
  return name.length > 0 ? `${namespace}.${name.join("_")}` : namespace!;
}

/** A piece of a formula with such names in it, for sentences; what stands in quotes stays. */
export const typedNames = (text: string): string =>
  applyEdits(
    text,
    tokenEdits(text, (token) => (token.kind === "call" || token.kind === "name" ? typedName(token.text) : undefined)),
  );
