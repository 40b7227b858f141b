import type { Node, NodeOf } from "../../formula/nodes";
import type { Evaluator } from "../kinds";
import { parameter } from "../functions/lambdas";
import { intersected } from "../references";
import { Lambda, Reference, type Formats, type Scalar, type Scope, type Shown, type Value } from "../values";
import { callWithEach, EACH } from "./each";
import type { Followed } from "./followed";
import { MOVERS } from "./movers";
import { moved } from "./moved";
import { UNIQUE_OR_SORTED } from "./rows";

/**
 * Formulas' results with the number formats that they bring. A format belongs to the value that a function of ours
 * gave, and goes wherever that value is handed on as it is: through references, branches, LET and LAMBDA, and
 * functions that stack, pick, sort or look up cells. What is worked out anew (a sum, a product, a rounded length) is
 * another value and has none, for nobody can say that a product of two lengths is a length. A cell's own number format
 * comes before all of this, and is none of the engine's.
 *
 * It follows a formula's last steps alone; whatever they read is worked out by the evaluator, without formats.
 */
export class ShownResults implements Followed {
  constructor(private readonly evaluator: Evaluator) {}

  /** A formula's result. */
  result(node: Node, scope: Scope): Shown {
    return node.kind === "binary" ? { value: this.evaluator.result(node, scope) } : this.shown(node, scope);
  }

  formats({ value, formats }: Shown): Formats | undefined {
    if (formats || !(value instanceof Reference)) return formats;
    const [area, ...others] = value.areas;
    return area && others.length === 0 ? this.evaluator.cells.formats(area) : undefined;
  }

  /** The one value of an older formula, and its format. */
  single(shown: Shown, scope: Scope): { value: Scalar; format?: string } {
    const value = this.evaluator.single(shown.value, scope);
    const cell = shown.value instanceof Reference ? intersected(shown.value, scope) : undefined;
    const formats = cell ? this.evaluator.cells.formats(cell) : this.formats(shown);
    return { value, format: formats?.[0]?.[0] };
  }

  shown(node: Node, scope: Scope): Shown {
    switch (node.kind) {
      case "name":
        return this.name(node, scope);
      case "call":
        return this.call(node, scope);
      case "invoke":
        return this.invoke(
          this.evaluator.evaluate(node.callee, scope),
          node.args.map((arg) => this.shown(arg, scope)),
        );
      case "unary":
        if (node.operator === "+") return this.shown(node.operand, scope);
        if (node.operator !== "@") break;
        return lone(this.single(this.shown(node.operand, scope), scope));
    }
    return { value: this.evaluator.evaluate(node, scope) };
  }

  /** Calls a LAMBDA with arguments that may bring formats. */
  invoke(callee: Value, args: Shown[]): Shown {
    if (!(callee instanceof Lambda) || args.length > callee.parameters.length) {
      return {
        value: this.evaluator.invoke(
          callee,
          args.map(({ value }) => value),
        ),
      };
    }
    let variables = callee.scope.variables;
    callee.parameters.forEach((name, i) => (variables = { value: undefined, ...args[i], name, outer: variables }));
    return this.shown(callee.body, { ...callee.scope, variables });
  }

  private name(node: NodeOf<"name">, scope: Scope): Shown {
    const variable = node.sheet === undefined ? this.evaluator.variable(node.name, scope) : undefined;
    if (variable) return variable;
    const named = this.evaluator.named(node, scope);
    return named ? this.shown(named.body, named.scope) : { value: this.evaluator.evaluate(node, scope) };
  }

  private call(node: NodeOf<"call">, scope: Scope): Shown {
    const { name, args } = node;
    const callee = this.evaluator.callee(name, scope);
    if (callee)
      return this.invoke(
        callee.value,
        args.map((arg) => this.shown(arg, scope)),
      );
    if (name === "LET") return this.letIn(args, scope);
    if (EACH.has(name)) return callWithEach(this, this.evaluator, node, scope);
    if (UNIQUE_OR_SORTED[name]) return UNIQUE_OR_SORTED[name](this, this.evaluator, node, scope);
    if (MOVERS[name]) return moved(this, this.evaluator, node, scope, MOVERS[name]);
    const ordinary = this.evaluator.library.ordinary(name);
    if (ordinary?.shown && !this.evaluator.library.special(name)) {
      const given = this.evaluator.given(ordinary, args, scope);
      // Gone through item by item, its results are new tables.
      if (!this.evaluator.isLifted(ordinary, given)) return ordinary.shown(given, this.evaluator);
      return { value: this.evaluator.ordinary(ordinary, given, scope) };
    }
    return { value: this.evaluator.call(name, args, scope) };
  }

  private letIn(args: Node[], scope: Scope): Shown {
    let inner = scope;
    for (let i = 0; i + 1 < args.length; i += 2) {
      const shown = this.shown(args[i + 1]!, inner);
      inner = { ...inner, variables: { ...shown, name: parameter(args[i]!), outer: inner.variables } };
    }
    return this.shown(args.at(-1)!, inner);
  }
}

const lone = ({ value, format }: { value: Scalar; format?: string }): Shown => ({
  value,
  ...(format === undefined ? {} : { formats: [[format]] }),
});
