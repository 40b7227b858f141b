import type { SheetDefinition } from "../author/definition";
import { isWhole } from "./cells";
import type { Choices } from "./choices";
import { jobPlaces } from "./job-places";
import { STOCK } from "./prices-sheet";
import { CUT_LIST, jobOf } from "./sheet-tables";
import { LOOKS, type Style } from "./styles";
import { results, tableSheet, type TableSheet } from "./table-sheet";

/** What is done in the shop: what is cut from what, with which settings, what is bought, and where it goes. */
export const shopSheets = (choices: Choices): SheetDefinition<Style>[] =>
  [...making(jobOf(choices)), ...cutting(choices)].map((table) => tableSheet(table, choices));

const making = (job: string): TableSheet[] => [
  {
    name: "Cut list",
    title: "Every piece to cut",
    subtitle: "Length runs with the grain. Cut one box, try it in its opening, then cut the rest.",
    formula: `=DRAWER.PARTS(${job},TRUE)`,
    styles: ["key", "label", "number", ...results(3), "label", "label", "label"],
    widths: [14, 36, 8, 13, 13, 12, 14, 10, 14],
    rows: 120,
  },
  {
    name: "Set-ups",
    title: "Every saw setting, once",
    subtitle: "In the order to cut. First cut a test piece from the same stock, and try the bottom in it.",
    caution:
      "Unplug the saw before the blade is touched. Guard and riving knife on where the cut allows, push blocks at hand, stand aside of the cut; the saw’s manual and your local codes come first.",
    formula: `=DRAWER.SETUPS(${job})`,
    styles: ["pass", "label", "label", "result", "number", "words"],
    widths: [7, 22, 34, 13, 9, 96],
    rows: 120,
  },
  {
    name: "Hardware",
    title: "What to buy besides the sheets",
    subtitle: "Slides, pulls and the screws of every joint. The slides’ own data sheet comes first.",
    formula: `=DRAWER.HARDWARE(${job})`,
    styles: ["key", "size", "amount", "label", "words"],
    widths: [24, 13, 9, 9, 128],
    rows: 60,
    // Counts without decimals, beside measures with them.
    rules: [{ area: "C6:C65", when: isWhole("$C6"), look: LOOKS.whole }],
  },
  {
    name: "Mounting",
    title: "Slides and fronts in their places",
    subtitle:
      "Spacers stand on the floor of the opening; fronts past the box as seen from the front. Tie cabinets to the wall first: open drawers tip them.",
    formula: `=DRAWER.MOUNTING(${job})`,
    styles: ["key", ...results(10), "number"],
    widths: [10, 12, 13, 17, 14, 21, 23, 17, 13, 15, 13, 14],
    rows: 72,
  },
  {
    name: "Fit",
    title: "Will it fit",
    subtitle: "Side space on each side, with the tolerances of openings, stock and cuts.",
    formula: `=DRAWER.FIT(${job})`,
    styles: ["key", ...results(7), "words"],
    widths: [10, 12, 12, 12, 14, 14, 16, 16, 60],
    rows: 72,
  },
];

function cutting(choices: Choices): TableSheet[] {
  const { standard, unit } = jobPlaces(choices);
  const asked = `${CUT_LIST},${STOCK},${standard("kerf")},${standard("sheet trim")},${standard("sheet effort")},${unit}`;
  return [
    {
      name: "Sheets",
      title: "Sheets to buy",
      subtitle:
        "The cut list on the stock of the sheet Prices. Every cut runs from edge to edge; least possible is proven.",
      formula: `=DRAWER.SHEETS(${asked})`,
      styles: ["key", "result", "words", "number", "words", "number", "percent", "money", "words"],
      widths: [12, 12, 16, 9, 24, 9, 10, 12, 24],
      rows: 12,
    },
    {
      name: "Layout",
      title: "Where each part lies",
      subtitle: "From the lower left corner of the sheet, left to right along its length.",
      formula: `=DRAWER.LAYOUT(${asked})`,
      styles: ["pass", "label", "result", "label", "label", ...results(4), "words"],
      widths: [8, 12, 12, 18, 30, 13, 13, 13, 13, 10],
      rows: 200,
    },
    {
      name: "Cuts",
      title: "Cutting the sheets up",
      subtitle: "rip: along the sheet’s length. Setting: what is kept. Equal settings stand together.",
      caution:
        "A whole sheet wants two people, or a good support on both sides. Guard and riving knife on, push block where the hand would come near; the saw’s manual and your local codes come first.",
      formula: `=DRAWER.CUTS(${asked})`,
      styles: ["pass", "label", "result", "pass", "label", "result", "words", "words"],
      widths: [8, 12, 12, 7, 12, 12, 32, 96],
      rows: 300,
    },
  ];
}
