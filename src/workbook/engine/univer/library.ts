import {
  functionCompatibility,
  functionDatabase,
  functionDate,
  functionEngineering,
  functionFinancial,
  functionInformation,
  functionLogical,
  functionLookup,
  functionMath,
  functionStatistical,
  functionText,
  functionWeb,
  type BaseFunction,
} from "@univerjs/engine-formula";
import { MAX_COLUMNS, MAX_ROWS } from "../../address";
import type { Ordinary } from "../kinds";
import { callUniver } from "./adapter";
import { bound } from "./bounds";
import { ARRAYS, MIXED, SINGLE_VALUES } from "./signatures";
import { UNFIT } from "./unfit";

const GROUPS = [
  functionCompatibility,
  functionDatabase,
  functionDate,
  functionEngineering,
  functionFinancial,
  functionInformation,
  functionLogical,
  functionLookup,
  functionMath,
  functionStatistical,
  functionText,
  functionWeb,
] as unknown as [new (name: string) => BaseFunction, string][][];

const makers = new Map(GROUPS.flat().map(([maker, name]) => [name, maker]));
const made = new Map<string, Ordinary | undefined>();

/** A function out of Univer's library, where it has one that gives what the spreadsheet program gives. */
export function univerFunction(name: string): Ordinary | undefined {
  if (!made.has(name)) made.set(name, make(name));
  return made.get(name);
}

const counts = new Map<string, [least: number, most: number] | undefined>();

/** How many arguments a function takes, where the library knows. */
export function argumentCounts(name: string): [least: number, most: number] | undefined {
  if (!counts.has(name)) {
    const maker = makers.get(name);
    const called = maker && new maker(name);
    counts.set(name, called && called.minParams >= 0 ? [called.minParams, called.maxParams] : undefined);
  }
  return counts.get(name);
}

function make(name: string): Ordinary | undefined {
  const maker = makers.get(name);
  if (!maker || UNFIT.has(name)) return undefined;
  const called = new maker(name);
  // What wants to know of ranges, sheets or the country is ours to write; see ../functions.
  if (called.needsReferenceObject || called.needsSheetsInfo || called.needsFormulaDataModel || called.isAddress()) {
    return undefined;
  }
  if (called.needsSheetRowColumnCount) called.setSheetRowColumnCount(MAX_ROWS, MAX_COLUMNS);
  return {
    signature: signature(name),
    call(args, evaluator) {
      bound(name, args, evaluator);
      return callUniver(called, args, evaluator);
    },
  };
}

function signature(name: string): string {
  return MIXED[name] ?? (SINGLE_VALUES.has(name) ? "V" : ARRAYS.has(name) ? "A" : "R");
}
