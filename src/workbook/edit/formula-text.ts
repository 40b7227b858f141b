import { NEW_EXCEL_FUNCTIONS } from "@univerjs/engine-formula";
import { columnLetters, columnNumber } from "../address";
import { parseFormula } from "../formula/parse";
import { walk } from "../formula/nodes";
import { CUSTOM_PREFIX, typedName } from "../formula/typed-name";
import { isOwnFunction } from "./own-functions";

/**
 * A formula as a file stores it, from what a person types: `=DRAWER.BOXWIDTH(A2)` is stored as
 * `_xldudf_DRAWER_BOXWIDTH(A2)`, `A1#` as `_xlfn.ANCHORARRAY(A1)`, and newer functions and LET's names with prefixes.
 * @param typed with or without its equals sign
 * @param isOwn whether a function of that name is one of ours
 */
export function toStored(typed: string, isOwn: (name: string) => boolean = isOwnFunction): string {
  const text = typed.startsWith("=") ? typed.slice(1) : typed;
  const bound = boundNames(text);
  return eachToken(text, (token, kind) => {
    if (kind === "spill") return `_xlfn.ANCHORARRAY(${token.slice(0, -1)})`;
    if (kind === "call") return isOwn(token) ? ownName(token) : storedName(token, bound);
    if (kind === "name" && bound.has(token.toLowerCase())) return `_xlpm.${token}`;
    return token;
  });
}

/** A stored formula as a person reads it, with its equals sign. */
export function toTyped(stored: string): string {
  const text = eachToken(stored, (token, kind) => {
    if (kind !== "call" && kind !== "name") return token;
    return typedName(token);
  });
  return `=${text.replace(/\bANCHORARRAY\(([^()]+)\)/g, "$1#")}`;
}

/** The formula as it reads in a cell so many rows down and columns to the right; what is absolute stays. */
export function shifted(text: string, rows: number, columns: number): string {
  if (rows === 0 && columns === 0) return text;
  return eachToken(text, (token, kind) => {
    if (kind !== "cell" && kind !== "spill") return token;
    return token.replace(/(\$?)([A-Za-z]{1,3})(\$?)(\d+)(#?)$/, (_, fixed, letters, fixedRow, row, mark) => {
      const column = fixed ? letters : columnLetters(columnNumber(letters) + columns);
      return `${fixed}${column}${fixedRow}${fixedRow ? row : Number(row) + rows}${mark}`;
    });
  });
}

type Kind = "text" | "spill" | "cell" | "call" | "name" | "other";

const SHEET = String.raw`(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?`;
const CELL = String.raw`\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}(?![\p{L}\p{N}_.(!])`;

/** Texts, cells with `#`, cells, names before a bracket, other names; what lies between is passed over as it is. */
const TOKENS = new RegExp(
  [
    // What is not closed goes on to the end: to try at each mark anew would take a long text's square.
    `("(?:[^"]|"")*(?:"|$))`,
    `(${SHEET}${CELL}#)`,
    `(${SHEET}${CELL})`,
    String.raw`([\p{L}_\\][\p{L}\p{N}_.\\]*(?=\())`,
    String.raw`('(?:[^']|'')*(?:'!?|$)|[\p{L}_\\][\p{L}\p{N}_.\\]*!?|\d[\p{L}\p{N}.]*|#[A-Z/0!?]+)`,
  ].join("|"),
  "gu",
);

const KINDS: Kind[] = ["text", "spill", "cell", "call", "name"];

export function eachToken(text: string, change: (token: string, kind: Kind) => string): string {
  return text.replace(TOKENS, (token, ...groups: (string | undefined)[]) => {
    const kind = KINDS[groups.slice(0, KINDS.length).findIndex((group) => group !== undefined)] ?? "other";
    return change(token, kind === "name" && /[!#]/.test(token) ? "other" : kind);
  });
}

/** `DRAWER.BOXWIDTH` as a file has it. */
export const ownName = (name: string): string => CUSTOM_PREFIX + name.toUpperCase().replaceAll(".", "_");

function storedName(name: string, bound: ReadonlySet<string>): string {
  if (bound.has(name.toLowerCase())) return `_xlpm.${name}`;
  const upper = name.toUpperCase();
  if (upper === "FILTER" || upper === "SORT") return `_xlfn._xlws.${upper}`;
  return NEW_EXCEL_FUNCTIONS.has(upper) || ALSO_NEW.has(upper) ? `_xlfn.${upper}` : name;
}

/** New functions that the library's list does not know. */
const ALSO_NEW = new Set(
  "AGGREGATE CONCAT FILTERXML FORECAST.ETS ISOMITTED LAMBDA LET REGEXEXTRACT REGEXREPLACE REGEXTEST TRIMRANGE".split(
    " ",
  ),
);

/** The names that LET and LAMBDA bind somewhere in the formula. */
function boundNames(text: string): Set<string> {
  const names = new Set<string>();
  try {
    walk(parseFormula(text), (node) => {
      if (node.kind !== "call" || (node.name !== "LET" && node.name !== "LAMBDA")) return;
      const places = node.name === "LET" ? node.args.filter((_, i) => i % 2 === 0) : node.args;
      for (const place of places.slice(0, -1)) if (place.kind === "name") names.add(place.name.toLowerCase());
    });
  } catch {
    // What cannot be read is stored as it was typed, and the engine says why it cannot be read.
  }
  return names;
}
