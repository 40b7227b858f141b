import { cellFunction, QUOTE_ARGUMENTS, quoteFor } from "./calls";
import { table } from "./cells";
import { quoteRows } from "./words";

/**
 * Quotes a job from its openings, the shop's standards, stock and rates, line by line down to the total.
 * @customfunction
 * @group Money
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} standards Two columns, name and value, as in PLAN; kerf, sheet trim and sheet effort are among them
 * @param {any[][]} stock As in SHEETS, each row with its Price; also Sold by (sheet, board foot, cubic meter) and Waste in %
 * @param {any[][]} rates Two columns, name and value: labor rate, minutes, prices, charge sheets, overhead, markup or margin, tax (7 is 7 %), extra …
 * @returns {any[][]} A table: Section, Item, Qty, Unit, Rate, Amount; each Amount is Qty at Rate (a % of the Rate), rounded half up (a discount away from 0), so that the column without its subtotals and its price adds up to the total; locking devices, blocking, washers and glue stand there uncharged, for no rate is theirs. The rates are currency decimals, labor rate (an hour), box minutes, front minutes, fitting minutes (a drawer), slide price (a pair), slide price and a length (of that alone), pull price, screw price, edge band price (a foot or meter), box finish price, front finish price (a square foot or meter of one face), charge sheets (whole, used), overhead, markup or margin, tax in % (7 is 7 %), tax on (all, materials, none), extra … (any number; a discount is below 0). Tax, labor law and the wording of contracts are for your own adviser
 * @throws #VALUE! or #N/A where a table cannot be read, an opening cannot be planned or cut from the stock, or a price or rate that the job needs is missing
 * @example =DRAWER.QUOTE({"Width","Height","Depth","Drawers";18,20,22,2},"",{"Length","Width","Price";96,48,60},{"slide price",18.4;"pull price",6.25;"screw price",0.06;"margin",40;"tax",7}) // => {"Section","Item","Qty","Unit","Rate","Amount";"Sheets","Plywood, 96 × 48 in",1,"sheet",60,60;"Sheets","Subtotal","","","",60;"Hardware","Side-mount slide, 20 in",2,"pair",18.4,36.8;…}
 * @source accounting identity: price = cost / (1 - margin); Streamlined Sales and Use Tax Agreement, section 324, for the rounding of tax
 */
export function QUOTE(openings: any[][], standards: any[][], stock: any[][], rates: any[][]): any[][] {
  return call([openings, standards, stock, rates]);
}

const call = cellFunction(QUOTE_ARGUMENTS, ([, job, stock, rates], unit) =>
  table(HEADINGS, quoteRows(quoteFor(job, stock, rates), unit)),
);

const HEADINGS = ["Section", "Item", "Qty", "Unit", "Rate", "Amount"];
