import { cellFunction, laidOut, LAYOUT_HEADINGS, layoutRows, SHEET_ARGUMENTS } from "./calls";
import { lengthResult, table, type CellResult } from "./cells";

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
 * Lays out a list of parts on sheets, each part with its place measured from the sheet's lower left corner.
 * @customfunction
 * @group Sheets
 * @param {any[][]} parts Length, Width, Qty; where needed Part, Drawer, Thickness, Material, Grain, Grain group, as PARTS gives it; or LAYOUT's table
 * @param {any[][]} stock What to cut from: Length, Width and, where needed, Material, Thickness, Price, Available (blank: no limit), Grain
 * @param {any} [kerf] Width of the blade's cut: 1/8 in, 3.2 mm (default); none is zero
 * @param {any} [trim] Taken off each edge of a sheet first, 0 or more: 0 (default)
 * @param {SheetEffort} [effort] quick, standard (default) or thorough
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any[][]} A table, one row a piece: Sheet (numbered), Material, Thickness, Part, Drawer, From left, From bottom, Length (along the sheet's length), Width, Turned (TRUE where the part's length lies across)
 * @throws #N/A where a part fits no stock of its material and thickness, or the stock does not suffice; #VALUE! where a table cannot be read (the grain of a part is length, width or any, of stock length or none)
 * @example =DRAWER.LAYOUT({"Part","Length","Width","Qty";"Shelf",48,48,2},{"Length","Width";97,48}) // => {"Sheet","Material","Thickness","Part","Drawer","From left","From bottom","Length","Width","Turned";1,"","","Shelf","",0,0,48,48,FALSE;1,"","","Shelf","",48.125,0,48,48,FALSE}
 * @source common practice: a saw cuts sheets from edge to edge
 */
export function LAYOUT(
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
  const rows = layoutRows(groups).map(({ sheet, material, thickness, part, drawer, turned, ...lies }): CellResult[] => [
    sheet,
    material,
    thickness ? lengthResult(thickness, unit) : "",
    part,
    drawer,
    ...[lies.fromLeft, lies.fromBottom, lies.length, lies.width].map((size) => lengthResult(size, unit)),
    turned,
  ]);
  return table(LAYOUT_HEADINGS, rows);
});
