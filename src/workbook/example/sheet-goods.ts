import type { SheetDefinition } from "../author/definition";
import { cell, gap, row, spilled, tall } from "./cells";
import { typed } from "./job";
import { STOCK } from "./prices";
import type { Style } from "./styles";

/** The cut list on the sheets of the price list, with the kerf of the saw. */
const ASKED = `'Cut list'!A5#,${STOCK},${typed("kerf")},0,"quick"`;

/** How far down the tables may grow. */
const ROOM = { sheets: 10, layout: 120, cuts: 240 };

/** How many sheets to buy, and where each part lies on them. */
export const SHEETS: SheetDefinition<Style> = {
  name: "Sheets",
  widths: [11, 12, 14, 18, 24, 14, 14, 12, 18, 10],
  selected: "A5",
  merged: ["A1:J1", "A2:J2"],
  rows: [
    tall(36, cell("title", "Sheets to buy")),
    row(
      cell(
        "subtitle",
        "The cut list on the stock of the sheet Prices. Every cut runs from edge to edge; least possible is proven.",
      ),
    ),
    gap(),
    gap(),
    ...spilled(
      `=DRAWER.SHEETS(${ASKED})`,
      ["columnText", "column", "columnText", "column", "columnText", "column", "column", "column", "columnText"],
      ["key", "result", "words", "number", "words", "number", "percent", "money", "words"],
      ROOM.sheets,
    ),
    gap(),
    tall(27, cell("section", "Where each part lies"), ...Array.from({ length: 9 }, () => cell("section", null))),
    row(cell("subtitle", "From the lower left corner, left to right along the sheet’s length.")),
    ...spilled(
      `=DRAWER.LAYOUT(${ASKED})`,
      [
        "columnText",
        "columnText",
        "column",
        "columnText",
        "columnText",
        ...Array<Style>(4).fill("column"),
        "columnText",
      ],
      ["pass", "label", "result", "label", "label", "result", "result", "result", "result", "words"],
      ROOM.layout,
    ),
  ],
};

/** The sheets cut up, cut by cut. */
export const CUTS: SheetDefinition<Style> = {
  name: "Cuts",
  widths: [8, 14, 12, 7, 11, 11, 32, 110],
  selected: "A5",
  merged: ["A1:H1", "A2:G2", "A3:H3"],
  page: { orientation: "landscape", repeated: 5 },
  rows: [
    tall(36, cell("title", "Cutting the sheets up")),
    tall(
      52,
      cell(
        "caution",
        "A whole sheet wants two people or a good support on both sides. Guard and riving knife on, push block where the hand would come near; the saw’s manual and your local codes come first.",
      ),
    ),
    row(cell("subtitle", "rip: along the sheet’s length. Setting: what is kept. Equal settings stand together.")),
    gap(),
    ...spilled(
      `=DRAWER.CUTS(${ASKED})`,
      ["columnText", "columnText", "column", "columnText", "columnText", "column", "columnText", "columnText"],
      ["pass", "label", "result", "pass", "label", "result", "words", "words"],
      ROOM.cuts,
    ),
  ],
};
