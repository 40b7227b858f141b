import { parseFormula } from "../formula/parse";
import { relativeForm } from "../formula/relative-form";
import { typedName, typedNames } from "../formula/typed-name";
import { unquotedLength } from "../formula/unquoted-length";
import { children, type Node, type NodeOf } from "../formula/nodes";
import type { Formula } from "./engine";
import type { Library } from "./kinds";
import { CUSTOM_CAPITALS } from "./library";
import { plainReferences } from "./readings";
import { Unsupported } from "./values";

/** A formula read and looked through: its tree, or why it must keep its stored value. */
interface Looked {
  node?: Node;
  obstacle?: Unsupported;
  /** Calls a custom function. */
  custom: boolean;
  /** All that it reads, where that is told without the workbook. */
  references?: readonly NodeOf<"reference">[] | undefined;
}

/** The same in a cell, with how far that is from where the tree was written. */
export interface Prepared extends Looked {
  rowShift: number;
  columnShift: number;
}

interface Place {
  row: number;
  column: number;
}

type Unread = Pick<Formula, "text" | "obstacle" | "rowShift" | "columnShift">;

/** What a formula may call and name. */
export interface Known {
  library: Library;
  name(name: string, sheet: number): Node | undefined;
}

/** Trees of formulas that were read lately, by their texts: a book that is worked out anew holds mostly the same. */
const read = new Map<string, Node>();
const MOST_READ = 20_000;
const LONGEST_KEPT = 2_000;

/** Parts of all formulas that are read, each text once: so many take some hundreds of megabytes. */
const MOST_PARTS = 3_000_000;

function readOnce(text: string): Node {
  const known = read.get(text);
  if (known) return known;
  const node = parseFormula(text);
  if (text.length > LONGEST_KEPT) return node;
  if (read.size >= MOST_READ) read.clear();
  read.set(text, node);
  return node;
}

/** Reads formulas; shared ones, which have one text for thousands of cells, once, and those that are filled down as well. */
export class Preparation {
  private readonly looked = new Map<string, Looked>();
  private readonly byForm = new Map<string, Looked & Place>();
  private parts = 0;

  constructor(private readonly known: Known) {}

  prepare({ text, rowShift, columnShift, obstacle }: Unread, sheet: number, { row, column }: Place): Prepared {
    if (obstacle) return { obstacle: new Unsupported(obstacle), custom: false, rowShift, columnShift };
    const written = { row: row - rowShift, column: column - columnShift };
    const form = relativeForm(text, written.row, written.column);
    const key = `${sheet} ${form}`;
    const like = form === undefined ? undefined : this.byForm.get(key);
    if (like) {
      const { node, custom, references } = like;
      return { node, custom, references, rowShift: row - like.row, columnShift: column - like.column };
    }
    const looked = this.lookOnce(text, sheet);
    // Why a formula is not worked out is told in its own words.
    if (form !== undefined && !looked.obstacle) this.byForm.set(key, { ...looked, ...written });
    return { ...looked, rowShift, columnShift };
  }

  /** A formula that stands in no cell. */
  lookOnce(text: string, sheet: number): Looked {
    const key = `${sheet} ${text}`;
    let looked = this.looked.get(key);
    if (!looked) this.looked.set(key, (looked = this.look(text, sheet)));
    return looked;
  }

  private look(text: string, sheet: number): Looked {
    const found = { missing: new Set<string>(), custom: false, external: "" };
    try {
      if (this.parts > MOST_PARTS)
        throw new Unsupported(`comes after formulas of ${MOST_PARTS} parts; no more are read here`);
      const node = readOnce(text);
      this.search(node, sheet, found);
      if (found.external) throw new Unsupported(`refers to another workbook, ${found.external}`);
      if (found.missing.size > 0) throw unknown([...found.missing], this.known.library);
      const references = plainReferences(node, (name) => this.known.name(name, sheet) !== undefined);
      return { node, custom: found.custom, references };
    } catch (error) {
      if (error instanceof Unsupported) return { obstacle: error, custom: found.custom };
      return { obstacle: new Unsupported(unreadable(text, error)), custom: found.custom };
    }
  }

  /**
   * Goes through the tree and the defined names in it, without recursion: both may be deep. The names that LET and
   * LAMBDA bind may be called.
   */
  private search(whole: Node, sheet: number, found: { missing: Set<string>; custom: boolean; external: string }): void {
    const seen = new Set<string>();
    const open: { node: Node; bound: readonly string[] }[] = [{ node: whole, bound: [] }];
    const enter = (name: string): boolean => {
      const named = this.known.name(name, sheet);
      if (named && !seen.has(name.toLowerCase())) open.push({ node: named, bound: [] });
      seen.add(name.toLowerCase());
      return named !== undefined;
    };
    for (let next = open.pop(); next; next = open.pop()) {
      const { node } = next;
      this.parts++;
      let { bound } = next;
      if (node.kind === "external") found.external = node.text;
      if (node.kind === "call") {
        if (node.name.startsWith(CUSTOM_CAPITALS)) found.custom = true;
        bound = [...bound, ...boundNames(node)];
        const known = enter(node.name) || bound.includes(node.name.toLowerCase()) || this.calls(node.name);
        if (!known) found.missing.add(node.name);
        else if (!bound.includes(node.name.toLowerCase())) this.requireCount(node, sheet);
      }
      if (node.kind === "name" && !bound.includes(node.name.toLowerCase())) {
        if (/^_xl/i.test(node.name)) found.missing.add(node.name);
        enter(node.name);
      }
      for (const child of [...children(node)].reverse()) open.push({ node: child, bound });
    }
  }

  private requireCount({ name, args }: NodeOf<"call">, sheet: number): void {
    const count = args.length;
    if (this.known.name(name, sheet)) return;
    if (this.known.library.special(name)) return;
    const [least, most] = this.known.library.argumentCounts(name) ?? [0, Infinity];
    if (count < least || count > most) throw new Unsupported(`calls ${name} with ${count} arguments`, [name]);
  }

  private calls(name: string): boolean {
    return (this.known.library.special(name) ?? this.known.library.ordinary(name)) !== undefined;
  }
}

function unreadable(text: string, error: unknown): string {
  if (!(error instanceof SyntaxError)) return "cannot be read: it is too deeply nested";
  const length = unquotedLength(text);
  return length === undefined
    ? `cannot be read: ${typedNames(error.message)}`
    : `holds a length without quotes. Type ${length}, with the quotes`;
}

function boundNames(node: NodeOf<"call">): string[] {
  if (node.name !== "LET" && node.name !== "LAMBDA") return [];
  const names = node.name === "LET" ? node.args.filter((_, i) => i % 2 === 0) : node.args;
  return names.slice(0, -1).flatMap((arg) => (arg.kind === "name" ? [arg.name.toLowerCase()] : []));
}

function unknown(names: string[], library: Library): Unsupported {
  const unproven = names.filter((name) => library.isUnproven(name));
  const shown = names.filter((name) => !unproven.includes(name)).map(typedName);
  const reason =
    shown.length > 0 ? `${shown.join(", ")}, which is not known here` : `${unproven.join(", ")}, ${UNPROVEN}`;
  return new Unsupported(`calls ${reason}`, [...shown, ...unproven]);
}

const UNPROVEN = "which is not proven to come out here as in the spreadsheet program";
