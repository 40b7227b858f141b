import type { SheetDefinition } from "../author/index";
import { isWhole } from "./cells";
import { OPENINGS, STANDARDS } from "./job";
import { RATES, STOCK } from "./prices";
import { LOOKS, type Style } from "./styles";
import { tableSheet } from "./table-sheet";

export const PLAN: SheetDefinition<Style> = tableSheet({
  name: "Plan",
  title: "Every drawer",
  subtitle: "Inches. Heights are measured up from the floor of the opening.",
  formula: `=DRAWER.PLAN(${OPENINGS},${STANDARDS})`,
  styles: ["key", "label", ...Array<Style>(12).fill("result")],
  widths: [10, 10, 14, 14, 15, 13, 13, 13, 13, 14, 17, 14, 14, 15],
  rows: 18,
});

export const CUT_LIST: SheetDefinition<Style> = tableSheet({
  name: "Cut list",
  title: "Every piece to cut",
  subtitle: "Length runs with the grain. Cut one box, try it in its opening, then cut the rest.",
  formula: `=DRAWER.PARTS(${OPENINGS},${STANDARDS})`,
  styles: ["key", "label", "number", "result", "result", "result", "label", "label"],
  widths: [14, 20, 8, 13, 13, 12, 14, 10],
  rows: 40,
});

export const MOUNTING: SheetDefinition<Style> = tableSheet({
  name: "Mounting",
  title: "Slides and fronts in their places",
  subtitle:
    "Spacers stand on the floor of the opening; fronts past the box as seen from the front. Tie cabinets to the wall first: open drawers tip them.",
  formula: `=DRAWER.MOUNTING(${OPENINGS},${STANDARDS})`,
  styles: ["key", ...Array<Style>(10).fill("result"), "number"],
  widths: [10, 12, 13, 17, 14, 21, 23, 17, 13, 15, 13, 14],
  rows: 18,
});

export const HARDWARE: SheetDefinition<Style> = tableSheet({
  name: "Hardware",
  title: "What to buy besides the sheets",
  subtitle: "Slides, pulls and the screws of every joint. The slides’ own data sheet comes first.",
  formula: `=DRAWER.HARDWARE(${OPENINGS},${STANDARDS})`,
  styles: ["key", "result", "amount", "label", "words"],
  widths: [24, 11, 9, 9, 62],
  rows: 36,
  rules: [{ area: "C6:C41", when: isWhole("$C6"), look: LOOKS.whole }],
});

export const CHECKS: SheetDefinition<Style> = tableSheet({
  name: "Checks",
  title: "Before the first cut",
  subtitle: "wrong: it cannot be built so, or not well. doubtful: see for yourself.",
  formula: `=DRAWER.CHECKS(${OPENINGS},${STANDARDS},${STOCK},${RATES})`,
  styles: ["key", "label", "finding", "finding"],
  widths: [14, 10, 50, 44],
  rows: 24,
  height: 36,
});

export const WORKINGS: SheetDefinition<Style> = tableSheet({
  name: "Workings",
  title: "How a size came about",
  subtitle: "Type a drawer’s label, and read the sum behind each of its sizes.",
  ask: ["Drawer", "B1"],
  formula: `=DRAWER.WORKING(${OPENINGS},B4,${STANDARDS})`,
  styles: ["key", "result", "note"],
  widths: [24, 13, 100],
  rows: 36,
});
