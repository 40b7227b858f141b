import type { SheetDefinition } from "../author/definition";
import { cell, gap, row, tall } from "./cells";
import { inches, opening, typed } from "./job";
import type { Style } from "./styles";

const COUNTS = [2, 3, 4, 5, 6, 7];
const LETTERS = ["B", "C", "D", "E", "F", "G"];
const HEIGHTS = [24, `=${opening(0, "height")}`, 28, 30, 33];

const columns = (title: string, names: Style, contents: (string | number)[]) =>
  tall(27, cell("section", title), ...contents.map((content) => cell(names, content)));

/** What the fronts would be with another count. */
export const WHAT_IF: SheetDefinition<Style> = {
  name: "What if",
  widths: [27, 11, 11, 11, 11, 11, 11, 4],
  selected: "B9",
  merged: ["A1:G1", "A2:G2", "C4:G4", "C5:G5", "C6:G6", "C7:G7", "A26:G26"],
  rows: [
    tall(36, cell("title", "What if there were more?")),
    row(
      cell(
        "subtitle",
        "Front heights in inches, for one opening and every count of drawers. Counts can be changed too.",
      ),
    ),
    gap(),
    row(cell("label", "Face height"), cell("input", "=Bench!B39"), cell("note", "From the bench, or type another.")),
    row(cell("label", "Gap between fronts"), cell("input", `=${typed("front gap")}`), cell("note", "Likewise.")),
    row(
      cell("label", "Growing downward"),
      cell("inputWord", "arithmetic"),
      cell("note", "equal, arithmetic or geometric."),
    ),
    row(
      cell("label", "Each taller by"),
      cell("input", 0.75),
      cell("note", "A length; for geometric a factor, such as 1.2."),
    ),
    gap(),
    columns("Drawers", "inputCount", COUNTS),
    ...Array.from({ length: 8 }, (_, i) =>
      row(
        cell("label", i === 0 ? "Front 1, at the top" : `Front ${i + 1}`),
        ...LETTERS.map((letter) =>
          cell("result", i === 0 ? `=DRAWER.GRADUATED($B$4,${letter}9,$B$6,$B$7,$B$5)` : null),
        ),
      ),
    ),
    row(
      cell("key", "Top front, on the tape"),
      ...LETTERS.map((letter) => cell("resultWord", `=DRAWER.TAPE(INDEX(${letter}10#,1),16,"down")`)),
    ),
    gap(),
    columns("Equal, by opening height", "inputCount", COUNTS),
    ...HEIGHTS.map((height, i) =>
      row(
        cell("input", height),
        ...LETTERS.map((letter) =>
          cell(
            "resultWord",
            `=DRAWER.TAPE(DRAWER.FRONTHEIGHT(DRAWER.LENGTH($A${21 + i})+2*${inches("cabinet thickness")},${letter}$20,$B$5,${typed("top reveal")},${typed("bottom reveal")}))`,
          ),
        ),
      ),
    ),
    row(cell("subtitle", "As the tape reads, to the nearest 1/16; the heights above are exact.")),
  ],
};
