import type { SheetDefinition } from "../author/definition";
import { cell, gap, heading, row, spilled, tall } from "./cells";
import { OPENINGS, STANDARDS } from "./job";
import type { Style } from "./styles";

/** How far down the settings may grow. */
const ROOM = 60;

/** What the blade cuts, and every setting of the saw for the whole job. */
export const SAW: SheetDefinition<Style> = {
  name: "Saw",
  widths: [15, 16, 84, 11, 9, 70],
  selected: "B5",
  merged: ["A1:F1", "A2:F2", "A3:F3"],
  page: { orientation: "landscape", repeated: 8 },
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
    heading("Blade", [""]),
    row(cell("label", "Kerf"), cell("input", 0.125), cell("note", "Measured in a test cut, not read off the blade.")),
    row(
      cell("label", "Groove offset"),
      cell("input", 0.375),
      cell("note", "From the side’s lower edge to the groove’s lower cheek."),
    ),
    gap(),
    ...spilled(
      `=DRAWER.SETUPS(${OPENINGS},${STANDARDS})`,
      ["columnText", "columnText", "columnText", "column", "column", "columnText"],
      ["pass", "label", "finding", "result", "number", "finding"],
      ROOM,
      50,
    ),
  ],
};
