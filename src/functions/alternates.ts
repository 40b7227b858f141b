import { alternateRows, alternates, cellFunction, openings, ratesIfGiven, stock } from "./calls";
import { table } from "./cells";

/**
 * Compares alternates for the same openings side by side, such as half-inch and three-quarter sides, or overlay and inset fronts.
 * @customfunction
 * @group Money
 * @param {any[][]} openings One row an opening, as in PLAN; a column for a standard there holds for every alternate
 * @param {any[][]} standards A row of the alternates' names, the base first, then one row a standard; a blank or a 0: as in the base (none is zero)
 * @param {any[][]} stock As in QUOTE
 * @param {any[][]} [rates] As in QUOTE; blank: no costs
 * @returns {any[][]} A table, one row an alternate: Alternate, Drawers, Sheets, Total, Total against base, Inside volume (cubic feet or liters), Volume against base, Wrong, Doubtful, First finding (as in CHECKS: what is wrong before what is doubtful, and what not all alternates have before the rest)
 * @throws #VALUE! where a table cannot be read (the first column of standards holds their names, each other column an alternate's values); an alternate that cannot be planned or priced gives error cells and the reason as its finding, and the others are right
 * @example =DRAWER.ALTERNATES({"Width","Height","Depth","Drawers";18,8,23.25,1},{"","Thin","Thick";"side thickness",0.5,0.75},{"Length","Width","Price";96,48,60},{"slide price",18.4;"pull price",6.25;"screw price",0.06}) // => {"Alternate","Drawers","Sheets","Total",…;"Thin",1,1,86.09,…;…}
 * @source common practice: bids in the building trades name a base and its alternates
 */
export function ALTERNATES(openings: any[][], standards: any[][], stock: any[][], rates?: any[][]): any[][] {
  return call([openings, standards, stock, rates]);
}

const call = cellFunction([openings, alternates, stock, ratesIfGiven], ([openings, alternates, stock, rates], unit) =>
  table(HEADINGS, alternateRows(alternates, { openings, unit, stock, rates })),
);

const HEADINGS = [
  "Alternate",
  "Drawers",
  "Sheets",
  "Total",
  "Total against base",
  "Inside volume",
  "Volume against base",
  "Wrong",
  "Doubtful",
  "First finding",
];
