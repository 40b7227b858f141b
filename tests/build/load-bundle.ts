import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import "../host";
import { dist } from "./dist";

type CellFunction = (...args: unknown[]) => unknown;

/**
 * Runs the built functions.js as a host does, where there is standard JavaScript and `CustomFunctions`, and nothing
 * else. Arrays that come back are of that other world: compare them with `toEqual`.
 * @param globals what else the host is to have
 * @returns the functions as they were associated, by id
 */
export function loadBundle(globals: Record<string, unknown> = {}): Map<string, CellFunction> {
  const associated = new Map<string, CellFunction>();
  const associate = (id: string, call: CellFunction): void => {
    if (associated.has(id)) throw new Error(`${id} was associated twice.`);
    associated.set(id, call);
  };
  const { Error: CellError, ErrorCode } = CustomFunctions;
  const host = createContext({ ...globals, CustomFunctions: { associate, Error: CellError, ErrorCode } });
  runInContext(readFileSync(join(dist(), "functions.js"), "utf8"), host, { filename: "functions.js" });
  return associated;
}
