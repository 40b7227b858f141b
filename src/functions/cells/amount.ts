import {
  compare,
  Fault,
  isNegative,
  isPositive,
  less,
  parseLength,
  ratio,
  times,
  withoutInvisible,
  type Rational,
} from "../../core/length";
import { sameWord } from "./find-word";
import { isDateFormat, mayBeDate, type Typed } from "./typed";

/** No price of a drawer is larger, in any currency. */
const LARGEST = 1e9;

/**
 * A price or an amount: a number, or digits as text; `none` is zero. Numbers are read to the millionth, so that the
 * dust of binary sums does not decide which way half a cent is rounded.
 * @throws Fault `number.wrongType`, `number.outOfRange`, `number.negative`, `argument.date`, `price.mayBeDate`
 */
export function readPrice({ value, format }: Typed, negative = false): Rational {
  if (format && isDateFormat(format)) throw new Fault("argument.date", {});
  if (mayBeDate(value)) throw new Fault("price.mayBeDate", { received: value });
  return within(plainNumber(value), value, negative ? -LARGEST : 0, LARGEST);
}

/**
 * A percentage: 7, "7" and "7 %" are seven percent, and so is the 0.07 of a cell whose format is known to show it
 * as one. Any other number between 0 and 1 may be either, and is refused.
 * @param most the greatest that is allowed
 * @throws Fault `percent.doubtful`, `number.wrongType`, `number.outOfRange`, `number.negative`
 */
export function readPercent({ value, format }: Typed, most = 1000): Rational {
  const [, digits = value, sign] = (typeof value === "string" && /^\s*([^%]*?)\s*(%)\s*$/.exec(value)) || [];
  const shown = typeof value === "number" && format?.includes("%") === true;
  const read = plainNumber(digits);
  const percent = within(shown ? times(100, read) : read, value, 0, most);
  if (!shown && !sign && isPositive(percent) && less(percent, ratio(1))) {
    throw new Fault("percent.doubtful", { received: value });
  }
  return percent;
}

function plainNumber(typed: unknown): Rational {
  const value = typeof typed === "string" ? withoutInvisible(typed) : typed;
  if (sameWord(value, "none")) return ratio(0);
  if (typeof value === "string" && /^\s*-?(\d{1,15}([.,]\d{1,20})?|[.,]\d{1,20})\s*$/.test(value))
    return parseLength(value.trim(), "in");
  if (typeof value !== "number" || !Number.isFinite(value * 1e6))
    throw new Fault("number.wrongType", { received: value });
  return ratio(BigInt(Math.round(value * 1e6)), 1_000_000n);
}

function within(read: Rational, received: unknown, least: number, most: number): Rational {
  if (least === 0 && isNegative(read)) throw new Fault("number.negative", { received });
  if (compare(read, ratio(least)) < 0 || compare(read, ratio(most)) > 0)
    throw new Fault("number.outOfRange", { received, least, most });
  return read;
}
