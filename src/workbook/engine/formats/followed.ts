import type { Node } from "../../formula/nodes";
import type { Formats, Scope, Shown, Value } from "../values";

/** Results with their formats, as what follows a formula's last steps asks for them. */
export interface Followed {
  shown(node: Node, scope: Scope): Shown;
  /** The formats of a result that is a reference are those of its cells. */
  formats(shown: Shown): Formats | undefined;
  invoke(callee: Value, args: Shown[]): Shown;
}
