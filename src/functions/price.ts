import { toDouble } from "../core/length";
import { cellFunction, drawersForAll, QUOTE_ARGUMENTS, quoteFor } from "./calls";

/**
 * Gives the total of a job's quote as one number, to fill a what-if grid with.
 * @customfunction
 * @group Money
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} standards Two columns, name and value, as in PLAN
 * @param {any[][]} stock As in QUOTE
 * @param {any[][]} rates Two columns, name and value, as in QUOTE
 * @param {any} [drawers] A count, or a list such as 5 1/2; 1 part, instead of that of every opening, which then needs none; blank: their own
 * @returns {any} The total that QUOTE shows (tax and contracts are for your own adviser)
 * @throws as QUOTE
 * @example =DRAWER.PRICE({"Width","Height","Depth","Drawers";18,20,22,2},"",{"Length","Width","Price";96,48,60},{"slide price",18.4;"pull price",6.25;"screw price",0.06;"margin",40;"tax",7}) // => 200.91
 * @source as QUOTE
 */
export function PRICE(openings: any[][], standards: any[][], stock: any[][], rates: any[][], drawers?: any): any {
  return call([openings, standards, stock, rates, drawers]);
}

const call = cellFunction([...QUOTE_ARGUMENTS, drawersForAll], ([, job, stock, rates]) =>
  toDouble(quoteFor(job, stock, rates).total),
);
