import { cellFunction, CHECKS_ARGUMENTS, everythingFound } from "./calls";
import { table } from "./cells";
import { wordingOf } from "./words";

/**
 * Lists what is wrong or doubtful in a job, each finding with its remedy, before anything is cut (loads, sag, movement and balance are estimates; local codes, makers' data and licensed practice decide).
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @param {any[][]} [stock] As in SHEETS: finds parts without stock, and sheets that do not suffice; blank: not checked
 * @param {any[][]} [rates] As in QUOTE: finds prices that are missing; blank: not checked
 * @returns {any[][]} A table: Where, Level (wrong or doubtful), Finding, Remedy; one row All clear where there is nothing
 * @throws nothing of its own: rows and tables that cannot be read are findings
 * @example =DRAWER.CHECKS({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,9,1}) // => {"Where","Level","Finding","Remedy";"B","wrong","Opening B: No slide fits: an inside depth of 9 in leaves 8 1/2 in, and the shortest slide is 10 in.",…}
 * @source common practice; ANSI/KCMA A161.1 for loads; NIST Voluntary Product Standard PS 1 for plywood
 */
export function CHECKS(openings: any[][], standards?: any[][], stock?: any[][], rates?: any[][]): any[][] {
  return call([openings, standards, stock, rates]);
}

const call = cellFunction(CHECKS_ARGUMENTS, (values, unit) => {
  const found = everythingFound(values).map((one) => [one.where, one.level, ...wordingOf(one, unit)]);
  return table(HEADINGS, found.length > 0 ? found : [["", "", "All clear", ""]]);
});

const HEADINGS = ["Where", "Level", "Finding", "Remedy"];
