import { setUpsOf } from "../core/drawer";
import { cellFunction, openings, plannedOrFault, standards } from "./calls";
import { table } from "./cells";
import { setUpRows } from "./words";

/**
 * Lists every saw setting of a job once, in the order to cut, with all pieces that it serves (the makers' manuals and local codes come first).
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @returns {any[][]} A table: Step, Operation, Setting, Value (in the unit), Pieces, Parts; cautions stand between the steps and have no number
 * @throws #VALUE! or #N/A where a table cannot be read or any opening cannot be planned, or the kerf is wider than a groove
 * @example =DRAWER.SETUPS({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,23.25,1}) // => {"Step","Operation","Setting","Value","Pieces","Parts";"","Caution",…;"","Caution",…;1,"Rip","Fence",25.5,4,"Side B1; Box front B1; Box back B1";…}
 * @source common practice: batch every piece that shares one saw setting
 */
export function SETUPS(openings: any[][], standards?: any[][]): any[][] {
  return call([openings, standards]);
}

const call = cellFunction([openings, standards], ([, { job }], unit) =>
  table(HEADINGS, setUpRows(setUpsOf(plannedOrFault(job), unit), unit)),
);

const HEADINGS = ["Step", "Operation", "Setting", "Value", "Pieces", "Parts"];
