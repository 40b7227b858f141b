import { LONGEST_TEXT, make, spend } from "../budget";
import { toNumber, toText } from "../coercion";
import type { Evaluator } from "../kinds";
import { isMatrix, isScalar, Reference, Unsupported, type Value } from "../values";

/**
 * The library counts nothing, so that what a call would cost is reckoned before it: the cells that it is handed and
 * the cells that it makes, and for those whose loops run as long as a number says, that number.
 * @param most cells that it takes and makes
 * @throws Unsupported where that is too much
 */
export function bound(name: string, args: readonly Value[], evaluator: Evaluator, most = MOST_HANDED): void {
  const shapes = args.map((arg) => shapeOf(arg, evaluator));
  const handed = shapes.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
  if (handed > most) {
    throw new Unsupported(`hands ${handed} cells to ${name}; at most ${most} are handed over here`, [name]);
  }
  spend(handed * COST_OF_A_CELL);
  const call: Call = { name, args, shapes, most };
  RESULTS[name]?.(call);
  if (DATABASE.test(name)) refuseStars(name, args[2], evaluator);
  STEPS[name]?.(call);
  for (const at of COUNTED[name] ?? []) spend(16 * Math.abs(numberAt(call, at, 0)));
}

/** Every one that is handed to the library becomes an object of its own. */
const MOST_HANDED = 250_000;
const COST_OF_A_CELL = 16;

interface Call {
  name: string;
  args: readonly Value[];
  shapes: readonly Shape[];
  most: number;
}

interface Shape {
  rows: number;
  columns: number;
}

function shapeOf(value: Value, evaluator: Evaluator): Shape {
  if (isMatrix(value)) return { rows: value.length, columns: value[0]!.length };
  if (!(value instanceof Reference)) return { rows: 1, columns: 1 };
  const areas = value.areas.map((area) => evaluator.cells.clip(area));
  const sizes = areas.map(({ top, left, bottom, right }) => ({ rows: bottom - top + 1, columns: right - left + 1 }));
  return sizes.length === 1
    ? sizes[0]!
    : { rows: sizes.reduce((sum, { rows, columns }) => sum + rows * columns, 0), columns: 1 };
}

/** The library's own wildcards try every way to share a text out among several stars. */
const DATABASE = /^D(AVERAGE|COUNTA?|GET|MAX|MIN|PRODUCT|STDEVP?|SUM|VARP?)$/;

function refuseStars(name: string, criteria: Value, evaluator: Evaluator): void {
  for (const item of evaluator.matrix(criteria).flat()) {
    if (typeof item !== "string" || item.split("*").length <= 2) continue;
    throw new Unsupported(`calls ${name} with several stars in one criterion`, [name]);
  }
}

const size = ({ rows, columns }: Shape): number => rows * columns;
const total = (shapes: readonly Shape[]): number => shapes.reduce((sum, shape) => sum + size(shape), 0);
const most = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.max(a, b), 0);

function numberAt({ args }: Call, at: number, otherwise: number): number {
  const value = args[at];
  const number = isScalar(value) && value !== null ? toNumber(value) : otherwise;
  return typeof number === "number" ? number : otherwise;
}

/** Asks for what a function will give, where that is more than it is handed. */
const RESULTS: Record<string, (call: Call) => void> = {
  EXPAND: (call) =>
    made(
      call,
      most([call.shapes[0]!.rows, numberAt(call, 1, 1)]),
      most([call.shapes[0]!.columns, numberAt(call, 2, 1)]),
    ),
  MUNIT: (call) => made(call, numberAt(call, 0, 1), numberAt(call, 0, 1)),
  RANDARRAY: (call) => made(call, numberAt(call, 0, 1), numberAt(call, 1, 1)),
  SEQUENCE: (call) => made(call, numberAt(call, 0, 1), numberAt(call, 1, 1)),
  VSTACK: (call) =>
    made(
      call,
      call.shapes.reduce((sum, { rows }) => sum + rows, 0),
      most(call.shapes.map(({ columns }) => columns)),
    ),
  HSTACK: (call) =>
    made(
      call,
      most(call.shapes.map(({ rows }) => rows)),
      call.shapes.reduce((sum, { columns }) => sum + columns, 0),
    ),
  CHOOSECOLS: (call) => made(call, call.shapes[0]!.rows, total(call.shapes.slice(1))),
  CHOOSEROWS: (call) => made(call, total(call.shapes.slice(1)), call.shapes[0]!.columns),
  WRAPROWS: (call) => made(call, most([size(call.shapes[0]!), numberAt(call, 1, 1)]), 2),
  WRAPCOLS: (call) => made(call, most([size(call.shapes[0]!), numberAt(call, 1, 1)]), 2),
  MMULT: (call) => made(call, call.shapes[0]!.rows, call.shapes[1]?.columns ?? 1),
  REPT: (call) => text(call, textAt(call, 0).length * Math.max(0, numberAt(call, 1, 0))),
  SUBSTITUTE: (call) => {
    const [whole, old, put] = [textAt(call, 0), textAt(call, 1), textAt(call, 2)];
    const times = old === "" ? 0 : whole.split(old).length - 1;
    text(call, whole.length + times * Math.max(0, put.length - old.length));
  },
};

