import { Fault, type Rational } from "../length";

/** What a shop charges. None has a default but decimals, charge and what is taxed. */
export interface Rates {
  "currency decimals": number;
  "labor rate"?: Rational;
  "box minutes"?: Rational;
  "front minutes"?: Rational;
  "fitting minutes"?: Rational;
  "slide price"?: Rational;
  "pull price"?: Rational;
  "screw price"?: Rational;
  "edge band price"?: Rational;
  "box finish price"?: Rational;
  "front finish price"?: Rational;
  "charge sheets": "whole" | "used";
  overhead?: Rational;
  /** Markup or margin, not both. */
  markup?: Rational;
  margin?: Rational;
  tax?: Rational;
  "tax on": "all" | "materials" | "none";
  /** Prices of slides by their length, as that is written. */
  slidePrices?: readonly { length: string; price: Rational }[];
  /** Charged as they stand, after markup or margin; a discount is below 0. */
  extras: readonly Extra[];
}

export type RateName = Exclude<keyof Rates, "extras" | "slidePrices">;

/** Names of amounts of money. */
export type PriceName = Extract<RateName, `${string} price` | "labor rate">;

interface Extra {
  label: string;
  amount: Rational;
}

/** What holds where nothing is said. Most currencies have two decimals. */
export const DEFAULT_RATES = { "currency decimals": 2, "charge sheets": "whole", "tax on": "all" } as const;

/** A price without which the job would be charged too little. @throws Fault `rates.missing` */
export function needed(rates: Rates, name: PriceName): Rational {
  const rate = rates[name];
  if (rate === undefined) throw new Fault("rates.missing", { name });
  return rate;
}
