import type { Drawer, Front, Size } from "../core/drawer";
import type { Unit } from "../core/length";
import { cellFunction, openings, rowsOfOpenings, standards } from "./calls";
import { lengthResult, table, type CellResult } from "./cells";

/**
 * Plans every drawer of a job, from the openings as measured and the shop's standards, one row a drawer or false front.
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, left to right: Opening, Width, Height, Depth, Drawers; also Cabinet, Quantity, Case width, Box heights
 * @param {any[][]} [standards] Two columns, name and value, of what differs from the defaults; its unit is in (default) or mm
 * @returns {any[][]} A table: Drawer, Opening, Front width, Front height, Front bottom, Box width, Box height, Box depth, Box bottom, Slide length, Slide centerline, Inside width, Inside depth, Inside height, in the unit, heights up from the floor of the opening
 * @throws #VALUE! where a table cannot be read (openings take any standard's name as a heading too, for openings that differ); an opening that cannot be planned gives one row of errors, #N/A where no slide fits, and the others are right
 * @example =DRAWER.PLAN({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,23.25,1}) // => {"Drawer","Opening","Front width","Front height","Front bottom","Box width",…;"B1","B",25.375,27.625,-0.75,23,…}
 * @source common practice: the defaults of the standards
 */
export function PLAN(openings: any[][], standards?: any[][]): any[][] {
  return call([openings, standards]);
}

const call = cellFunction([openings, standards], ([, { job }], unit) =>
  table(
    HEADINGS,
    rowsOfOpenings(job, HEADINGS.length, 2, ({ opening, falseFronts, drawers }) => [
      ...falseFronts.map(({ label, front }) => [label, opening.label, ...filled(sizesOfFront(front), 9, unit)]),
      ...drawers.map((drawer) => [drawer.label, opening.label, ...filled(sizes(drawer), 0, unit)]),
    ]),
  ),
);

const HEADINGS = [
  "Drawer",
  "Opening",
  "Front width",
  "Front height",
  "Front bottom",
  "Box width",
  "Box height",
  "Box depth",
  "Box bottom",
  "Slide length",
  "Slide centerline",
  "Inside width",
  "Inside depth",
  "Inside height",
];

const sizesOfFront = ({ width, height, bottom }: Front) => [width, height, bottom];

const sizes = ({ front, stock, ...drawer }: Drawer) => [
  ...sizesOfFront(front),
  stock.width,
  drawer.boxHeight,
  stock.depth,
  drawer.boxBottom,
  stock.slide,
  drawer.slideCenterline,
  stock.insideWidth,
  stock.insideDepth,
  drawer.insideHeight,
];

/** Sizes as cells, and so many blanks behind them. */
const filled = (all: readonly (Size | undefined)[], blanks: number, unit: Unit): CellResult[] => [
  ...all.map((size) => (size ? lengthResult(size.value, unit) : "")),
  ...Array.from({ length: blanks }, () => ""),
];
