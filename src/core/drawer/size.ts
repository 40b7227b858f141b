import {
  add,
  compare,
  isNegative,
  isZero,
  multiply,
  ratio,
  roundDown,
  share,
  subtract,
  ZERO,
  type Rational,
} from "../length";

/** Writes a length for a sum: the number, without its unit. */
export type Write = (length: Rational) => string;

/** A size, and the sum that gave it: derived once, so that a table of workings can never disagree with the plan. */
export class Size {
  constructor(
    readonly value: Rational,
    /** The sum in words and numbers, made only when it is asked for. */
    readonly how: (write: Write) => string,
  ) {}
}

/** What goes into a sum: `count` times a length that has a name. */
export interface Term {
  name: string;
  value: Rational;
  count: number;
  minus: boolean;
  /** The sum that it is itself, to stand in its place. */
  sum?: Size;
}

export const plus = (name: string, of: Rational | Size, count = 1): Term => term(name, of, count, false);
export const minus = (name: string, of: Rational | Size, count = 1): Term => term(name, of, count, true);

/** A term that is shown as the sum that it is, and not by a name. */
export const plusSum = (size: Size): Term => ({ ...term("", size, 1, false), sum: size });
export const minusSum = (size: Size): Term => ({ ...term("", size, 1, true), sum: size });

/** A size that was measured, bought or chosen. */
export const given = (value: Rational, words: string): Size => new Size(value, () => words);

/**
 * The sum of its terms.
 * @example sum(plus("opening width", width), minus("side clearance", clearance, 2))
 */
export function sum(...terms: Term[]): Size {
  let value = ZERO;
  for (const t of terms) {
    const size = t.count === 1 ? t.value : multiply(t.value, ratio(t.count));
    value = t.minus ? subtract(value, size) : add(value, size);
  }
  return new Size(value, (write) =>
    terms
      .filter(counts)
      .map((t, i) => written(t, i === 0, write))
      .join(" ")
      .replace(/^\+ /, ""),
  );
}

/** One of `count` equal shares of a sum. */
export const shared = (whole: Size, count: number): Size =>
  new Size(share(whole.value, count), (write) => `(${whole.how(write)}) / ${count}`);

/** A sum and what it comes to; what is one size alone comes to nothing else. */
export const withResult = (how: string, result: string): string =>
  / [+−×/=] |^− /.test(how) || !how.endsWith(` ${result}`) ? `${how} = ${result}` : how;

/** A size down to a multiple of `step`. */
export const downTo = (size: Size, step: Rational): Size => {
  const value = roundDown(size.value, step);
  if (compare(value, size.value) === 0) return size;
  return new Size(
    value,
    (write) => `${withResult(size.how(write), write(size.value))}, down to a multiple of ${write(step)}`,
  );
};

/** The lesser of two sizes; the first where they are equal. */
export const lesser = (a: Size, b: Size): Size => (compare(b.value, a.value) < 0 ? b : a);
/** The greater of two sizes; the first where they are equal. */
export const greater = (a: Size, b: Size): Size => (compare(b.value, a.value) > 0 ? b : a);

const term = (name: string, of: Rational | Size, count: number, isMinus: boolean): Term => ({
  name,
  value: of instanceof Size ? of.value : of,
  count,
  minus: isMinus,
});

/** A term of nothing only clutters the sum. */
const counts = (t: Term, i: number): boolean => i === 0 || (t.count !== 0 && !isZero(t.value));

/** With its sign, which the first of a sum shows where it is a minus. */
function written({ name, value, count, minus: isMinus, sum: own }: Term, first: boolean, write: Write): string {
  const sign = isMinus ? "−" : "+";
  if (own) return `${sign} ${own.how(write)}`;
  const negative = isNegative(value);
  const size = `${count === 1 ? "" : `${count} × `}${name} ${negative && !first ? `(${write(value)})` : write(value)}`;
  return `${sign} ${size}`;
}
