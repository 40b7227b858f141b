import type { Style } from "./styles";
import type { TableSheet } from "./table-sheet";

type Table = Omit<TableSheet, "formula" | "rows">;

const results = (count: number): Style[] => Array<Style>(count).fill("result");

/** How the sheets of results look, whatever job they are of. */
export const TABLES = {
  plan: {
    name: "Plan",
    title: "Every drawer",
    subtitle: "Inches. Heights are measured up from the floor of the opening.",
    styles: ["key", "label", ...results(12)],
    widths: [10, 10, 14, 14, 15, 13, 13, 13, 13, 14, 17, 14, 14, 15],
  },
  cutList: {
    name: "Cut list",
    title: "Every piece to cut",
    subtitle: "Length runs with the grain. Cut one box, try it in its opening, then cut the rest.",
    styles: ["key", "label", "number", "result", "result", "result", "label", "label"],
    widths: [14, 20, 8, 13, 13, 12, 14, 10],
  },
  mounting: {
    name: "Mounting",
    title: "Slides and fronts in their places",
    subtitle:
      "Spacers stand on the floor of the opening; fronts past the box as seen from the front. Tie cabinets to the wall first: open drawers tip them.",
    styles: ["key", ...results(10), "number"],
    widths: [10, 12, 13, 17, 14, 21, 23, 17, 13, 15, 13, 14],
  },
  hardware: {
    name: "Hardware",
    title: "What to buy besides the sheets",
    subtitle: "Slides, pulls and the screws of every joint. The slides’ own data sheet comes first.",
    styles: ["key", "size", "amount", "label", "words"],
    widths: [24, 11, 9, 9, 128],
  },
  checks: {
    name: "Checks",
    title: "Before the first cut",
    subtitle: "wrong: it cannot be built so, or not well. doubtful: see for yourself.",
    styles: ["key", "label", "finding", "finding"],
    widths: [14, 10, 50, 44],
    height: 36,
  },
  workings: {
    name: "Workings",
    title: "How a size came about",
    subtitle: "Type a drawer’s label, and read the sum behind each of its sizes.",
    styles: ["key", "size", "note"],
    widths: [24, 13, 100],
  },
} satisfies Record<string, Table>;
