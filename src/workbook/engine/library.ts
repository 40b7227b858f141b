import type { Library, Ordinary, Special } from "./evaluator";
import { CUSTOM_PREFIX } from "../formula/typed-name";
import { aggregates } from "./functions/aggregates";
import { branching } from "./functions/branching";
import { conditional } from "./functions/conditional";
import { conversion } from "./functions/convert";
import { customFunction, type CustomFunction, type Dimensions } from "./functions/custom";
import { dates } from "./functions/dates";
import { lambdas } from "./functions/lambdas";
import { lookup } from "./functions/lookup";
import { ranges } from "./functions/ranges";
import { ordering } from "./functions/ordering";
import { rank } from "./functions/rank";
import { scalars } from "./functions/scalars";
import { splitting } from "./functions/splitting";
import { subtotal } from "./functions/subtotal";
import { texts } from "./functions/texts";
import { univerFunction } from "./univer/library";

const specials: Record<string, Special> = { ...branching, ...lambdas, ...ranges };
const ordinaries: Record<string, Ordinary> = {
  ...aggregates,
  ...conditional,
  ...conversion,
  ...dates,
  ...lookup,
  ...scalars,
  ...ordering,
  ...rank,
  ...splitting,
  ...subtotal,
  ...texts,
};

/** The names that formulas are read with are all in capitals. */
export const CUSTOM_CAPITALS = CUSTOM_PREFIX.toUpperCase();

/** Our own functions first, then ours that replace the library's, then the library's. */
export function createLibrary(
  functions: Record<string, CustomFunction>,
  namespace: string,
  dimensions: Dimensions = {},
): Library {
  const custom = new Map(
    Object.entries(functions).map(([name, call]) => [
      `${CUSTOM_CAPITALS}${namespace}_${name}`.toUpperCase().replaceAll(".", "_"),
      customFunction(call, dimensions[name]),
    ]),
  );
  return {
    special: (name) => (Object.hasOwn(specials, name) ? specials[name] : undefined),
    ordinary: (name) => custom.get(name) ?? (Object.hasOwn(ordinaries, name) ? ordinaries[name] : univerFunction(name)),
  };
}
