import type { SheetDefinition } from "../author/definition";
import { acrossOpenings as across, cell, gap, heading, row, tall } from "./cells";
import { inches, opening, typed } from "./job";
import type { Style } from "./styles";

const OPENINGS = ["A", "B", "C"];

/** A formula for each opening, by its column and its number. */
const each = (formula: (column: string, index: number) => string): string[] => ["B", "C", "D"].map(formula);

/** One number for the whole cabinet. */
const whole = (label: string, style: Style, content: string | number, note = "") =>
  row(cell("label", label), cell(style, content), null, null, cell("note", note));

const boxWidth = (_: string, i: number): string =>
  `=DRAWER.BOXWIDTH(${opening(i, "width")},IF(${typed("side clearance")}="",${typed("slide")},${typed("side clearance")}))`;

/** A bottom that is as deep as the box is an applied one, and as wide as the box too. */
const bottomWidth = (column: string, i: number): string =>
  `=IF(${column}34=${column}30,${column}29,DRAWER.BOTTOMWIDTH(${column}29,${opening(i, "Side thickness")},${typed("groove depth")}))`;

const bottomDepth = (column: string, i: number): string =>
  `=DRAWER.BOTTOMDEPTH(${column}30,${opening(i, "Side thickness")},${typed("groove depth")},,${opening(i, "Bottom fit")})`;

/** What a front covers: all of the cabinet's edge at its end, half of what the gap leaves of a partition. */
const end = `${inches("cabinet thickness")}-${inches("end reveal")}`;
const inner = `${inches("cabinet thickness")}-${inches("front gap")}`;
const shares = [`(${end})+(${inner})/2`, inner, `(${inner})/2+(${end})`];

const faceHeight = (_: string, i: number): string =>
  `=${opening(i, "height")}+2*${inches("cabinet thickness")}-${inches("top reveal")}-${inches("bottom reveal")}`;

const fronts = (column: string, i: number): string =>
  `=ROWS(DRAWER.FRONTHEIGHTS(${column}39,${opening(i, "Drawers")},${typed("front gap")},,,${typed("front step")}))`;

/** Where measuring ends and choosing begins: everything that the other sheets are worked out from. */
export const BENCH: SheetDefinition<Style> = {
  name: "Bench",
  widths: [25, 19, 18, 18, 45],
  selected: "B7",
  merged: ["A1:E1", "A2:E2", "B4:D4"],
  rows: [
    tall(36, cell("title", "A bicycle workshop’s parts bench")),
    row(cell("subtitle", "Three openings side by side in one cabinet. An invented job, in inches.")),
    gap(),
    tall(
      22,
      cell("legendInput", "Yours to change"),
      cell("legendResult", "Worked out"),
      cell("legendResult", null),
      cell("legendResult", null),
      cell("note", "Type lengths as 23 7/16, 7/16 or 595 mm."),
    ),
    gap(),
    heading("Openings", OPENINGS, "How to measure"),
    across("Width", "input", [18, 24, 30], "At front, middle and back; the least counts."),
    across("Height", "input", [26.25, 26.25, 26.25], "Left and right; the least counts."),
    across("Inside depth", "input", [23.25, 23.25, 23.25], "From the front edge to the first thing in the way."),
    across(
      "Drawers, from the top",
      "inputWord",
      ["5 1/2; 1 part; 1 part", 3, "1 part; 2 parts"],
      "A count; or fixed heights and parts of the rest.",
    ),
    across("Side thickness", "input", [0.5, 0.5, 0.75], "As the caliper has it, not as it is sold."),
    across("Bottom thickness", "input", [0.25, 0.25, 0.5], "Likewise."),
    across("Bottom fit", "inputWord", ["grooved", "grooved", "under back"], "grooved, under back or applied."),
    gap(),
    heading("For all of them", ["", "", ""]),
    whole("Cabinet thickness", "input", 0.75, "Ends, top, bottom and partitions."),
    whole("Gap between fronts", "input", 0.125),
    whole("Top reveal", "input", 0.125, "How far fronts stay short of the cabinet’s top."),
    whole("Bottom reveal", "input", 0),
    whole("End reveal", "input", 0.0625, "The same at the cabinet’s two ends."),
    whole("Space below a box", "input", 0.5),
    whole("Space above a box", "input", 0.25),
    whole("Box height step", "input", 0.25, "Box heights are rounded down to it."),
    whole("Front height step", "input", 0.0625, "Shared fronts likewise; spare steps go lowest."),
    whole("Groove depth", "input", 0.25),
    whole("Slide", "inputWord", "side-mount", "Or center-mount, wood runner, a clearance per side."),
    gap(),
    heading("Boxes", OPENINGS, "Where it comes from"),
    across("Box width", "result", each(boxWidth), "Opening less the slides’ clearance."),
    across(
      "Slide length",
      "result",
      each((_, i) => `=DRAWER.SLIDELENGTH(${opening(i, "depth")})`),
      "The longest that leaves 1/2 in behind it.",
    ),
    across(
      "Sides, length",
      "result",
      each((column, i) => `=DRAWER.SIDELENGTH(${column}30,${opening(i, "Side thickness")})`),
      "As deep as the slide is long.",
    ),
    across(
      "Box front and back, length",
      "result",
      each((column, i) => `=DRAWER.ENDLENGTH(${column}29,${opening(i, "Side thickness")})`),
      "Butt joints: between the sides.",
    ),
    across("Bottom, width", "result", each(bottomWidth), "Between the sides, plus grooves, less 1/16 of play."),
    across("Bottom, depth", "result", each(bottomDepth), "Under the back it runs out behind."),
    gap(),
    heading("Fronts", OPENINGS, "Where it comes from"),
    across(
      "Front width",
      "result",
      each((_, i) => `=${opening(i, "width")}+${shares[i]!}`),
      "Opening, and what it covers of the cabinet’s edges.",
    ),
    across(
      "… on the tape",
      "resultWord",
      each((column) => `=DRAWER.TAPE(${column}37)`),
      "To the nearest 1/16.",
    ),
    across("Face height", "result", each(faceHeight), "Opening, cabinet top and bottom, less reveals."),
    across("Fronts in it", "number", each(fronts), "Their heights stand on the sheet Drawers."),
  ],
};
