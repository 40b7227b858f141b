import type { Unit } from "../../core/length/index";
import type { RuleDefinition, SheetDefinition } from "../author/index";
import { isWhole } from "../example/cells";
import { tableSheet, type TableSheet } from "../example/table-sheet";
import { LOOKS, type Style } from "../example/styles";
import { TABLES } from "../example/tables";
import { OPENINGS, standardCell, STANDARDS, UNIT_CELL } from "./job-sheet";
import { RATES, STOCK } from "./prices-sheet";

const JOB = `${OPENINGS},${STANDARDS}`;
const ASKED = `'Cut list'!$A$5#,${STOCK},${standardCell("kerf")},${standardCell("sheet trim")},${standardCell("sheet effort")},${UNIT_CELL}`;

const results = (count: number): Style[] => Array<Style>(count).fill("result");

/** Every result of a job, each a sheet of one formula. */
export const resultSheets = (unit: Unit): SheetDefinition<Style>[] =>
  tables(unit).map((one) => ({ ...tableSheet(one), frozen: 5 }));

/** Counts without decimals, beside measures with them. */
const whole = (column: string): RuleDefinition => ({
  area: `${column}6:${column}65`,
  when: isWhole(`$${column}6`),
  look: LOOKS.whole,
});

const tables = (unit: Unit): TableSheet[] => [
  {
    ...TABLES.checks,
    widths: [16, 11, 56, 56],
    formula: `=DRAWER.CHECKS(${JOB},${STOCK},${RATES})`,
    rows: 40,
  },
  {
    ...TABLES.plan,
    formula: `=DRAWER.PLAN(${JOB})`,
    subtitle: `${unit === "in" ? "Inches" : "Millimeters"}. Heights are measured up from the floor of the opening.`,
    rows: 72,
  },
  {
    ...TABLES.cutList,
    styles: [...TABLES.cutList.styles, "label"],
    widths: [14, 36, 8, 13, 13, 12, 14, 10, 14],
    formula: `=DRAWER.PARTS(${JOB},TRUE)`,
    rows: 120,
  },
  {
    name: "Set-ups",
    title: "Every saw setting, once",
    subtitle:
      "In the order to cut. Guard and riving knife on where the cut allows; the saw’s manual and your local codes come first.",
    formula: `=DRAWER.SETUPS(${JOB})`,
    styles: ["pass", "label", "label", "result", "number", "words"],
    widths: [7, 22, 34, 13, 9, 96],
    rows: 120,
  },
  {
    ...TABLES.hardware,
    widths: [24, 13, 9, 9, 128],
    formula: `=DRAWER.HARDWARE(${JOB})`,
    rows: 60,
    rules: [whole("C")],
  },
  {
    ...TABLES.mounting,
    formula: `=DRAWER.MOUNTING(${JOB})`,
    rows: 72,
  },
  {
    name: "Fit",
    title: "Will it fit",
    subtitle: "Side space on each side, with the tolerances of openings, stock and cuts.",
    formula: `=DRAWER.FIT(${JOB})`,
    styles: ["key", ...results(7), "words"],
    widths: [10, 12, 12, 12, 14, 14, 16, 16, 60],
    rows: 72,
  },
  {
    name: "Sheets",
    title: "Sheets to buy",
    subtitle:
      "The cut list on the stock of the sheet Prices. Every cut runs from edge to edge; least possible is proven.",
    formula: `=DRAWER.SHEETS(${ASKED})`,
    styles: ["key", "result", "words", "number", "words", "number", "percent", "money", "words"],
    widths: [12, 12, 16, 9, 24, 9, 10, 12, 24],
    rows: 12,
  },
  {
    name: "Layout",
    title: "Where each part lies",
    subtitle: "From the lower left corner of the sheet, left to right along its length.",
    formula: `=DRAWER.LAYOUT(${ASKED})`,
    styles: ["pass", "label", "result", "label", "label", ...results(4), "words"],
    widths: [8, 12, 12, 18, 30, 13, 13, 13, 13, 10],
    rows: 200,
  },
  {
    name: "Cuts",
    title: "Cutting the sheets up",
    subtitle:
      "A whole sheet wants two people, or support on both sides. Guard and riving knife on, push block; the saw’s manual and your local codes come first.",
    formula: `=DRAWER.CUTS(${ASKED})`,
    styles: ["pass", "label", "result", "pass", "label", "result", "words", "words"],
    widths: [8, 12, 12, 7, 12, 12, 32, 96],
    rows: 300,
  },
  {
    name: "Quote",
    title: "Quote",
    subtitle: "For tax, labor law and the wording of contracts ask your own adviser.",
    formula: `=DRAWER.QUOTE(${JOB},${STOCK},${RATES})`,
    styles: ["key", "label", "amount", "label", "money", "money"],
    widths: [14, 44, 11, 15, 13, 13],
    rows: 60,
    rules: [whole("C")],
  },
  {
    ...TABLES.workings,
    widths: [26, 13, 110],
    formula: `=DRAWER.WORKING(${OPENINGS},B4,${STANDARDS})`,
    ask: ["Drawer", "A1"],
    rows: 60,
  },
];
