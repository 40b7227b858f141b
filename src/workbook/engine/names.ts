import type { Node } from "../formula/nodes";
import { parseFormula } from "../formula/parse";
import { excerpt } from "../formula/cursor";
import type { Book, Table } from "./engine";

/** What a workbook calls by name: sheets, defined names, tables. Case does not count. */
export class Names {
  private readonly sheets: Map<string, number>;
  private readonly names = new Map<string, Node>();
  private readonly tables: Map<string, Table>;
  /** What was found for each sheet: thousands of formulas ask for the same. */
  private readonly found: Map<string, Node | undefined>[];

  constructor(book: Book) {
    this.sheets = new Map(book.sheets.map((sheet, i) => [sheet.name.toLowerCase(), i]));
    this.tables = new Map(book.tables.map((table) => [table.name.toLowerCase(), table]));
    for (const { name, text, sheet } of book.names) this.names.set(key(name, sheet), read(text));
    this.found = book.sheets.map(() => new Map());
  }

  sheet(name: string): number | undefined {
    return this.sheets.get(name.toLowerCase());
  }

  /** The sheet's own name comes before the workbook's. */
  name(name: string, sheet: number): Node | undefined {
    if (this.names.size === 0) return undefined;
    const found = this.found[sheet];
    if (found?.has(name)) return found.get(name);
    const node = this.names.get(key(name, sheet)) ?? this.names.get(key(name, undefined));
    found?.set(name, node);
    return node;
  }

  table(name: string): Table | undefined {
    return this.tables.get(name.toLowerCase());
  }
}

function key(name: string, sheet: number | undefined): string {
  return `${sheet ?? ""}!${name.toLowerCase()}`;
}

/** A name that cannot be read makes the formulas that use it keep their values, as another workbook's would. */
function read(text: string): Node {
  try {
    return parseFormula(text);
  } catch {
    return { kind: "external", text: excerpt(text), start: 0, end: text.length };
  }
}
