import type { Node, NodeOf, Operator } from "../formula/nodes";
import { LONGEST_TEXT, spend } from "./budget";
import { toNumber } from "./coercion";
import type { Evaluator, Library, Ordinary } from "./kinds";
import { columnOf, intersect, joinReferences, overlap, rowOf, shiftedArea, spanReferences } from "./references";
import { applyOperator, broadcast, finite } from "./operators";
import type { CellSource } from "./source";
import { tableReference } from "./table-areas";
import { CellError, fail, isMatrix, Lambda, Reference, Unsupported } from "./values";
import type { Matrix, Scalar, Scope, Shown, Value } from "./values";

/** Working out one part of a formula takes several times as long as going through one cell of a range. */
const COST_OF_A_NODE = 4;

/** So deep may one formula lead, functions that call themselves included. The stack holds several times as much. */
const DEEPEST = 1_000;

/** Works out formulas, given the cells that they read and the functions that they call. */
export class FormulaEvaluator implements Evaluator {
  /** How deep it is in formulas at present, and where the one that is worked out began; one place for all that derive from it. */
  private readonly at = { depth: 0, base: 0 };

  constructor(
    readonly cells: CellSource,
    readonly library: Library,
  ) {}

  /** Works one formula out, which another may be waiting for. */
  run<A, T>(work: (on: A) => T, on: A): T {
    const { at } = this;
    const { depth, base } = at;
    at.base = depth;
    try {
      return work(on);
    } finally {
      at.depth = depth;
      at.base = base;
    }
  }

  evaluate(node: Node, scope: Scope, isResult = false): Value {
    spend(COST_OF_A_NODE);
    if (++this.at.depth - this.at.base > DEEPEST)
      throw new Unsupported(`leads more than ${DEEPEST} steps deep into itself`);
    const value = this.valueOf(node, scope, isResult);
    this.at.depth--;
    return value;
  }

  private valueOf(node: Node, scope: Scope, isResult: boolean): Value {
    switch (node.kind) {
      case "number":
      case "text":
      case "boolean":
        return node.value;
      case "error":
        return fail(node.code);
      case "missing":
        return undefined;
      case "array":
        return node.rows.map((row) => row.map((item) => this.scalar(item, scope)));
      case "reference":
        return this.reference(node, scope);
      case "name":
        return this.name(node, scope);
      case "table":
        return tableReference(this.cells, node, scope);
      case "external":
        throw new Unsupported(`refers to another workbook, ${node.text}`);
      case "call":
        return this.call(node.name, node.args, scope);
      case "invoke":
        return this.invoke(
          this.evaluate(node.callee, scope),
          node.args.map((arg) => this.evaluate(arg, scope)),
        );
      case "unary":
        return this.unary(node, scope);
      case "binary":
        return this.binary(node, scope, isResult);
      case "join":
        return this.join(node, scope);
    }
  }

  /** A sum of thousands of terms leans to the left, and is gone down without going deeper. */
  private binary(whole: NodeOf<"binary">, scope: Scope, isResult: boolean): Scalar | Matrix {
    let node = whole;
    const above = [];
    for (; node.left.kind === "binary"; node = node.left) above.push(node);
    let left = this.side(node.left, scope);
    let value = applyOperator(node.operator, left, this.side(node.right, scope));
    for (let upper = above.pop(); upper; upper = above.pop()) {
      left = value;
      value = applyOperator(upper.operator, left, this.side(upper.right, scope));
    }
    return isResult && isNearlyNothing(value, whole.operator, left) ? 0 : value;
  }

  /** What an operator works on; most often one cell of the same sheet, which needs no range made of it. */
  private side(node: Node, scope: Scope): Scalar | Matrix {
    if (node.kind !== "reference" || node.to !== node.from || node.sheet !== undefined || node.lastSheet !== undefined)
      return this.operand(node, scope);
    if (this.cells.isOpaque(scope.sheet)) return this.operand(node, scope);
    spend(COST_OF_A_NODE);
    return this.cells.read(scope.sheet, rowOf(node.from, scope), columnOf(node.from, scope));
  }

  result(node: Node, scope: Scope): Value {
    return this.evaluate(node, scope, true);
  }

