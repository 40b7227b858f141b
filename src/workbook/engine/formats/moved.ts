import type { Node, NodeOf } from "../../formula/nodes";
import type { Evaluator } from "../kinds";
import {
  CellError,
  isMatrix,
  Reference,
  type Matrix,
  type Scalar,
  type Scope,
  type Shown,
  type Value,
} from "../values";
import type { Mover } from "./movers";
import type { Followed } from "./followed";

/**
 * What a function gives that hands cells on, with the formats that they bring. Where something has a format, the
 * function is called once more with a mark in place of each such cell; wherever a mark comes out, that cell went.
 * Errors with a message are marked too, for the libraries' functions make errors of their own out of them.
 */
export function moved(
  results: Followed,
  evaluator: Evaluator,
  { name, args }: NodeOf<"call">,
  scope: Scope,
  mover: Mover,
): Shown {
  const isMoved = new Set(args.filter((_, i) => mover.moves(i, args.length)));
  const found = new Map<Node, Shown>();
  const look = (node: Node, at: Scope): Value => {
    if (!isMoved.has(node)) return evaluator.evaluate(node, at);
    const shown = found.get(node) ?? results.shown(node, at);
    found.set(node, shown);
    return shown.value;
  };
  const value = withEvaluate(evaluator, look).call(name, args, scope);
  if (value instanceof Reference) return { value };
  const same = isMatrix(value) ? [...found.values()].find((shown) => shown.value === value) : undefined;
  if (same) return same;
  const marks = new Marks();
  const marked = new Map([...found].map(([node, shown]) => [node, marks.put(shown, results, evaluator, mover)]));
  if (marks.isEmpty) return { value };
  const again = withEvaluate(evaluator, (node, at) => (marked.has(node) ? marked.get(node) : look(node, at)));
  return marks.find(value, again.call(name, args, scope));
}

/** The same evaluator, which works nodes out in another way. */
export function withEvaluate(evaluator: Evaluator, evaluate: Evaluator["evaluate"]): Evaluator {
  return Object.assign(Object.create(evaluator) as Evaluator, { evaluate });
}

/** Numbers that nobody has, each standing for a cell. */
class Marks {
  private readonly cells: { value: Scalar; format?: string }[] = [];

  get isEmpty(): boolean {
    return this.cells.length === 0;
  }

  /** The value with marks in it; as it is where there is nothing to mark. */
  put(shown: Shown, results: Followed, evaluator: Evaluator, mover: Mover): Value {
    const formats = results.formats(shown);
    const contents = evaluator.contents(shown.value);
    // Tables are looked up in by thousands of formulas, and have nothing to mark for the most part.
    if (!formats && isMatrix(contents) && !holdsMessages(contents)) return shown.value;
    const before = this.cells.length;
    const marked = (isMatrix(contents) ? contents : [[contents]]).map((row, y) =>
      row.map((value, x) => {
        const format = typeof value === "number" ? formats?.[y]?.[x] : undefined;
        const isFault = value instanceof CellError && value.message !== undefined && mover.minds !== "errors";
        const isRead = (mover.reads === "column" && x === 0) || (mover.reads === "row" && y === 0);
        return (format === undefined && !isFault) || isRead ? value : this.mark({ value, format });
      }),
    );
    if (this.cells.length === before) return shown.value;
    return isMatrix(contents) ? marked : marked[0]![0]!;
  }

  /** What came out, with the formats of the cells whose marks came out in the same places. */
  find(value: Value, marked: Value): Shown {
    const before = asMatrix(value);
    const after = asMatrix(marked);
    if (!before || !after || before.length !== after.length || before[0]!.length !== after[0]!.length) return { value };
    const found = after.map((row) => row.map((item) => this.cell(item)));
    const rows = before.map((row, y) => row.map((item, x) => restored(item, found[y]![x])));
    const formats = found.map((row) => row.map((cell) => cell?.format));
    return { value: isMatrix(value) ? rows : rows[0]![0], formats };
  }

  private mark(cell: { value: Scalar; format?: string }): number {
    this.cells.push(cell);
    return -(FIRST + (this.cells.length - 1) * STEP);
  }

  private cell(item: Scalar): { value: Scalar; format?: string } | undefined {
    return typeof item === "number" && -item >= FIRST ? this.cells[(-item - FIRST) / STEP] : undefined;
  }
}

const messages = new WeakMap<Matrix, boolean>();

/** Whether an error with a message stands in a table. */
function holdsMessages(matrix: Matrix): boolean {
  let holds = messages.get(matrix);
  if (holds === undefined) {
    holds = matrix.some((row) => row.some((value) => value instanceof CellError && value.message !== undefined));
    messages.set(matrix, holds);
  }
  return holds;
}

const FIRST = 2 ** 1000;
const STEP = 2 ** 950;

/** An error that a library's function made out of one of ours is ours again. */
const restored = (value: Scalar, cell: { value: Scalar } | undefined): Scalar =>
  value instanceof CellError && cell?.value instanceof CellError ? cell.value : value;

function asMatrix(value: Value): Matrix | undefined {
  if (isMatrix(value)) return value;
  return typeof value === "object" && !(value instanceof CellError) ? undefined : [[(value ?? null) as Scalar]];
}
