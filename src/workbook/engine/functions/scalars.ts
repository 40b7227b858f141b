import { toBoolean, toNumber } from "../coercion";
import type { Ordinary } from "../kinds";
import { CellError, fail, isMatrix, isScalar, Lambda, Reference, type Scalar } from "../values";
import { unproven } from "../proven";
import { ofNumbers, scalarOf } from "./reading";

/** What kind of value something is, and the smaller functions of single values. */
export const scalars: Record<string, Ordinary> = {
  HOUR: ofNumbers((value) => clock(value, (seconds) => Math.floor(seconds / 3600) % 24)),
  MINUTE: ofNumbers((value) => clock(value, (seconds) => Math.floor(seconds / 60) % 60)),
  SECOND: ofNumbers((value) => clock(value, (seconds) => seconds % 60)),
  NOT: {
    signature: "V",
    call([value]) {
      const truth = toBoolean(isScalar(value) ? value : null);
      return truth instanceof CellError ? truth : !truth;
    },
  },
  /** A number stands for itself, a text for what it says; a truth value is neither. */
  VALUE: {
    signature: "V",
    call([value]) {
      const given = scalarOf(value);
      return typeof given === "boolean" ? fail("#VALUE!") : toNumber(given);
    },
  },
  NA: { signature: "V", call: () => fail("#N/A") },
  TRUE: { signature: "V", call: () => true },
  FALSE: { signature: "V", call: () => false },
  N: ofFirst((value) => (value instanceof CellError || typeof value === "number" ? value : value === true ? 1 : 0)),
  T: ofFirst((value) => (value instanceof CellError || typeof value === "string" ? value : "")),
  ISBLANK: test((value) => value === null),
  ISNUMBER: test((value) => typeof value === "number"),
  ISTEXT: test((value) => typeof value === "string"),
  ISNONTEXT: test((value) => typeof value !== "string"),
  ISLOGICAL: test((value) => typeof value === "boolean"),
  ISERROR: test((value) => value instanceof CellError),
  ISERR: test((value) => value instanceof CellError && value.code !== "#N/A"),
  ISNA: test((value) => value instanceof CellError && value.code === "#N/A"),
  /** Newer errors are stored as #VALUE! and have a number of their own, so that of #VALUE! is not known here. */
  "ERROR.TYPE": {
    signature: "V",
    call([value]) {
      if (!(value instanceof CellError)) return fail("#N/A");
      const at = ["#NULL!", "#DIV/0!", "", "#REF!", "#NAME?", "#NUM!", "#N/A"].indexOf(value.code);
      if (at < 0) throw unproven("ERROR.TYPE", value.code);
      return at + 1;
    },
  },
  TYPE: {
    signature: "R",
    call([value], evaluator) {
      const found = value instanceof Lambda ? value : evaluator.contents(value);
      if (found instanceof Lambda) return 128;
      if (isMatrix(found)) return 64;
      return found instanceof CellError ? 16 : typeof found === "string" ? 2 : typeof found === "boolean" ? 4 : 1;
    },
  },
  HYPERLINK: { signature: "V", call: ([target, label]) => label ?? target ?? null },
};

/** The time of day, to the nearest second. */
function clock(value: number, of: (seconds: number) => number): Scalar {
  return value < 0 ? fail("#NUM!") : of(Math.round((value - Math.floor(value)) * 86_400));
}

/** Of a range its first cell, of an array each item. */
function ofFirst(of: (value: Scalar) => Scalar): Ordinary {
  return {
    signature: "R",
    call([value], evaluator) {
      if (value instanceof Lambda) return fail("#VALUE!");
      if (isMatrix(value)) return value.map((row) => row.map(of));
      const area = value instanceof Reference ? value.areas[0] : undefined;
      return of(area ? evaluator.cells.read(area.sheet, area.top, area.left) : scalarOf(value));
    },
  };
}

function test(of: (value: Scalar) => boolean): Ordinary {
  return { signature: "V", call: ([value]) => (value instanceof Reference ? false : of((value ?? null) as Scalar)) };
}