  scalar(node: Node, scope: Scope): Scalar {
    return this.single(this.evaluate(node, scope), scope);
  }

  single(value: Value, scope: Scope): Scalar {
    if (value instanceof Reference) return intersect(this.cells, value, scope);
    if (isMatrix(value)) return value[0]![0]!;
    if (value instanceof Lambda) return fail("#CALC!");
    return value ?? null;
  }

  operand(node: Node, scope: Scope): Scalar | Matrix {
    const value = this.evaluate(node, scope);
    return scope.arrays ? this.contents(value) : isMatrix(value) ? value : this.single(value, scope);
  }

  contents(value: Value): Scalar | Matrix {
    if (value instanceof Reference) {
      const [area, ...others] = value.areas;
      if (!area || others.length > 0) return fail("#VALUE!");
      if (area.top === area.bottom && area.left === area.right) return this.cells.read(area.sheet, area.top, area.left);
      return this.cells.matrix(area);
    }
    return value instanceof Lambda ? fail("#CALC!") : (value ?? null);
  }

  matrix(value: Value): Matrix {
    const contents = this.contents(value);
    return isMatrix(contents) ? contents : [[contents]];
  }

  call(name: string, args: Node[], scope: Scope): Value {
    const callee = this.callee(name, scope);
    if (callee)
      return this.invoke(
        callee.value,
        args.map((arg) => this.evaluate(arg, scope)),
      );
    const special = this.library.special(name);
    if (special) return special(this, args, scope);
    const ordinary = this.library.ordinary(name);
    if (!ordinary) throw new Unsupported(`calls ${name}, which is not known here`, [name]);
    return this.ordinary(ordinary, this.given(ordinary, args, scope), scope);
  }

  callee(name: string, scope: Scope): { value: Value } | undefined {
    return this.variable(name, scope) ?? this.namedLambda(name, scope);
  }

  given(called: Ordinary, args: Node[], scope: Scope): Value[] {
    const given: Value[] = [];
    for (let i = 0; i < args.length; i++) given.push(this.argument(args[i]!, letter(called, i), scope));
    return given;
  }

  isLifted(called: Ordinary, args: Value[]): boolean {
    for (let i = 0; i < args.length; i++) if (letter(called, i) === "V" && isMatrix(args[i])) return true;
    return false;
  }

  ordinary(called: Ordinary, args: Value[], scope: Scope): Value {
    if (!this.isLifted(called, args)) return withinCell(called.call(args, this, scope));
    const lifted = args.flatMap((arg, i) => (letter(called, i) === "V" && isMatrix(arg) ? [i] : []));
    return broadcast(
      lifted.map((i) => args[i] as Matrix),
      (scalars) => {
        const once = [...args];
        lifted.forEach((i, at) => (once[i] = scalars[at]!));
        return this.matrix(withinCell(called.call(once, this, scope)))[0]![0]!;
      },
    );
  }

  invoke(callee: Value, args: Value[]): Value {
    if (callee instanceof CellError) return callee;
    if (!(callee instanceof Lambda) || args.length > callee.parameters.length) return fail("#VALUE!");
    let variables = callee.scope.variables;
    callee.parameters.forEach((name, i) => (variables = { name, value: args[i], outer: variables }));
    return this.evaluate(callee.body, { ...callee.scope, variables });
  }

  variable(name: string, scope: Scope): Shown | undefined {
    if (!scope.variables) return undefined;
    const wanted = name.toLowerCase();
    for (let at: Scope["variables"] = scope.variables; at; at = at.outer) if (at.name === wanted) return at;
    return undefined;
  }

  private argument(node: Node, kind: string, scope: Scope): Value {
    if (kind === "A") return this.evaluate(node, { ...scope, arrays: true });
    const value = this.evaluate(node, scope);
    if (kind === "R" || value === undefined) return value;
    return scope.arrays ? this.contents(value) : this.single(value, scope);
  }

