import { findWord, numberCell } from "../drawer";
import { Fault, isPositive, naming, refuseDoubtfulZero, type Rational, type Typed } from "../length";
import { readPercent, readPrice } from "./amount";

const price = (typed: Typed): Rational => readPrice(typed);
const percent =
  (most?: number) =>
  (typed: Typed): Rational =>
    readPercent(typed, most);
const word =
  <const W extends string>(...words: W[]) =>
  ({ value }: Typed): W =>
    findWord(value, words);

/** The names of the rates, and how each is read. None has a default but decimals, charge and what is taxed. */
const RATES = {
  "currency decimals": (typed: Typed): number => numberCell(0, 4, true)(typed, "in"),
  "labour rate": price,
  "box minutes": price,
  "front minutes": price,
  "fitting minutes": price,
  "slide price": price,
  "pull price": price,
  "screw price": price,
  "edge band price": price,
  "box finish price": price,
  "front finish price": price,
  "charge sheets": word("whole", "used"),
  overhead: percent(),
  markup: percent(),
  margin: percent(),
  tax: percent(100),
  "tax on": word("all", "materials", "none"),
} as const;

export type RateName = keyof typeof RATES;
export const RATE_NAMES = Object.keys(RATES) as RateName[];

/** Names of amounts of money. */
export type PriceName = Extract<RateName, `${string} price` | "labour rate">;

type Read = { -readonly [N in RateName]?: ReturnType<(typeof RATES)[N]> };

/** What a shop charges. */
export interface Rates extends Read {
  "currency decimals": number;
  "charge sheets": "whole" | "used";
  "tax on": "all" | "materials" | "none";
  /** Charged as they stand, after markup or margin; a discount is below 0. */
  extras: readonly Extra[];
}

export interface Extra {
  label: string;
  amount: Rational;
}

/** Decimals that most currencies have. */
const DECIMALS = 2;

/**
 * Reads the rates. A number 0, which an empty cell may give as well, is no rate: what the job needs is then missed.
 * @param typed values by name, blanks left out
 * @param extras values of the lines of one's own, by their labels
 * @throws Fault where a value is no such rate, or markup and margin are both given
 */
export function readRates(typed: ReadonlyMap<RateName, Typed>, extras: ReadonlyMap<string, Typed>): Rates {
  const read: Partial<Record<RateName, unknown>> = {};
  for (const [name, value] of typed) {
    if (value.value !== 0) read[name] = naming(`rates, ${name}`, () => RATES[name](value));
    else refuseDoubtfulZero(`rates, ${name}`, name === "currency decimals" ? String(DECIMALS) : undefined);
  }
  const rates: Rates = {
    "currency decimals": DECIMALS,
    "charge sheets": "whole",
    "tax on": "all",
    ...(read as Read),
    extras: [...extras]
      .filter(([, { value }]) => value !== 0)
      .map(([label, value]) => ({ label, amount: naming(`rates, extra ${label}`, () => readPrice(value, true)) })),
  };
  if (rates.margin && rates.margin.compare(100) >= 0)
    throw new Fault("rates.marginHigh", { received: typed.get("margin")!.value });
  return oneGain(rates);
}

/** Markup or margin. One of 0 beside the other says nothing, and may be a blank that a host passes as 0. */
function oneGain({ markup, margin, ...rates }: Rates): Rates {
  if (markup && margin && isPositive(markup) && isPositive(margin)) throw new Fault("rates.markupAndMargin");
  if (margin && (!markup || isPositive(margin))) return { ...rates, margin };
  return markup ? { ...rates, markup } : rates;
}

/** A price without which the job would be charged too little. @throws Fault `rates.missing` */
export function needed(rates: Rates, name: PriceName): Rational {
  const rate = rates[name];
  if (rate === undefined) throw new Fault("rates.missing", { name });
  return rate;
}
