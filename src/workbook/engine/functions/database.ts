import { toNumber, toText } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { finite } from "../operators";
import { CellError, fail, Unsupported, type Matrix, type Scalar, type Value } from "../values";
import { sum } from "./aggregates";
import { criterion } from "./criteria";
import { scalarOf } from "./reading";
import { deviation, mean, variance } from "./statistics";

/** Functions of a table with a header row: of the rows that meet a second table's conditions, one column. */
export const database: Record<string, Ordinary> = {
  DSUM: ofNumbers((numbers) => finite(sum(numbers))),
  DAVERAGE: ofNumbers((numbers) => mean(numbers)),
  DMAX: ofNumbers((numbers) => numbers.reduce((a, b) => Math.max(a, b), numbers[0] ?? 0)),
  DMIN: ofNumbers((numbers) => numbers.reduce((a, b) => Math.min(a, b), numbers[0] ?? 0)),
  DPRODUCT: ofNumbers((numbers) => (numbers.length === 0 ? 0 : finite(numbers.reduce((a, b) => a * b, 1)))),
  DSTDEV: ofNumbers((numbers) => deviation(numbers, 1)),
  DSTDEVP: ofNumbers((numbers) => deviation(numbers, 0)),
  DVAR: ofNumbers((numbers) => variance(numbers, 1)),
  DVARP: ofNumbers((numbers) => variance(numbers, 0)),
  DCOUNT: ofItems((items, named) => (named ? items.filter((item) => typeof item === "number").length : items.length)),
  DCOUNTA: ofItems((items, named) => (named ? items.filter((item) => item !== null).length : items.length)),
  DGET: ofItems((items) => (items.length === 0 ? fail("#VALUE!") : items.length > 1 ? fail("#NUM!") : items[0]!)),
};

function ofNumbers(of: (numbers: number[]) => Scalar): Ordinary {
  return ofItems((items, named) => {
    if (!named) return fail("#VALUE!");
    const error = items.find((item) => item instanceof CellError);
    return error ?? of(items.filter((item) => typeof item === "number"));
  });
}

/** `named` is whether a column was asked for; only counts go without. */
function ofItems(of: (items: Scalar[], named: boolean) => Scalar): Ordinary {
  return {
    signature: "RVR",
    call([source, field, conditions], evaluator: Evaluator) {
      const [headings, ...rows] = evaluator.matrix(source) as [Scalar[], ...Matrix];
      if (rows.length === 0) return fail("#VALUE!");
      const column = columnOf(headings, field);
      if (column instanceof CellError) return column;
      const holds = conditionsOf(evaluator.matrix(conditions), headings);
      const items = rows.filter(holds).map((row) => (column === undefined ? null : row[column]!));
      return of(items, column !== undefined);
    },
  };
}

/** A column by its heading or its number. */
function columnOf(headings: Scalar[], field: Value): number | undefined | CellError {
  const wanted = scalarOf(field);
  if (field === undefined) return undefined;
  if (wanted instanceof CellError) return wanted;
  if (typeof wanted === "string") {
    const at = headingAt(headings, wanted);
    return at < 0 ? fail("#VALUE!") : at;
  }
  const number = toNumber(wanted);
  if (number instanceof CellError) return number;
  const at = Math.trunc(number);
  return at >= 1 && at <= headings.length ? at - 1 : fail("#VALUE!");
}

function headingAt(headings: Scalar[], wanted: Scalar): number {
  const text = heading(wanted);
  return text === "" ? -1 : headings.findIndex((item) => heading(item) === text);
}

function heading(value: Scalar): string {
  const text = toText(value);
  return text instanceof CellError ? text.code : text.toLowerCase();
}

/** A row of conditions holds where all of its cells do, the table where one of its rows does. */
function conditionsOf([headings, ...rows]: Matrix, columns: Scalar[]): (row: Scalar[]) => boolean {
  const tests = rows.map((row) =>
    row.flatMap((wanted, i) => {
      if (wanted === null) return [];
      const at = headingAt(columns, headings![i]!);
      return [at < 0 ? { at: 0, holds: nothing(wanted) } : { at, holds: criterion(startingWith(wanted)).holds }];
    }),
  );
  return (row) => tests.some((line) => line.every(({ at, holds }) => holds(row[at]!)));
}

/** Under another heading stands what a formula says of the first row, which would have to be asked of every row. */
function nothing(wanted: Scalar): () => boolean {
  if (typeof wanted !== "string") throw new Unsupported("has conditions that are formulas of their own");
  return () => false;
}

/** A text without an operator holds for all that begins with it. */
function startingWith(wanted: Scalar): Scalar {
  if (typeof wanted !== "string" || /^(<|>|=)/.test(wanted) || wanted === "") return wanted;
  return /^\s*[+-]?[\d.]/.test(wanted) ? wanted : `${wanted}*`;
}
