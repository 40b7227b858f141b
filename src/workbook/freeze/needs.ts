import { CUSTOM_PREFIX } from "../formula/typed-name";
import { nodesOf, type Node } from "../formula/nodes";
import { parseFormula } from "../formula/parse";

/** What a formula needs besides native functions and cells of its own sheet. */
export interface Needs {
  /** A function of an add-in. */
  addIn: boolean;
  /** Another sheet, another workbook, or the sheets as they are. */
  elsewhere: boolean;
  /** That a cell holds a formula at all, or a spilled range that is found only when it is worked out. */
  formulas: boolean;
}

/** What a formula may name; sheets by their place. */
export interface Named {
  sheets: readonly { name: string }[];
  /** With its sheet where only that knows it. */
  names: readonly { name: string; text: string; sheet?: number | undefined }[];
  tables: readonly { name: string; sheet: number }[];
}

/** Reads what formulas need, through the defined names in them. */
export class NeedsReader {
  private readonly names: Map<string, string>;
  private readonly tables: Map<string, number>;
  private readonly known = new Map<string, Needs>();

  /** @param addIn what the names of an add-in's functions begin with: in a file, or as they are typed */
  constructor(
    private readonly book: Named,
    private readonly addIn = CUSTOM_PREFIX,
  ) {
    this.names = new Map(book.names.map(({ name, text, sheet }) => [keyOf(name, sheet), text]));
    this.tables = new Map(book.tables.map(({ name, sheet }) => [name.toLowerCase(), sheet]));
  }

  of(formula: string, sheet: number): Needs {
    const key = `${sheet} ${formula}`;
    const known = this.known.get(key);
    if (known) return known;
    const needs: Needs = { addIn: false, elsewhere: false, formulas: false };
    const seen = new Set<string>();
    const open = [formula];
    for (let text = open.pop(); text !== undefined; text = open.pop()) {
      for (const node of read(text, this.addIn)) {
        this.look(node, sheet, needs);
        if (node.kind !== "name" && node.kind !== "call") continue;
        const named = this.names.get(keyOf(node.name, sheet)) ?? this.names.get(keyOf(node.name, undefined));
        if (named === undefined || seen.has(node.name)) continue;
        seen.add(node.name);
        open.push(named);
      }
    }
    this.known.set(key, needs);
    return needs;
  }

  private look(node: Node, sheet: number, needs: Needs): void {
    if (node.kind === "external") needs.elsewhere = true;
    if (node.kind === "table") needs.elsewhere ||= (this.tables.get(node.table.toLowerCase()) ?? sheet) !== sheet;
    if (node.kind === "reference" || node.kind === "name")
      needs.elsewhere ||= node.sheet !== undefined && !this.isName(sheet, node.sheet);
    if (node.kind === "reference") needs.elsewhere ||= node.lastSheet !== undefined;
    if (node.kind === "unary" && node.operator === "#") needs.formulas ||= node.operand.kind !== "reference";
    if (node.kind !== "call") return;
    needs.addIn ||= node.name.toLowerCase().startsWith(this.addIn.toLowerCase());
    needs.elsewhere ||= ABOUT_SHEETS.has(node.name);
    needs.formulas ||= ABOUT_FORMULAS.has(node.name);
    needs.formulas ||= node.name === "ANCHORARRAY" && node.args[0]?.kind !== "reference";
  }

  private isName(sheet: number, name: string): boolean {
    return this.book.sheets[sheet]!.name.toLowerCase() === name.toLowerCase();
  }
}

/** Functions that may reach any sheet by its name, or count them. */
const ABOUT_SHEETS = new Set("INDIRECT SHEET SHEETS CELL INFO".split(" "));
const ABOUT_FORMULAS = new Set("FORMULATEXT ISFORMULA".split(" "));

const keyOf = (name: string, sheet: number | undefined): string => `${sheet ?? ""}!${name.toLowerCase()}`;

/** What cannot be read, nobody can tell of; it keeps its value, and its text decides whether it is an add-in's. */
function read(text: string, prefix: string): Node[] {
  try {
    return nodesOf(parseFormula(text));
  } catch {
    const addIn = text.toLowerCase().includes(prefix.toLowerCase());
    const call: Node = { kind: "call", name: addIn ? prefix : "", args: [], start: 0, end: 0 };
    return [call, { kind: "external", text, start: 0, end: 0 }];
  }
}
