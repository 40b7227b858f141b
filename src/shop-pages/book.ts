import { cutList, type PlannedOpening } from "../core/drawer";
import { Fault, safeSizes, type SafeSizes, type Unit } from "../core/length";
import { toCut } from "../core/money";
import {
  begun,
  laidOut,
  openings,
  plannedOrFault,
  readAll,
  SHEET_ARGUMENTS,
  standards,
  stock,
  type LaidOutGroup,
} from "../functions/calls/index";
import { IncomingError } from "../functions/cells/index";
import { message } from "../functions/words/index";
import { formulaCall, type CallArgument, type FormulaCall, type RangeName } from "./formula-call";

/** A workbook as far as its job can be read out of it. */
export interface BookText {
  /** Its formulas, sheet by sheet, each with its equals sign. */
  formulas: readonly { sheet: string; formula: string }[];
  /** What stands in a range, blanks as ""; undefined where there is no such range, or nothing has spilled. */
  values(range: RangeName & { sheet: string }): unknown[][] | undefined;
}

/** Everything that is made in the shop: planned, and laid out where there is stock for it. */
export interface ShopJob {
  unit: Unit;
  plan: readonly PlannedOpening[];
  sheets: { groups: readonly LaidOutGroup[]; safe: SafeSizes } | { why: string };
}

/** The first formula of each kind tells; that of the plan itself before those that only use it. */
const OF_JOBS = ["PLAN", "SETUPS", "PARTS", "PIECES", "MOUNTING", "HARDWARE", "FIT", "CHECKS", "QUOTE"];
const OF_CUTTING = ["CUTS", "LAYOUT", "SHEETS"];
/** What has openings, standards and stock, in this order. */
const OF_STOCK = ["QUOTE", "CHECKS"];

/**
 * Reads the job that a workbook plans out of its own formulas.
 * @returns why there is none, in a sentence
 */
export function readShopJob(book: BookText): ShopJob | { why: string } {
  const calls = book.formulas.flatMap(({ sheet, formula }) => {
    const call = formulaCall(formula);
    return call ? [{ sheet, ...call }] : [];
  });
  const found = firstRead(book, calls, OF_JOBS);
  if (!found) return { why: NO_JOB };
  if ("why" in found) return found;
  return attempted([openings, standards] as const, found.raw, ([, { job }], unit): ShopJob => {
    const plan = plannedOrFault(job);
    return { unit, plan, sheets: sheetsOf(book, calls, { plan, unit, standards: job.standards }) };
  });
}

const NO_JOB =
  "No cell of this workbook plans drawers: shop pages are made from a formula such as =DRAWER.PLAN(A1:E4, G1:H9) that reads cells.";
const NO_SHEETS = "No cell of this workbook lays sheets out (DRAWER.CUTS, LAYOUT or SHEETS), and none gives stock.";

type Placed = FormulaCall & { sheet: string };

function sheetsOf(
  book: BookText,
  calls: readonly Placed[],
  {
    plan,
    unit,
    standards: s,
  }: { plan: PlannedOpening[]; unit: Unit; standards: PlannedOpening["opening"]["standards"] },
): ShopJob["sheets"] {
  const asked = firstRead(book, calls, OF_CUTTING);
  if (asked && "raw" in asked) {
    return attempted(SHEET_ARGUMENTS, asked.raw, (values) => ({
      groups: laidOut(values).groups,
      safe: safeSizes(laidOut(values).unit),
    }));
  }
  const priced = firstRead(book, calls, OF_STOCK, 2);
  if (!priced || "why" in priced) return asked ?? priced ?? { why: NO_SHEETS };
  return attempted([openings, standards, stock] as const, priced.raw.slice(0, 3), ([, , rows]) => ({
    groups: laidOut([cutList(plan, true).map(toCut), rows, s.kerf, s["sheet trim"], s["sheet effort"], unit]).groups,
    safe: safeSizes(unit),
  }));
}

type Read = { raw: unknown[] } | { why: string };

/** The first call of those names whose arguments can be read; why the first of them cannot, where none can. */
function firstRead(book: BookText, calls: readonly Placed[], names: readonly string[], needed = 0): Read | undefined {
  let why: Read | undefined;
  for (const name of names) {
    for (const { args, sheet } of calls.filter((call) => call.name === name && call.args.length > needed)) {
      const read = readArguments(book, args, sheet);
      if ("raw" in read) return read;
      why ??= read;
    }
  }
  return why;
}

function readArguments(book: BookText, args: readonly CallArgument[], sheet: string): Read {
  const raw: unknown[] = [];
  for (const argument of args) {
    if ("other" in argument) {
      return {
        why: `The job stands in ${argument.other}, which is a formula of its own: let a range of cells hold it.`,
      };
    }
    if ("value" in argument) raw.push(argument.value);
    else {
      const values = book.values({ sheet, ...argument.range });
      if (!values) return { why: `There is nothing to read in ${argument.range.address}.` };
      // One cell is no range to a function.
      raw.push(values.length === 1 && values[0]!.length === 1 ? values[0]![0] : values);
    }
  }
  return { raw };
}

type Arguments = Parameters<typeof readAll>[0];

/** What cannot be read or made is said as the cell says it. */
function attempted<const A extends Arguments, T>(
  args: A,
  raw: readonly unknown[],
  make: (values: ReturnType<typeof readAll<A>>, unit: Unit) => T,
): T | { why: string } {
  const call = begun(args, raw);
  try {
    return make(readAll(args, call), call.unit);
  } catch (thrown) {
    if (thrown instanceof Fault) return { why: message(thrown, call.unit) };
    if (thrown instanceof IncomingError) return { why: "A cell that the job reads holds an error." };
    throw thrown;
  }
}
