import { multiply, share, type Rational } from "../length";
import type { ItemName } from "../drawer";
import { rounded } from "./currency";

/** Headings of a quote, in its order. */
export type Section =
  | "Sheets"
  | "Solid stock"
  | "Hardware"
  | "Finish"
  | "Labor"
  | "Overhead"
  | "Markup"
  | "Margin"
  | "Extras"
  | "Price"
  | "Tax"
  | "Total";

/** What a line is for; its wording belongs to whoever shows it. */
export type What =
  | { kind: "stock"; material: string; thickness?: Rational; length?: Rational; width?: Rational }
  | { kind: "hardware"; name: ItemName | "screw"; size?: Rational; unpriced?: boolean }
  | { kind: "extra"; label: string }
  | { kind: "words"; words: Words };

/** Lines of which every quote has one at most. */
export type Words =
  | "boxFinish"
  | "frontFinish"
  | "boxes"
  | "fronts"
  | "fitting"
  | "subtotal"
  | "onMaterialsAndLabor"
  | "onCost"
  | "ofPrice"
  | "beforeTax"
  | "onPrice"
  | "onMaterials"
  | "total";

/** The measure of a quantity; `foot` and `square foot` stand for the meter in a metric job. */
export type LineUnit =
  "sheet" | "board foot" | "cubic meter" | "pair" | "each" | "pack" | "length" | "area" | "hour" | "percent";

export interface Line {
  section: Section;
  what: What;
  quantity?: Rational;
  unit?: LineUnit;
  rate?: Rational;
  amount?: Rational;
}

/** A line whose amount is its quantity at its rate, or its percentage of what stands as its rate. */
export function charged(
  section: Section,
  what: What,
  quantity: Rational,
  unit: LineUnit | undefined,
  rate: Rational,
  decimals: number,
): Line & { amount: Rational } {
  const exact = multiply(quantity, rate);
  return {
    section,
    what,
    quantity,
    unit,
    rate,
    amount: rounded(unit === "percent" ? share(exact, 100) : exact, decimals),
  };
}

export const words = (which: Words): What => ({ kind: "words", words: which });
