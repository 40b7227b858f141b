/**
 * What to type where a length or a list of drawers stands in a formula as on paper, which no formula can hold;
 * undefined where none does.
 * @param formula one that cannot be read
 * @example unquotedLength("DRAWER.BOXWIDTH(24 1/16)") // '"24 1/16"'
 * @example unquotedLength("DRAWER.TAPE(1' 11 7/16\")") // '"1 ft 11 7/16 in"'
 */
export function unquotedLength(formula: string): string | undefined {
  if (formula.length > LONGEST_TYPED) return undefined;
  for (let at = 0; at < formula.length; at++) {
    const quoted = match(QUOTED, formula, at);
    if (quoted !== undefined) {
      at += quoted.length - 1;
      continue;
    }
    if (at > 0 && !BEFORE.test(formula[at - 1]!)) continue;
    const found = match(LIST, formula, at) ?? match(LENGTH, formula, at);
    if (found !== undefined && !/^[\d./\s]*$/.test(found.replace(/\d\s+\d/, "x"))) return `"${spelled(found)}"`;
  }
  return undefined;
}

/** No longer formula can be typed. */
const LONGEST_TYPED = 8_192;

/** A text, or a sheet's name, that begins where one can begin: not the mark behind a number. */
const QUOTED = /(?<![\d\s]\s*)"(?:[^"]|"")*"|(?<!\d)'(?:[^']|'')+'!/y;

/** What may stand before an argument. */
const BEFORE = /[(,;{=+*&<>\s-]/;

const NUMBER = String.raw`(?:\d+(?:[.]\d+)?|\.\d+)`;
const FRACTION = String.raw`(?:\d+\s*\/\s*\d+|[¼½¾⅐-⅞])`;
const INCHES = String.raw`(?:\d+[\s-]+${FRACTION}|\d*\s?[¼½¾⅐-⅞]|${FRACTION}|${NUMBER})`;
const MARK = String.raw`(?:\s*(?:"|″|''|inches\b|inch\b|in\b|mm\b|cm\b|m\b|feet\b|foot\b|ft\b|'|′))`;
const ONE = String.raw`(?:${NUMBER}\s*(?:'|′|ft\b|feet\b|foot\b)\s*)?${INCHES}${MARK}?`;
const ITEM = String.raw`(?:${NUMBER}\s*parts?\b|${ONE})`;
const END = String.raw`(?=\s*(?:[,;)}]|$))`;

const LENGTH = new RegExp(ONE + END, "y");
const LIST = new RegExp(String.raw`(?:${ITEM}\s*;\s*)+${ITEM}${END}|${NUMBER}\s*parts?\b${END}`, "y");

function match(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

/** Marks as words, for a quotation mark inside a text would have to be doubled. */
const spelled = (length: string): string =>
  length
    .replace(/\s*(?:"|″|'')/g, " in")
    .replace(/\s*['′]\s*/g, " ft ")
    .trim();
