import { column } from "./tables";

/** One drawer behind one front, and nothing that costs but what a test adds. */
export const ONE_DRAWER = [
  ["Width", "Height", "Depth", "Drawers"],
  [18, 8, 23.25, 1],
];

/** Everything that one drawer needs, free of charge: a client who brings it all. */
export const FREE = { "slide price": "none", "pull price": "none", "screw price": "none" };

/** A table of rates. */
export const rates = (values: Record<string, unknown>): unknown[][] => Object.entries(values);

/** Sheets of one size for every part, at that price. */
export const sheetsAt = (price: unknown): unknown[][] => [
  ["Length", "Width", "Price"],
  [96, 48, price],
];

/** Sums of a column of amounts, in whole thousandths, so that binary dust adds nothing. */
export const sum = (amounts: readonly unknown[]): number =>
  amounts.reduce<number>((total, amount) => total + Math.round((amount === "" ? 0 : (amount as number)) * 1e4), 0) /
  1e4;

/** The amounts that add up to the total: all but subtotals, the price before tax and the total itself. */
export const ownAmounts = (quote: unknown[][]): unknown[] =>
  quote
    .slice(1)
    .filter(([section, item]) => item !== "Subtotal" && section !== "Price" && section !== "Total")
    .map((row) => row[5]);

/** The lines of a section, its subtotal left out, as item, quantity, unit, rate and amount. */
export const lines = (quote: unknown[][], section: string): unknown[][] =>
  quote.filter(([name, item]) => name === section && item !== "Subtotal").map((row) => row.slice(1));

/** The last amount of a section. */
export const amountOf = (quote: unknown[][], section: string): unknown =>
  quote.filter(([name]) => name === section).at(-1)?.[5];

export const totalOf = (quote: unknown[][]): unknown => column(quote, "Amount").at(-1);
