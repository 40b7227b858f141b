import type { RuleDefinition, SheetDefinition } from "../author/definition";
import { clientQuote } from "../example/client-quote";
import { isWhole } from "../example/cells";
import { tableSheet, type TableSheet } from "../example/table-sheet";
import { LOOKS, type Style } from "../example/styles";
import { TABLES } from "../example/tables";
import type { Choices } from "./choices";
import { jobAlternates, jobPriceGrid } from "./comparisons";
import { byUnit, jobPlaces, type JobPlaces } from "./job-places";
import { openingsOf } from "./openings-of";
import { filledOf } from "./job-table";
import { pageOf } from "./page";
import { RATES, STOCK } from "./prices-sheet";

const results = (count: number): Style[] => Array<Style>(count).fill("result");

/** Every result of a job, each a sheet of one formula, but for the two that are compared with. */
export const resultSheets = (choices: Choices): SheetDefinition<Style>[] => [
  ...tables(choices).map((one) => ({ ...tableSheet(one), frozen: HEADINGS, page: pageOf(choices, HEADINGS) })),
  jobClientQuote(choices),
  { ...jobPriceGrid(choices), page: { ...pageOf(choices), onePage: true } },
  { ...jobAlternates(choices), page: pageOf(choices) },
];

/** The quote as its client sees it. */
const jobClientQuote = (choices: Choices): SheetDefinition<Style> => {
  const { terms = [], ...head } = filledOf(choices)?.quote ?? {};
  return clientQuote({
    quote: "Quote!$A$5#",
    plan: "Plan!$A$5#",
    cutList: "'Cut list'!$A$5#",
    hardware: "Hardware!$A$5#",
    tapeUnit: `,,,${jobPlaces(choices).unit}`,
    head: { from: null, client: null, job: null, place: null, number: null, date: null, until: null, ...head },
    extra: [null, null, null],
    terms: Array.from({ length: 4 }, (_, i) => terms[i] ?? null),
    page: { paper: pageOf(choices).paper },
  });
};

/** The row of a table's headings. */
const HEADINGS = 5;

/** Counts without decimals, beside measures with them. */
const whole = (column: string): RuleDefinition => ({
  area: `${column}6:${column}65`,
  when: isWhole(`$${column}6`),
  look: LOOKS.whole,
});

function tables(choices: Choices): TableSheet[] {
  const openings = openingsOf(choices);
  const { standards, standard, unit } = jobPlaces(choices);
  const job = `${openings},${standards}`;
  const asked = `'Cut list'!$A$5#,${STOCK},${standard("kerf")},${standard("sheet trim")},${standard("sheet effort")},${unit}`;
  return [
    ...(choices.from === "cabinets" ? [fromCabinets(jobPlaces(choices))] : []),
    {
      ...TABLES.checks,
      widths: [16, 11, 56, 56],
      formula: `=DRAWER.CHECKS(${job},${STOCK},${RATES})`,
      rows: 40,
    },
    {
      ...TABLES.plan,
      formula: `=DRAWER.PLAN(${job})`,
      subtitle: byUnit(
        `Inches. ${TABLES.plan.subtitle.replace(/^\w+\. /, "")}`,
        `Millimeters. ${TABLES.plan.subtitle.replace(/^\w+\. /, "")}`,
        unit,
      ),
      rows: 72,
    },
    {
      ...TABLES.cutList,
      styles: [...TABLES.cutList.styles, "label"],
      widths: [14, 36, 8, 13, 13, 12, 14, 10, 14],
      formula: `=DRAWER.PARTS(${job},TRUE)`,
      rows: 120,
    },
    {
      name: "Set-ups",
      title: "Every saw setting, once",
      subtitle:
        "In the order to cut. Guard and riving knife on where the cut allows; the saw’s manual and your local codes come first.",
      formula: `=DRAWER.SETUPS(${job})`,
      styles: ["pass", "label", "label", "result", "number", "words"],
      widths: [7, 22, 34, 13, 9, 96],
      rows: 120,
    },
    {
      ...TABLES.hardware,
      widths: [24, 13, 9, 9, 128],
      formula: `=DRAWER.HARDWARE(${job})`,
      rows: 60,
      rules: [whole("C")],
    },
    {
      ...TABLES.mounting,
      formula: `=DRAWER.MOUNTING(${job})`,
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
      subtitle:
        "A whole sheet wants two people, or support on both sides. Guard and riving knife on, push block; the saw’s manual and your local codes come first.",
      formula: `=DRAWER.CUTS(${asked})`,
      styles: ["pass", "label", "result", "pass", "label", "result", "words", "words"],
      widths: [8, 12, 12, 7, 12, 12, 32, 96],
      rows: 300,
    },
    {
      name: "Quote",
      title: "Quote",
      subtitle: "For tax, labor law and the wording of contracts ask your own adviser.",
      formula: `=DRAWER.QUOTE(${job},${STOCK},${RATES})`,
      styles: ["key", "label", "amount", "label", "money", "money"],
      widths: [14, 44, 11, 15, 13, 13],
      rows: 60,
      rules: [whole("C")],
    },
    {
      ...TABLES.workings,
      widths: [26, 13, 110],
      formula: `=DRAWER.WORKING(${openings},B4,${standards})`,
      ask: ["Drawer", choices.shop ? `=INDEX(Plan!$A$5#,2,1)` : FIRST_DRAWER[choices.from]],
      rows: 60,
    },
  ];
}

/** Of the row to begin with, to be typed over. */
const FIRST_DRAWER: Record<Choices["from"], string> = { openings: "A1", cabinets: "Base1" };

const fromCabinets = ({ typed, standards }: JobPlaces): TableSheet => ({
  name: "Openings",
  title: "The cabinets’ openings",
  subtitle: "Clear sizes, from the outside sizes of the sheet Job. A cabinet of one column gives its opening its name.",
  formula: `=DRAWER.OPENINGS(${typed},${standards})`,
  styles: ["key", "label", ...results(3), "resultWord", "number", ...results(4)],
  widths: [16, 14, 13, 13, 13, 26, 10, 12, 12, 16, 12],
  rows: 40,
});