  private reference(node: NodeOf<"reference">, scope: Scope): Value {
    const first = node.sheet === undefined ? scope.sheet : this.cells.sheetIndex(node.sheet);
    const last = node.lastSheet === undefined ? first : this.cells.sheetIndex(node.lastSheet);
    if (first === undefined || last === undefined) return fail("#REF!");
    // Macro sheets have cells as well. From sheet to sheet, those of other kinds are passed over.
    if (first === last && this.cells.isOpaque(first))
      throw new Unsupported(`refers to ${node.sheet}, which is no sheet of cells`);
    const area = shiftedArea(node.from, node.to, scope);
    if (first === last) return Reference.single(first, area);
    return new Reference(
      Array.from({ length: Math.abs(last - first) + 1 }, (_, i) => ({ sheet: Math.min(first, last) + i, ...area })),
    );
  }

  private name(node: NodeOf<"name">, scope: Scope): Value {
    const variable = node.sheet === undefined ? this.variable(node.name, scope) : undefined;
    if (variable) return variable.value;
    const named = this.named(node, scope);
    return named ? this.evaluate(named.body, named.scope) : unknownName(node.name);
  }

  named(node: NodeOf<"name">, scope: Scope): { body: Node; scope: Scope } | undefined {
    const sheet = (node.sheet === undefined ? undefined : this.cells.sheetIndex(node.sheet)) ?? scope.sheet;
    const body = this.cells.name(node.name, sheet);
    return body && { body, scope: this.nameScope(scope, sheet) };
  }

  /** Relative references in a defined name count from A1 to the formula's cell. */
  private nameScope(scope: Scope, sheet: number): Scope {
    const { row, column } = scope;
    const same = scope.sheet === sheet && scope.rowShift === row && scope.columnShift === column;
    // Names that lead to names need not copy it for each of them.
    if (same && scope.arrays && !scope.variables) return scope;
    return { ...scope, sheet, rowShift: row, columnShift: column, arrays: true, variables: undefined };
  }

  private namedLambda(name: string, scope: Scope): { value: Value } | undefined {
    const body = this.cells.name(name, scope.sheet);
    return body && { value: this.evaluate(body, this.nameScope(scope, scope.sheet)) };
  }

  private unary(node: NodeOf<"unary">, scope: Scope): Value {
    if (node.operator === "#") return this.spilled(this.evaluate(node.operand, scope));
    if (node.operator === "@") return this.scalar(node.operand, scope);
    if (node.operator === "+") return this.evaluate(node.operand, scope);
    return broadcast([this.operand(node.operand, scope)], ([value]) => {
      const number = toNumber(value!);
      if (number instanceof CellError) return number;
      return finite(node.operator === "-" ? -number : number / 100);
    });
  }

  spilled(value: Value): Value {
    const area = value instanceof Reference ? value.areas[0] : undefined;
    if (!area) return value instanceof CellError ? value : fail("#REF!");
    return this.cells.spill(area.sheet, area.top, area.left) ?? fail("#REF!");
  }

  private join(node: NodeOf<"join">, scope: Scope): Value {
    const left = this.evaluate(node.left, scope);
    const right = this.evaluate(node.right, scope);
    if (left instanceof CellError) return left;
    if (right instanceof CellError) return right;
    if (!(left instanceof Reference) || !(right instanceof Reference)) return fail("#VALUE!");
    if (node.operator === ",") return joinReferences(left, right);
    return node.operator === ":" ? spanReferences(left, right) : overlap(left, right);
  }
}

/** Whether a sum or difference has left nothing but a rounding error of what stood before it. */
function isNearlyNothing(value: Scalar | Matrix, operator: Operator, left: Scalar | Matrix): boolean {
  if (typeof value !== "number" || value === 0 || !(operator === "+" || operator === "-") || isMatrix(left))
    return false;
  const size = toNumber(left);
  return typeof size === "number" && Math.abs(value) < Math.abs(size) * 2 ** -49;
}

/** Mostly a word, or a unit, that its quotes were forgotten of. */
function unknownName(name: string): CellError {
  return new CellError("#NAME?", `The workbook has no name ${name}. A word in a formula wants quotes: "${name}".`);
}

/** No function gives a longer text than a cell holds, nor a number that is none. */
function withinCell(value: Value): Value {
  if (typeof value === "string" && value.length > LONGEST_TEXT) return fail("#VALUE!");
  return typeof value === "number" && !Number.isFinite(value) ? fail("#NUM!") : value;
}

function letter(called: Ordinary, position: number): string {
  return called.signature[Math.min(position, called.signature.length - 1)]!;
}
