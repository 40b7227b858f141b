/** A range as a formula names it. */
export interface RangeName {
  /** undefined where it is the formula's own sheet. */
  sheet?: string;
  /** As `A5:F9`, without dollar signs. */
  address: string;
  /** It is all that has spilled from the cell. */
  isSpilled: boolean;
}

/** A formula that is one call of a function of ours, taken apart. */
export interface FormulaCall {
  /** In capitals, without the namespace. */
  name: string;
  args: readonly CallArgument[];
}

/** What stands in a call: a value, a range of cells, or something that only the spreadsheet can work out. */
export type CallArgument = { value: unknown } | { range: RangeName } | { other: string };

/** @returns undefined where the formula is anything but one call */
export function formulaCall(formula: string): FormulaCall | undefined {
  const found = /^=\s*@?DRAWER\.([A-Z0-9]+)\s*\((.*)\)\s*$/is.exec(formula);
  const texts = found ? splitAtCommas(found[2]!) : undefined;
  return texts && { name: found![1]!.toUpperCase(), args: texts.map(argumentOf) };
}

/** @returns undefined where the brackets do not match, so that what was taken for one call is none */
function splitAtCommas(text: string): string[] | undefined {
  const parts = [""];
  let depth = 0;
  for (const [piece] of text.matchAll(PIECE)) {
    if (/[({[]/.test(piece[0]!)) depth++;
    if (/[)}\]]/.test(piece[0]!)) depth--;
    if (depth < 0) return undefined;
    if (piece === "," && depth === 0) parts.push("");
    else parts[parts.length - 1] += piece;
  }
  return depth === 0 ? parts.map((part) => part.trim()) : undefined;
}

/** Texts and sheets' names in one piece, in which nothing is a bracket; all else sign by sign. */
const PIECE = /"(?:[^"]|"")*"|'(?:[^']|'')*'|[^]/g;

function argumentOf(text: string): CallArgument {
  if (text === "") return { value: undefined };
  const quoted = /^"((?:[^"]|"")*)"$/.exec(text);
  if (quoted) return { value: quoted[1]!.replace(/""/g, '"') };
  if (/^[-+]?(\d+\.?\d*|\.\d+)(E[-+]?\d+)?$/i.test(text)) return { value: Number(text) };
  if (/^(TRUE|FALSE)$/i.test(text)) return { value: text.toUpperCase() === "TRUE" };
  const range = RANGE.exec(text);
  if (!range) return { other: text };
  const [, quotedSheet, sheet, address, isSpilled] = range;
  const name = quotedSheet?.replace(/''/g, "'") ?? sheet;
  return {
    range: {
      ...(name !== undefined && { sheet: name }),
      address: address!.replace(/\$/g, "").toUpperCase(),
      isSpilled: isSpilled === "#",
    },
  };
}

const RANGE =
  /^(?:'((?:[^']|'')+)'!|([\p{L}_][\p{L}\p{N}_.]*)!)?(\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?)(#?)$/iu;
