import { openingCell } from "../workbook/support/bench-places";

/** Where things stand in the example, which is open on its sheet Job. */
export const WIDTH = openingCell("A", "Width");
export const WIDTHS = ["A", "B", "C"].map((opening) => openingCell(opening, "Width"));
export const HEIGHT = openingCell("A", "Height");
export const DEPTH = openingCell("A", "Depth");

/** The width of the first drawer's box: on side-mount slides an inch less than its opening (common practice). */
export const BOX_WIDTH = "Plan!F6";

/** A cell that is free, and has cells free beside and below it. */
export const FREE = "M8";