/** Steps beyond the cells handed over: what goes through its cells again and again. */
const STEPS: Record<string, (call: Call) => void> = {
  NETWORKDAYS: days,
  "NETWORKDAYS.INTL": days,
  FREQUENCY: ({ shapes }) => spend(size(shapes[0]!) * size(shapes[1] ?? shapes[0]!)),
  PERCENTRANK: everyPair,
  "PERCENTRANK.INC": everyPair,
  "PERCENTRANK.EXC": everyPair,
  PROB: everyPair,
  MODE: everyPair,
  "MODE.MULT": everyPair,
  "MODE.SNGL": everyPair,
  MMULT: ({ shapes }) => spend(4 * size(shapes[0]!) * (shapes[1]?.columns ?? 1)),
  MINVERSE: cube,
  MDETERM: cube,
  LINEST: regression,
  LOGEST: regression,
  TREND: regression,
  GROWTH: regression,
};

/** The days between two dates are gone through one by one. */
function days(call: Call): void {
  spend(16 * Math.abs(numberAt(call, 1, 0) - numberAt(call, 0, 0)));
}

function everyPair({ shapes }: Call): void {
  spend((size(shapes[0]!) * size(shapes[1] ?? shapes[0]!)) / 8);
}

function cube({ shapes }: Call): void {
  spend(32 * shapes[0]!.rows ** 3);
}

function regression({ shapes }: Call): void {
  const [known, given] = [size(shapes[0]!), size(shapes[1] ?? shapes[0]!)];
  const variables = Math.max(1, given / Math.max(1, known));
  spend(64 * given * variables ** 2);
}

function made({ most: limit }: Call, rows: number, columns: number): void {
  const count = rows * columns;
  if (count > limit) {
    throw new Unsupported(`makes an array of ${count} cells; at most ${limit} are made by one function here`);
  }
  make(rows, columns);
  spend(count * COST_OF_A_CELL);
}

function textAt({ args }: Call, at: number): string {
  const value = args[at];
  const found = isScalar(value) ? toText(value) : "";
  return typeof found === "string" ? found : "";
}

/** A text that no cell holds is not made in order to be thrown away. */
function text({ name }: Call, length: number): void {
  if (length > LONGEST_TEXT) {
    throw new Unsupported(`makes a text of ${length} characters with ${name}; a cell holds ${LONGEST_TEXT}`, [name]);
  }
}

/** Numbers that the library counts up or down to one by one, by the arguments' places. */
const COUNTED: Record<string, readonly number[]> = {
  WORKDAY: [1],
  "WORKDAY.INTL": [1],
  "BINOM.DIST": [1],
  BINOMDIST: [1],
  "BINOM.DIST.RANGE": [0],
  "BINOM.INV": [0],
  CRITBINOM: [0],
  "NEGBINOM.DIST": [0, 1],
  NEGBINOMDIST: [0, 1],
  "HYPGEOM.DIST": [0, 1, 2, 3],
  HYPGEOMDIST: [0, 1, 2, 3],
  "POISSON.DIST": [0],
  POISSON: [0],
  BESSELI: [1],
  BESSELJ: [1],
  BESSELK: [1],
  BESSELY: [1],
  CUMIPMT: [1, 4],
  CUMPRINC: [1, 4],
  DB: [2, 3],
  DDB: [2, 3],
  VDB: [2, 4],
};
