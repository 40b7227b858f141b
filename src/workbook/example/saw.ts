import type { SheetDefinition } from "../author/index";
import { cell, gap, heading, row, tall } from "./cells";
import type { Style } from "./styles";

const groove = (title: string, stock: string) =>
  tall(27, cell("section", title), cell("column", null), cell("column", stock));

/** The passes of one groove, spilled below their own headings. */
const passes = (thickness: string) => [
  row(cell("key", `=DRAWER.GROOVEPASSES(${thickness},$B$5,$B$6,Bench!$B$25)`), cell("unit", null), cell("unit", null)),
  ...Array.from({ length: 5 }, () => row(cell("pass", null), cell("result", null), cell("result", null))),
];

const stop = (part: string, lengths: string[]) =>
  row(cell("label", part), ...lengths.map((ref) => cell("resultWord", `=DRAWER.TAPE(${ref})`)));

/** Fence and blade for the grooves, stops for the crosscuts. */
export const SAW: SheetDefinition<Style> = {
  name: "Saw",
  widths: [27, 14, 14, 14, 54],
  selected: "B5",
  merged: ["A1:E1", "A2:E2", "A3:E3", "C5:E5", "C6:E6"],
  rows: [
    tall(36, cell("title", "At the saw")),
    tall(
      50,
      cell(
        "caution",
        "Unplug the saw before the blade is touched. Groove with the guard that the saw’s makers give for it, a push block in each hand and the fence locked; stand aside of the cut. These numbers know nothing of your saw: its manual and your local codes come first.",
      ),
    ),
    row(cell("subtitle", "First cut a test piece from the same stock, and try the bottom in it. All in inches.")),
    heading("Blade", ["", "", ""]),
    row(cell("label", "Kerf"), cell("input", 0.125), cell("note", "Measured in a test cut, not read off the blade.")),
    row(
      cell("label", "Groove offset"),
      cell("input", 0.25),
      cell("note", "From the side’s lower edge to the groove’s lower cheek."),
    ),
    gap(),
    groove("Grooves for A and B", '=DRAWER.TAPE(Bench!B12)&" bottoms"'),
    ...passes("Bench!$B$12"),
    gap(),
    groove("Grooves for C", '=DRAWER.TAPE(Bench!D12)&" bottoms"'),
    ...passes("Bench!$D$12"),
    gap(),
    heading("Crosscut stops", ["A", "B", "C"], "As the tape reads, to the nearest 1/16"),
    stop("Sides", ["Bench!B31", "Bench!C31", "Bench!D31"]),
    stop("Box front and back", ["Bench!B32", "Bench!C32", "Bench!D32"]),
    stop("Bottoms, width", ["Bench!B33", "Bench!C33", "Bench!D33"]),
    stop("Bottoms, depth", ["Bench!B34", "Bench!C34", "Bench!D34"]),
  ],
};
