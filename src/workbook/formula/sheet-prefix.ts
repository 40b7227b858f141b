/** Sheets named in a formula, as it is stored or typed; with `last`, all from one sheet to another. */
export interface SheetPrefix {
  first: string;
  last?: string;
}

/** The sheets that a token leads to, as `'Jan 1:Mar'!`; undefined where they are another workbook's. */
export function sheetsOf(token: string): SheetPrefix | undefined {
  const name = token.startsWith("'") ? token.slice(1, -2).replace(/''/g, "'") : token.slice(0, -1);
  if (/[[\]]/.test(name)) return undefined;
  const [first, last] = name.split(":") as [string, string?];
  return last === undefined ? { first } : { first, last };
}

/** `Bench!`, `'What if'!`, `'Jan 1:Mar'!`. */
export function prefixText({ first, last }: SheetPrefix): string {
  const name = last === undefined ? first : `${first}:${last}`;
  const plain = isPlain(first) && (last === undefined || isPlain(last));
  return plain ? `${name}!` : `'${name.replace(/'/g, "''")}'!`;
}

/** Whether a name may stand without quotes: a word, and none that reads as a cell or a truth. */
function isPlain(name: string): boolean {
  return /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) && !/^(?:[a-z]{1,3}\d+|r\d*(?:c\d*)?|c\d*|true|false)$/i.test(name);
}
