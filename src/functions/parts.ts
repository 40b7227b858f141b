import { cutList } from "../core/drawer";
import { flag } from "./arguments";
import { cellFunction, openings, plannedOrFault, standards } from "./calls";
import { grainColumns, lengthResult, table } from "./cells";

/**
 * Lists every piece to cut for a job, with its size, stock and grain.
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @param {any} [grouped] TRUE (default): pieces equal in all but their drawer stand in one row; FALSE: one row a part and drawer
 * @returns {any[][]} A table: Part, Drawer, Qty, Length (with the grain), Width, Thickness, Material, Grain, and Grain group where fronts match (with Grain gap, what is cut away between them, where that is more than the kerf, Grain row, stacked where their grain runs from side to side, and of a panel Grain line and Line gap); cut sizes, in the unit
 * @throws #VALUE! or #N/A where a table cannot be read or any opening cannot be planned, so that nobody cuts too little
 * @example =DRAWER.PARTS({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,23.25,1}) // => {"Part","Drawer","Qty","Length","Width",…;"Side","B1",2,22,25.5,…;"Box front","B1",1,22,25.5,…;…}
 * @source common practice: a cut list gives length with the grain first
 */
export function PARTS(openings: any[][], standards?: any[][], grouped?: any): any[][] {
  return call([openings, standards, grouped]);
}

const call = cellFunction([openings, standards, flag("grouped", true)], ([, { job }, grouped], unit) => {
  const parts = cutList(plannedOrFault(job), grouped);
  const matched = grainColumns(parts, unit);
  return table(
    [...HEADINGS, ...matched.headings],
    parts.map(({ name, drawers, quantity, length, width, thickness, material, grain, ...more }) => [
      name,
      drawers.join(", "),
      quantity,
      lengthResult(length, unit),
      lengthResult(width, unit),
      lengthResult(thickness, unit),
      material,
      grain,
      ...matched.cells(more),
    ]),
  );
});

const HEADINGS = ["Part", "Drawer", "Qty", "Length", "Width", "Thickness", "Material", "Grain"];
