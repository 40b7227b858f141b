/** A value as a formula writes it: a number, a "text", TRUE, or an array {…,…;…,…}. */
export type Literal = number | string | boolean | undefined | Literal[][];

/** The arguments of one call, `=DRAWER.NAME(…)`, all of them literals. */
export function callOf(formula: string): { name: string; args: Literal[] } {
  const [, name, list] = /^=DRAWER\.([A-Z]+)\((.*)\)$/s.exec(formula) ?? [];
  if (name === undefined || list === undefined) throw new Error(`${formula} is not one call of ours.`);
  return { name, args: list.trim() === "" ? [] : split(list, ",").map(literal) };
}

/** Stands in a documented result for what follows there. */
const REST = "…";

/** Whether a value is what a documented result says; rows and tables may end in `…`. */
export function matches(value: unknown, documented: Literal): boolean {
  if (!Array.isArray(documented)) return value === documented;
  const rows = value as Literal[][];
  return prefix(documented, rows, (expected, row) => prefix(expected, row, (a, b) => a === b));
}

function prefix<T>(expected: T[], found: T[], same: (a: T, b: T) => boolean): boolean {
  const open = isRest(expected[expected.length - 1]);
  const shown = open ? expected.slice(0, -1) : expected;
  return (
    (open ? found.length > shown.length : found.length === shown.length) && shown.every((a, i) => same(a, found[i]!))
  );
}

const isRest = (last: unknown): boolean =>
  last === REST || (Array.isArray(last) && last.length === 1 && last[0] === REST);

/** Reads one literal; nothing at all is an omitted argument. */
export function literal(text: string): Literal {
  const trimmed = text.trim();
  if (trimmed === "") return undefined;
  if (trimmed === REST) return REST;
  if (/^-?\d*\.?\d+$/.test(trimmed)) return Number(trimmed);
  if (/^(TRUE|FALSE)$/.test(trimmed)) return trimmed === "TRUE";
  if (/^".*"$/s.test(trimmed)) return trimmed.slice(1, -1).replaceAll('""', '"');
  if (/^\{.*\}$/s.test(trimmed)) return split(trimmed.slice(1, -1), ";").map((row) => split(row, ",").map(literal));
  throw new Error(`${trimmed} is no literal of a formula.`);
}

/** Splits at a separator that stands outside of texts and arrays. */
function split(text: string, separator: string): string[] {
  const parts = [""];
  let quoted = false;
  let depth = 0;
  for (const char of text) {
    if (char === '"') quoted = !quoted;
    if (!quoted) depth += char === "{" ? 1 : char === "}" ? -1 : 0;
    if (char === separator && !quoted && depth === 0) parts.push("");
    else parts[parts.length - 1] += char;
  }
  return parts;
}
