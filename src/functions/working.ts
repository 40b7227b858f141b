import { planJob, workingOf } from "../core/drawer";
import { showNumber, type Rational } from "../core/length";
import { drawerLabel } from "./arguments";
import { cellFunction, openings, standards } from "./calls";
import { lengthResult, table } from "./cells";

/**
 * Shows how every size of one drawer came about, each with the sum that gave it, and the diagonals that prove it square.
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any} drawer The drawer's label as a text, such as "A1" or "7-1"
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @returns {any[][]} A table: Size, Value (in the unit), How (the sum in words and numbers)
 * @throws #VALUE! where a table cannot be read, or there is no such drawer; the fault of the drawer's opening where that cannot be planned
 * @example =DRAWER.WORKING({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,23.25,1},"B1") // => {"Size","Value","How";"Opening width",24,"as measured";"Opening height",26.25,"as measured";"Opening depth",23.25,"as measured";"Face lower edge",-0.75,"− cabinet thickness 3/4";…}
 * @source Euclid, Elements, book I, proposition 47, for the diagonals
 */
export function WORKING(openings: any[][], drawer: any, standards?: any[][]): any[][] {
  return call([openings, drawer, standards]);
}

const call = cellFunction([openings, drawerLabel("drawer"), standards], ([, label, { job }], unit) => {
  const write = (length: Rational): string => showNumber(length, unit);
  return table(
    HEADINGS,
    workingOf(job, planJob(job), label).map(({ name, value, how }) => [
      name,
      typeof value === "number" ? value : lengthResult(value, unit),
      how(write).replace(/= ≈/g, "≈"),
    ]),
  );
});

const HEADINGS = ["Size", "Value", "How"];
