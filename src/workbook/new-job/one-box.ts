import type { SheetDefinition } from "../author/definition";
import { cell, gap, row, tall } from "./cells";
import type { Choices } from "./choices";
import { jobPlaces } from "./job-places";
import { pageOf } from "./page";
import type { Style } from "./styles";

/** What is typed: its name, what stands there at first, and how it is measured. */
const TYPED = {
  in: ["21 1/2", "22 3/4", "side-mount", "1/2", "1/4", "grooved"],
  mm: ["545", "580", "side-mount", "12", "6", "grooved"],
} as const;
const NAMES: readonly [name: string, note: string][] = [
  ["Opening width", "The least of front, middle and back."],
  ["Inside depth", "From the front edge to the first thing in the way."],
  ["Slide", "side-mount, center-mount, wood runner, or a clearance per side."],
  ["Side thickness", "As the caliper has it, not as it is sold."],
  ["Groove depth", "For the bottom, in sides and ends."],
  ["Bottom fit", "grooved, under back or applied."],
];
const TOP = 4;
const [WIDTH, DEPTH, SLIDE, SIDE, GROOVE, FIT] = NAMES.map((_, i) => `$B$${TOP + 1 + i}`) as [
  ...[string, string, string, string, string, string],
];

const SIZES_TOP = TOP + NAMES.length + 2;
const sizeAt = (i: number): string => `$B$${SIZES_TOP + 1 + i}`;
const [BOX_WIDTH, BOX_DEPTH] = [sizeAt(0), sizeAt(1)];

/** Each size by its function, and what it comes from. */
const sizes = (unit: string): [name: string, formula: string, note: string][] => [
  ["Box width", `=DRAWER.BOXWIDTH(${WIDTH},${SLIDE},${unit})`, "BOXWIDTH: the opening less the slides’ clearance."],
  ["Slide length", `=DRAWER.SLIDELENGTH(${DEPTH},,,,${unit})`, "SLIDELENGTH: the longest that leaves room behind it."],
  ["Sides, length", `=DRAWER.SIDELENGTH(${BOX_DEPTH},${SIDE},,,${unit})`, "SIDELENGTH: as deep as the slide is long."],
  [
    "Box front and back, length",
    `=DRAWER.ENDLENGTH(${BOX_WIDTH},${SIDE},,,${unit})`,
    "ENDLENGTH: with butt joints between the sides.",
  ],
  [
    "Bottom, width",
    `=IF(${FIT}="applied",${BOX_WIDTH},DRAWER.BOTTOMWIDTH(${BOX_WIDTH},${SIDE},${GROOVE},,${unit}))`,
    "BOTTOMWIDTH: between the sides, plus grooves, less play.",
  ],
  [
    "Bottom, depth",
    `=DRAWER.BOTTOMDEPTH(${BOX_DEPTH},${SIDE},${GROOVE},,${FIT},${unit})`,
    "BOTTOMDEPTH: under the back it runs out behind.",
  ],
];

/** One box by the functions of single sizes, to see how they are called, or for a quick answer. */
export function oneBox(choices: Choices): SheetDefinition<Style> {
  const { unit } = jobPlaces(choices);
  return {
    name: "One box",
    widths: [28, 17, 17, 62],
    selected: `B${TOP + 1}`,
    merged: ["A1:D1", "A2:D2"],
    page: pageOf(choices),
    lists: [{ area: FIT.replace(/\$/g, ""), words: ["grooved", "under back", "applied"] }],
    rows: [
      tall(36, cell("title", "One box, size by size")),
      row(
        cell(
          "subtitle",
          "For a quick answer: each size by a function of its own. Nothing here goes into the job, or comes from it.",
        ),
      ),
      gap(),
      tall(
        27,
        cell("section", "One opening"),
        cell("column", null),
        cell("column", null),
        cell("remark", "How to measure"),
      ),
      ...NAMES.map(([name, note], i) =>
        row(cell("label", name), cell("input", TYPED[choices.unit][i]!), cell("label", null), cell("note", note)),
      ),
      gap(),
      tall(
        27,
        cell("section", "Its box"),
        cell("column", "Exact"),
        cell("column", "On the tape"),
        cell("remark", "The function"),
      ),
      ...sizes(unit).map(([name, formula, note], i) =>
        row(
          cell("label", name),
          cell("result", formula),
          cell("resultWord", `=DRAWER.TAPE(${sizeAt(i)},,,${unit})`),
          cell("note", note),
        ),
      ),
    ],
  };
}
