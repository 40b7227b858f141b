import { hardwareOf } from "../core/drawer";
import { cellFunction, openings, plannedOrFault, standards } from "./calls";
import { table } from "./cells";
import { hardwareRow } from "./words";

/**
 * Lists what to buy for a job besides its sheets: slides, pulls, the screws of every joint by length, gauge and head, edge band, glue and blocking.
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @returns {any[][]} A table: Item, Size (in the unit), Qty, Unit (pair, each, foot or meter), Note
 * @throws #VALUE! or #N/A where a table cannot be read or any opening cannot be planned, so that nobody buys too little
 * @example =DRAWER.HARDWARE({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,23.25,1}) // => {"Item","Size","Qty","Unit","Note";"Side-mount slide",22,1,"pair","rated for 100 lb or more, box included (an estimate)";…}
 * @source common practice: two screws hold a front, four a wide one; 1/2 in stock takes 1 in pocket screws, 3/4 in stock 1 1/4 in; solid bottoms are screwed on through slots
 */
export function HARDWARE(openings: any[][], standards?: any[][]): any[][] {
  return call([openings, standards]);
}

const call = cellFunction([openings, standards], ([, { job }], unit) =>
  table(
    HEADINGS,
    hardwareOf(plannedOrFault(job)).map((item) => hardwareRow(item, unit)),
  ),
);

const HEADINGS = ["Item", "Size", "Qty", "Unit", "Note"];
