import { LIMITS } from "./budget";
import type { Library, Ordinary, Special } from "./kinds";
import { CUSTOM_PREFIX } from "../formula/typed-name";
import { aggregates } from "./functions/aggregates";
import { arithmetic } from "./functions/arithmetic";
import { arrays } from "./functions/arrays";
import { cutting } from "./functions/cutting";
import { frequencies, statistics } from "./functions/statistics";
import { strings } from "./functions/strings";
import { branching } from "./functions/branching";
import { conditional } from "./functions/conditional";
import { conversion } from "./functions/convert";
import { customFunction, type CustomFunction, type Dimensions } from "./functions/custom";
import { database } from "./functions/database";
import { finance } from "./functions/finance";
import { integers } from "./functions/integers";
import { workdays } from "./functions/workdays";
import { yearParts } from "./functions/year-parts";
import { dates } from "./functions/dates";
import { lambdas } from "./functions/lambdas";
import { lookup } from "./functions/lookup";
import { ranges } from "./functions/ranges";
import { ordering } from "./functions/ordering";
import { rank } from "./functions/rank";
import { regression } from "./functions/regression";
import { roman } from "./functions/roman";
import { written } from "./functions/written";
import { rounding } from "./functions/rounding";
import { scalars } from "./functions/scalars";
import { splitting } from "./functions/splitting";
import { subtotal } from "./functions/subtotal";
import { texts } from "./functions/texts";
import { PROVEN_FUNCTIONS } from "./proven";
import { bound } from "./univer/bounds";
import { argumentCounts, univerFunction } from "./univer/library";

const specials: Record<string, Special> = { ...branching, ...lambdas, ...ranges };
const ordinaries: Record<string, Ordinary> = {
  ...aggregates,
  ...arithmetic,
  ...conditional,
  ...conversion,
  ...dates,
  ...yearParts,
  ...finance,
  ...lookup,
  ...scalars,
  ...ordering,
  ...rank,
  ...roman,
  ...written,
  ...rounding,
  ...splitting,
  ...cutting,
  ...subtotal,
  ...texts,
  ...statistics,
  ...reckoned({ ...arrays, ...frequencies, ...database, ...workdays, ...regression, ...strings, ...integers }),
};

/** Functions in place of the library's, whose cost is reckoned before they begin, as that of the library's is. */
function reckoned(functions: Record<string, Ordinary>): Record<string, Ordinary> {
  return Object.fromEntries(
    Object.entries(functions).map(([name, called]) => [
      name,
      {
        ...called,
        call(args, evaluator, scope) {
          bound(name, args, evaluator, LIMITS.arrayCells);
          return called.call(args, evaluator, scope);
        },
      } satisfies Ordinary,
    ]),
  );
}

/** The names that formulas are read with are all in capitals. */
export const CUSTOM_CAPITALS = CUSTOM_PREFIX.toUpperCase();

/** Ours first, for they replace the library's where that gives other values than the spreadsheet program. */
function native(name: string): Ordinary | undefined {
  return Object.hasOwn(ordinaries, name) ? ordinaries[name] : univerFunction(name);
}

/** How a function of values takes its arguments, see `Ordinary`; undefined for others, and for what is not worked out. */
export const signatureOf = (name: string): string | undefined =>
  PROVEN_FUNCTIONS.has(name) && !Object.hasOwn(specials, name) ? native(name)?.signature : undefined;

/** Formulas ask by their thousands for the same names. */
function remembered<T>(find: (name: string) => T): (name: string) => T {
  const known = new Map<string, T>();
  return (name) => {
    if (!known.has(name)) known.set(name, find(name));
    return known.get(name)!;
  };
}

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
    special: remembered((name) =>
      PROVEN_FUNCTIONS.has(name) && Object.hasOwn(specials, name) ? specials[name] : undefined,
    ),
    ordinary: remembered((name) => custom.get(name) ?? (PROVEN_FUNCTIONS.has(name) ? native(name) : undefined)),
    argumentCounts,
    isUnproven: (name) => !PROVEN_FUNCTIONS.has(name) && argumentCounts(name) !== undefined,
  };
}
