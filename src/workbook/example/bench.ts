import type { SheetDefinition } from "../author/index";
import { acrossOpenings as across, cell, gap, heading, row, tall } from "./cells";
import type { Style } from "./styles";

const OPENINGS = ["A", "B", "C"];

/** The same formula for each opening, written for column B. */
const each = (formula: string): string[] =>
  ["B", "C", "D"].map((column) => formula.replace(/(?<![$A-Z])B(?=\d)/g, column));

/** One number for the whole cabinet. */
const whole = (label: string, style: Style, content: string | number, note = "") =>
  row(cell("label", label), cell(style, content), null, null, cell("note", note));

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
    across("Bottom fit", "inputWord", ["grooved", "grooved", "open back"], "grooved, open back or applied."),
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
    across("Box width", "result", each("=DRAWER.BOXWIDTH(B7,$B$26)"), "Opening less the slides’ clearance."),
    across("Slide length", "result", each("=DRAWER.SLIDELENGTH(B9)"), "The longest that leaves 1/2 in behind it."),
    across("Sides, length", "result", each("=DRAWER.SIDELENGTH(B30,B11)"), "As deep as the slide is long."),
    across(
      "Box front and back, length",
      "result",
      each("=DRAWER.ENDLENGTH(B29,B11)"),
      "Butt joints: between the sides.",
    ),
    across(
      "Bottom, width",
      "result",
      each("=DRAWER.BOTTOMWIDTH(B29,B11,$B$25)"),
      "Between the sides, plus grooves, less 1/16 of play.",
    ),
    across(
      "Bottom, depth",
      "result",
      each("=DRAWER.BOTTOMDEPTH(B30,B11,$B$25,,B13)"),
      "An open back lets it run out under the back.",
    ),
    gap(),
    heading("Fronts", OPENINGS, "Where it comes from"),
    across(
      "Front width",
      "result",
      ["=B7+($B$16-$B$20)+($B$16-$B$17)/2", "=C7+$B$16-$B$17", "=D7+($B$16-$B$17)/2+($B$16-$B$20)"],
      "Opening, and what it covers of the cabinet’s edges.",
    ),
    across("… on the tape", "resultWord", each("=DRAWER.TAPE(B37)"), "To the nearest 1/16."),
    across("Face height", "result", each("=B8+2*$B$16-$B$18-$B$19"), "Opening, cabinet top and bottom, less reveals."),
    across(
      "Fronts in it",
      "number",
      ["=ROWS(Drawers!C5#)", "=ROWS(Drawers!C13#)", "=ROWS(Drawers!C21#)"],
      "Their heights stand on the sheet Drawers.",
    ),
  ],
};
