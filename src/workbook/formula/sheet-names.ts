/** Sheets named in a formula, as it is stored or typed; with `last`, all from one sheet to another. */
interface SheetPrefix {
  first: string;
  last?: string;
}

/**
 * The formula after a sheet has been given another name. Texts, and other workbooks' sheets, stay.
 * @param stored the name as it stands in formulas
 */
export function withSheetRenamed(formula: string, stored: string, name: string): string {
  const renamed = (sheet: string) => (sameName(sheet, stored) ? name : sheet);
  return eachName(formula, {
    prefix({ first, last }) {
      if (!sameName(first, stored) && (last === undefined || !sameName(last, stored))) return undefined;
      return prefixText({ first: renamed(first), ...(last === undefined ? {} : { last: renamed(last) }) });
    },
  });
}

/**
 * The formula after a sheet has gone, as the spreadsheet program writes it: `#REF!A1` for its cells. Where it was the
 * first or last of several, the next one among them takes its place.
 * @param order all sheets' names, the one that goes among them
 * @param tables the names of its tables
 */
export function withoutSheet(
  formula: string,
  gone: string,
  order: readonly string[],
  tables: readonly string[] = [],
): string {
  const position = (name: string) => order.findIndex((sheet) => sameName(sheet, name));
  return eachName(formula, {
    prefix({ first, last }, rest) {
      const isFirst = sameName(first, gone);
      const isLast = last !== undefined && sameName(last, gone);
      if (!isFirst && !isLast) return undefined;
      const lost = rest.startsWith("#REF!") ? "" : "#REF!";
      if (last === undefined || (isFirst && isLast)) return lost;
      const [from, to] = [position(first), position(last)];
      if (from < 0 || to < 0) return lost;
      const step = Math.sign(to - from);
      const ends = isFirst ? [order[from + step]!, last] : [first, order[to - step]!];
      return prefixText(sameName(ends[0]!, ends[1]!) ? { first: ends[0]! } : { first: ends[0]!, last: ends[1]! });
    },
    table: (name) => (tables.some((table) => sameName(table, name)) ? "#REF!" : undefined),
  });
}

/** Whether the formula names the sheet. */
export function namesSheet(formula: string, name: string): boolean {
  let found = false;
  eachName(formula, {
    prefix({ first, last }) {
      found ||= sameName(first, name) || (last !== undefined && sameName(last, name));
      return undefined;
    },
  });
  return found;
}

/** `Bench!`, `'What if'!`, `'Jan 1:Mar'!`. */
function prefixText({ first, last }: SheetPrefix): string {
  const name = last === undefined ? first : `${first}:${last}`;
  const plain = isPlain(first) && (last === undefined || isPlain(last));
  return plain ? `${name}!` : `'${name.replaceAll("'", "''")}'!`;
}

export function sameName(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}

/** Whether a name may stand without quotes: a word, and none that reads as a cell or a truth. */
function isPlain(name: string): boolean {
  return /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) && !/^(?:[a-z]{1,3}\d+|r\d*(?:c\d*)?|c\d*|true|false)$/i.test(name);
}

interface Changes {
  /** What stands in place of a sheet's name and its mark; `rest` is what follows. */
  prefix(sheets: SheetPrefix, rest: string): string | undefined;
  /** What stands in place of a table and the columns that are asked of it. */
  table?(name: string): string | undefined;
}

const NAME = String.raw`[\p{L}\p{N}_.\\?]`;
const BRACKETS = String.raw`\[(?:[^\[\]']|'.|\[(?:[^\[\]']|'.)*\])*\]`;

/** Texts and errors, quoted sheets, other workbooks' sheets, cells, sheets, names with and without columns. */
const TOKENS = new RegExp(
  [
    String.raw`"(?:[^"]|"")*"|#[A-Z][A-Z0-9_/]*[!?]?`,
    String.raw`'(?<quoted>(?:[^']|'')+)'!`,
    String.raw`\[\d+\](?:${NAME}|:)*!`,
    String.raw`\$?[A-Za-z]{1,3}\$?\d{1,7}(?!${NAME}|[(!\[])`,
    String.raw`(?<plain>${NAME}+(?::${NAME}+)?)!`,
    String.raw`(?<table>[\p{L}_\\]${NAME}*)(?<columns>${BRACKETS})?(?!\()`,
    String.raw`${NAME}+`,
    BRACKETS,
  ].join("|"),
  "gsu",
);

function eachName(formula: string, changes: Changes): string {
  return formula.replace(TOKENS, (token: string, ...rest: unknown[]) => {
    const { quoted, plain, table } = rest.at(-1) as Record<string, string | undefined>;
    const offset = rest.at(-3) as number;
    const name = quoted?.replaceAll("''", "'") ?? plain;
    if (name !== undefined) {
      if (/[[\]]/.test(name)) return token;
      const [first, last] = name.split(":") as [string, string?];
      return (
        changes.prefix({ first, ...(last === undefined ? {} : { last }) }, formula.slice(offset + token.length)) ??
        token
      );
    }
    return (table !== undefined && changes.table?.(table)) || token;
  });
}
