import { multiply, toDouble, showNumber, type Rational, type Unit as LengthUnit } from "../core/length";
import { rounded, solidQuantity, type SolidStock } from "../core/money";
import { materialOf, stockUses, type Least, type SolidGroup } from "../core/sheets";
import { cellFunction, laidOut, SHEET_ARGUMENTS, type LaidOutGroup } from "./calls";
import { formatted, lengthResult, table, type CellResult } from "./cells";

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
 * Tells how many sheets to buy for a list of parts, every cut running edge to edge, and how near that is to the least possible.
 * @customfunction
 * @group Sheets
 * @param {any[][]} parts Length, Width, Qty; where needed Part, Drawer, Thickness, Material, Grain, Grain group, as PARTS gives it; or LAYOUT's table
 * @param {any[][]} stock What to cut from: Length, Width; where needed Material, Thickness, Price, Available (blank: no limit), Grain, Sold by, Waste
 * @param {any} [kerf] Width of the blade's cut: 1/8 in, 3.2 mm (default); none is zero
 * @param {any} [trim] Taken off each edge of a sheet first, 0 or more: 0 (default)
 * @param {SheetEffort} [effort] quick, standard (default) or thorough
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {any[][]} A table, one row a size of stock used: Material, Thickness, Sheet (of solid wood its measure), Sheets (its quantity with waste), Least possible (proven; sheets for one size, else cost, or area without prices), Parts, Yield, Cost, Largest offcut
 * @throws #N/A where a part fits no stock of its material and thickness, or the stock does not suffice; #VALUE! where a table cannot be read (the grain of a part is length, width or any, of stock length or none; stock is sold by the sheet, or solid by the board foot or cubic meter, with its waste in % added and its rough thickness, 1 for 4/4)
 * @example =DRAWER.SHEETS({"Length","Width","Qty";48,24,4},{"Length","Width";96,48},"none") // => {"Material","Thickness","Sheet","Sheets","Least possible","Parts","Yield","Cost","Largest offcut";"","","96 × 48",1,1,4,1,"",""}
 * @source common practice: a saw cuts sheets from edge to edge
 */
export function SHEETS(
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
  const { groups, solid, effort, unit } = laidOut(values);
  return table(HEADINGS, [
    ...groups.flatMap((group) => rowsOf(group, unit)),
    ...solid.map((rows) => solidRow(rows, unit)),
    ...(groups.some(({ solution }) => solution.isShort) ? [shortRow(effort)] : []),
  ]);
});

const HEADINGS = [
  "Material",
  "Thickness",
  "Sheet",
  "Sheets",
  "Least possible",
  "Parts",
  "Yield",
  "Cost",
  "Largest offcut",
];

function rowsOf({ parts, stock, solution }: LaidOutGroup, unit: LengthUnit): CellResult[][] {
  const size = ({ length, width }: Pick<LaidOutGroup["stock"][number], "length" | "width">): string =>
    `${showNumber(length, unit)} × ${showNumber(width, unit)}`;
  const priced = stock.some(({ price }) => price !== undefined);
  return stockUses(solution).map((use, i) => {
    const row = stock[use.stock]!;
    return [
      materialOf(row, parts),
      row.thickness ? lengthResult(row.thickness, unit) : "",
      size(row),
      use.sheets,
      i === 0 ? formatted(toDouble(solution.least.value), LEAST[solution.least.measure]) : "",
      use.parts,
      toDouble(use.yield),
      priced ? cents(use.cost) : "",
      use.largestOffcut ? size(use.largestOffcut) : "",
    ];
  });
}

/** What a bound is of, beside the number that formulas read. */
const LEAST: Record<Least["measure"], string> = {
  sheets: '"proven least: "0',
  cost: '"proven least cost: "0.00',
  area: '"proven least area: "0',
};

/** So many parts are not searched for as long as the effort asks, since a spreadsheet does not wait so long. */
const shortRow = (effort: string): CellResult[] => [
  `Not searched as long as ${effort} asks, for there are many parts`,
  ...Array<string>(HEADINGS.length - 1).fill(""),
];

/** Solid wood is laid out on nothing: its row tells how much to buy, so that it is not forgotten. */
function solidRow({ parts, stock }: SolidGroup<SolidStock>, unit: LengthUnit): CellResult[] {
  const quantity = solidQuantity(parts, stock, unit);
  return [
    materialOf(stock, parts),
    stock.thickness ? lengthResult(stock.thickness, unit) : "",
    stock.soldBy,
    toDouble(quantity),
    "",
    parts.reduce((sum, part) => sum + part.quantity, 0),
    "",
    stock.price ? cents(multiply(quantity, stock.price)) : "",
    "",
  ];
}

/** No table of rates says here how many decimals the currency has: two are usual. */
const cents = (amount: Rational): number => toDouble(rounded(amount, 2));
