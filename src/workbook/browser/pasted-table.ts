/** What the clipboard holds, as the browser hands it over. */
export interface Pasted {
  html?: string;
  text?: string;
}

/**
 * The pasted texts, row by row, as somebody would have typed them one by one. A table of a page or a program comes from
 * its HTML, for that keeps cells apart where the plain text does not; all else from the plain text.
 * @param parse makes a document of HTML without running or loading anything in it
 */
export function pastedTable({ html, text }: Pasted, parse: (html: string) => Document = inert): string[][] {
  const tables = html ? fromTables(parse(html), text ?? "") : undefined;
  const rows = tables ?? fromText(text ?? (html ? wordsOf(parse(html).body) : ""));
  const width = Math.max(0, ...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, x) => row[x] ?? ""));
}

const inert = (html: string): Document => new DOMParser().parseFromString(html, "text/html");

/** Undefined where the page's part holds more than tables, and has a plain text which keeps that too. */
function fromTables(page: Document, text: string): string[][] | undefined {
  const tables = [...page.querySelectorAll("table")].filter((table) => !table.parentElement?.closest("table"));
  if (tables.length === 0) return undefined;
  const rest = page.body.cloneNode(true) as HTMLElement;
  for (const gone of rest.querySelectorAll("table, style, script, title, meta")) gone.remove();
  if (text !== "" && (rest.textContent ?? "").trim() !== "") return undefined;
  return tables.flatMap(rowsOf);
}

/** A cell that reaches over several fills the first of them. */
function rowsOf(table: HTMLTableElement): string[][] {
  const grid: string[][] = [];
  const rows = [...table.rows].filter((row) => row.closest("table") === table);
  rows.forEach((row, y) => {
    const line = (grid[y] ??= []);
    let x = 0;
    for (const cell of [...row.cells].filter((cell) => cell.closest("tr") === row)) {
      while (line[x] !== undefined) x++;
      const [down, across] = [Math.max(1, cell.rowSpan), Math.max(1, cell.colSpan)];
      for (let j = 0; j < Math.min(down, rows.length - y); j++)
        for (let i = 0; i < across; i++) (grid[y + j] ??= [])[x + i] = i + j === 0 ? wordsOf(cell) : "";
    }
  });
  return grid.map((line) => Array.from(line, (text) => text ?? ""));
}

/** The words of an element as they are read: breaks are lines, and the halves of a raised fraction belong together. */
function wordsOf(element: Element): string {
  const copy = element.cloneNode(true) as Element;
  for (const gone of copy.querySelectorAll("style, script, title")) gone.remove();
  for (const upper of copy.querySelectorAll("sup")) {
    const after = upper.nextSibling?.textContent ?? "";
    if (/^\s*[/\u2044]/.test(after)) upper.before(" ");
  }
  const spaced = (text: string): string => text.replaceAll(/[^\S\u00a0]+/g, " ");
  const walk = (node: Node): string => {
    if (node.nodeType === node.TEXT_NODE) return spaced(node.textContent ?? "");
    const inside = [...node.childNodes].map(walk).join("");
    if (node.nodeName === "BR") return "\n";
    return /^(P|DIV|LI|TR)$/.test(node.nodeName) ? `\n${inside}\n` : inside;
  };
  const lines = walk(copy).replaceAll("\u00a0", " ").split("\n");
  return lines
    .map((line) => line.trim())
    .filter((line) => line !== "")
    .join("\n");
}

function fromText(text: string): string[][] {
  const lines = text.replaceAll(/\r\n?/g, "\n").replace(/\n$/, "");
  if (lines === "") return [];
  if (!/[\t\n]/.test(lines)) return [[lines]];
  return commaSeparated(lines) ?? separated(lines, "\t", (inside) => /[\t\n]|""/.test(inside));
}

/**
 * Rows and fields, some of them in quotation marks. An inch is written with such a mark too, so a field is taken for a
 * quoted one only where the marks are at its ends and `isQuoted` says that what is inside needs them.
 */
function separated(text: string, separator: string, isQuoted: (inside: string) => boolean): string[][] {
  const rows: string[][] = [[]];
  const quoted = new RegExp(`"((?:[^"]|"")*)"(?=${separator}|\n|$)`, "y");
  for (let at = 0; ;) {
    quoted.lastIndex = at;
    const inside = quoted.exec(text)?.[1];
    const isOne = inside !== undefined && isQuoted(inside);
    let end = at + (isOne ? inside.length + 2 : 0);
    while (end < text.length && text[end] !== separator && text[end] !== "\n") end++;
    rows.at(-1)!.push(isOne ? inside.replaceAll('""', '"') : text.slice(at, end));
    if (end >= text.length) return rows;
    if (text[end] === "\n") rows.push([]);
    at = end + 1;
  }
}

/**
 * The rows of a text whose fields are parted by commas: a line of headings, lines with as many fields, and numbers in
 * them. Where any of that is missing, a comma may be a decimal one or belong to a sentence, and parts nothing.
 */
function commaSeparated(text: string): string[][] | undefined {
  if (text.includes("\t")) return undefined;
  const [head, ...rows] = separated(text, ",", () => true);
  if (head === undefined || head.length < 2 || rows.length === 0) return undefined;
  const isTable =
    head.every((field) => /^\s*\p{L}/u.test(field)) &&
    rows.every((row) => row.length === head.length) &&
    rows.some((row) => row.some((field) => /^\s*[-+.$]?\d/.test(field)));
  return isTable ? [head, ...rows] : undefined;
}
