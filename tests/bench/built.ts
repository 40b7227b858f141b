import { readFileSync } from "node:fs";
import "../host";
import { dist } from "../build/dist";

export type CellFunction = (...args: unknown[]) => unknown;

export const BUNDLE = `${dist()}/functions.js`;

/**
 * The built functions, run in this realm as a page runs them: in a context of node:vm every global goes through an
 * interceptor, which took two thirds of the time.
 */
export function builtFunctions(): Map<string, CellFunction> {
  const functions = new Map<string, CellFunction>();
  const host = { ...CustomFunctions, associate: (id: string, call: CellFunction) => functions.set(id, call) };
  new Function("CustomFunctions", readFileSync(BUNDLE, "utf8"))(host);
  return functions;
}
