import { safeSizes } from "../core/length";
import { sawCuts } from "../core/sheets";
import { cellFunction, laidOut, SHEET_ARGUMENTS, stockCells } from "./calls";
import { lengthResult, table, type CellResult } from "./cells";
import { cutWords } from "./words";

/** @customenum {string} */
enum SheetEffort {
  /** A few hundred ways of laying out, the best of them */
  quick = "quick",
  /** Goes on improving: the usual choice */
  standard = "standard",
  /** Improves for about two seconds of work on 100 parts */
  thorough = "thorough",
}

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Gives the order in which to cut sheets into parts at the table saw (guards, push blocks and supports as the saw's manual says).
 * @customfunction
 * @group Sheets
 * @param {any[][]} parts Length, Width, Qty; where needed Part, Drawer, Thickness, Material, Grain, Grain group, as PARTS gives it; or LAYOUT's table
 * @param {any[][]} stock What to cut from: Length, Width and, where needed, Material, Thickness, Price, Available (blank: no limit), Grain
 * @param {any} [kerf] Width of the blade's cut: 1/8 in, 3.2 mm (default); none is zero
 * @param {any} [trim] Taken off each edge of a sheet first, 0 or more: 0 (default)
 * @param {SheetEffort} [effort] quick, standard (default) or thorough
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any[][]} A table, one row a cut: Sheet, Material, Thickness, Step, Cut (rip along the sheet's length, or crosscut), Setting (size kept), From (the piece in hand), Gives (what comes of it, and a caution where the piece is too small to be guided safely)
 * @throws #N/A where a part fits no stock of its material and thickness, or the stock does not suffice; #VALUE! where a table cannot be read (the grain of a part is length, width or any, of stock length or none)
 * @example =DRAWER.CUTS({"Part","Length","Width","Qty";"Shelf",48,48,2},{"Length","Width";97,48}) // => {"Sheet","Material","Thickness","Step","Cut","Setting","From","Gives";1,"","",1,"crosscut",48,"sheet 97 × 48","Shelf 48 × 48; rest of the sheet 48 7/8 × 48";…}
 * @source common practice: rips first, equal fence settings kept together
 */
export function CUTS(
  parts: any[][],
  stock: any[][],
  kerf?: any,
  trim?: any,
  effort?: SheetEffort,
  unit?: Unit,
): any[][] {
  return call([parts, stock, kerf, trim, effort, unit]);
}

const call = cellFunction(SHEET_ARGUMENTS, (values) => {
  const { groups, unit } = laidOut(values);
  const safe = safeSizes(unit);
  let before = 0;
  const rows = groups.flatMap(({ parts, stock, solution }): CellResult[][] => {
    const first = before;
    before += solution.sheets.length;
    return sawCuts(solution, safe).map((cut) => [
      first + cut.sheet,
      ...stockCells(stock[solution.sheets[cut.sheet - 1]!.stock]!, parts, unit),
      cut.step,
      cut.kind,
      lengthResult(cut.setting, unit),
      ...cutWords(cut, { parts, stock }, unit),
    ]);
  });
  return table(HEADINGS, rows);
});

const HEADINGS = ["Sheet", "Material", "Thickness", "Step", "Cut", "Setting", "From", "Gives"];
