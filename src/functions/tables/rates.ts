import { DEFAULT_RATES, type RateName, type Rates } from "../../core/money";
import { Fault, isPositive, less, naming, orElse, parseLength, ratio, type Rational } from "../../core/length";
import { COUNTED, findWord, refuseDoubtfulZero, type Typed, readPercent, readPrice } from "../cells";
import { fold } from "./heading";
import { numberCell } from "./kinds";
import { readNamedValues } from "./named-values";
import { isBlankTable } from "./table";

type Name = RateName | `extra ${string}` | `slide price ${string}`;

/** Reads the table `rates`; what is named `extra …` is a line of its own. */
export function readRatesTable(raw: unknown): Rates {
  const labels = new Map<Name, string>();
  const values = readNamedValues<Name>("rates", raw, RATE_NAMES, (typed) => {
    const [, length] = /^slide price\s+(.+)$/i.exec(typed.trim()) ?? [];
    if (length !== undefined && isLength(length)) return `slide price ${length}`;
    const [, label] = /^extras?(?![\p{L}\p{N}])[^\p{L}\p{N}]*(.*)$/iu.exec(typed) ?? [];
    if (label === undefined) return undefined;
    const name: Name = `extra ${fold(label)}`;
    if (!labels.has(name)) labels.set(name, label.trim());
    return name;
  });
  const rates = new Map<RateName, Typed>();
  const extras = new Map<string, Typed>();
  const slidePrices: NonNullable<Rates["slidePrices"]>[number][] = [];
  for (const [name, value] of values) {
    const label = labels.get(name);
    const [, length] = /^slide price (.+)/.exec(name) ?? [];
    if (length !== undefined) {
      if (value.value !== 0) slidePrices.push({ length, price: naming(`rates, ${name}`, () => readPrice(value)) });
    } else if (label === undefined) rates.set(name as RateName, value);
    else extras.set(label, value);
  }
  return { ...ratesOf(rates, extras), ...(slidePrices.length > 0 && { slidePrices }) };
}

const isLength = (text: string): boolean =>
  orElse(
    () => isPositive(parseLength(text, "in")),
    () => false,
  );

/** The rates, or nothing where the table holds nothing. */
export const ratesIfAny = (raw: unknown): Rates | undefined =>
  isBlankTable("rates", raw) ? undefined : readRatesTable(raw);

const price = (typed: Typed): Rational => readPrice(typed);
const percent =
  (most?: number) =>
  (typed: Typed): Rational =>
    readPercent(typed, most);
const word =
  <const W extends string>(...words: W[]) =>
  ({ value }: Typed): W =>
    findWord(value, words);

/** How each rate is read. */
const KINDS: { [N in RateName]-?: (typed: Typed) => Required<Rates>[N] } = {
  "currency decimals": (typed: Typed): number => numberCell(0, 4, true)(typed, "in"),
  "labor rate": price,
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
};
export const RATE_NAMES = Object.keys(KINDS) as RateName[];

/**
 * Reads the rates. A number 0, which an empty cell may give as well, is no rate: what the job needs is then missed.
 * @param typed values by name, blanks left out
 * @param extras values of the lines of one's own, by their labels
 * @throws Fault where a value is no such rate, or markup and margin are both given
 */
function ratesOf(typed: ReadonlyMap<RateName, Typed>, extras: ReadonlyMap<string, Typed>): Rates {
  const read: Partial<Record<RateName, unknown>> = {};
  for (const [name, value] of typed) {
    if (value.value !== 0) read[name] = naming(`rates, ${name}`, () => KINDS[name](value));
    else if (name === "currency decimals") refuseDoubtfulZero(`rates, ${name}`, String(DEFAULT_RATES[name]), COUNTED);
  }
  const rates: Rates = {
    ...DEFAULT_RATES,
    ...(read as Partial<Rates>),
    extras: [...extras]
      .filter(([, { value }]) => value !== 0)
      .map(([label, value]) => ({ label, amount: naming(`rates, extra ${label}`, () => readPrice(value, true)) })),
  };
  if (rates.margin && !less(rates.margin, ratio(100)))
    throw new Fault("rates.marginHigh", { received: typed.get("margin")!.value });
  return oneGain(rates);
}

/** Markup or margin. One of 0 beside the other says nothing, and may be a blank that a host passes as 0. */
function oneGain({ markup, margin, ...rates }: Rates): Rates {
  if (markup && margin && isPositive(markup) && isPositive(margin)) throw new Fault("rates.markupAndMargin", {});
  if (margin && (!markup || isPositive(margin))) return { ...rates, margin };
  return markup ? { ...rates, markup } : rates;
}
