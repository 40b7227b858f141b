import * as functions from "../../functions/index";
import type { CustomFunction } from "../engine/index";

/** The namespace that people type before the functions' names. */
export const NAMESPACE = "DRAWER";

/** How a file marks a custom function. */
export const OWN_PREFIX = "_xldudf_";

/** The cell functions, as the engine takes them. */
export const OWN_FUNCTIONS: Record<string, CustomFunction> = { ...functions };

export function isOwnFunction(name: string): boolean {
  const [namespace, own, ...rest] = name.toUpperCase().split(".");
  return namespace === NAMESPACE && rest.length === 0 && own !== undefined && Object.hasOwn(OWN_FUNCTIONS, own);
}
