import { isBlank, type Typed } from "../../core/length";
import { RATE_NAMES, readRates, type RateName, type Rates } from "../../core/money";
import { readRange } from "../cells";
import { fold } from "./heading";
import { readNamedValues } from "./named-values";

type Name = RateName | `extra ${string}`;

/** Reads the table `rates`; what is named `extra …` is a line of its own. */
export function readRatesTable(raw: unknown): Rates {
  const labels = new Map<Name, string>();
  const values = readNamedValues<Name>("rates", raw, RATE_NAMES, (typed) => {
    const [, label] = /^extras?(?![\p{L}\p{N}])[^\p{L}\p{N}]*(.*)$/iu.exec(typed) ?? [];
    if (label === undefined) return undefined;
    const name: Name = `extra ${fold(label)}`;
    if (!labels.has(name)) labels.set(name, label.trim());
    return name;
  });
  const rates = new Map<RateName, Typed>();
  const extras = new Map<string, Typed>();
  for (const [name, value] of values) {
    const label = labels.get(name);
    if (label === undefined) rates.set(name as RateName, value);
    else extras.set(label, value);
  }
  return readRates(rates, extras);
}

/** The rates, or nothing where the table holds nothing. */
export const ratesIfAny = (raw: unknown): Rates | undefined =>
  readRange("rates", raw).some(({ cells }) => cells.some(({ value }) => value !== 0 && !isBlank(value)))
    ? readRatesTable(raw)
    : undefined;
