import type { RowDefinition, RuleDefinition, SheetDefinition } from "../author/index";
import { best, cell, gap, row, spilled, tall } from "./cells";
import { opening, STANDARD_ROWS, STANDARD_TOP_ROW } from "./job";
import { RATES, STOCK } from "./prices";
import { LOOKS, type Style } from "./styles";

/** The base is named by what stands in it. */
const NAMES = ['3/4" sides', "Inset fronts", null];

/** What differs: each standard as it is at first, and in the alternates. */
const DIFFERENCES: [name: string, base: string, ...alternates: (string | number | null)[]][] = [
  ["side thickness", `=${opening(0, "Side thickness")}`, 0.75, null],
  ["front style", "overlay", null, "inset"],
  ["bottom thickness", `=${opening(0, "Bottom thickness")}`, null, null],
  ["bottom fit", `=${opening(0, "Bottom fit")}`, null, null],
];

/** Openings without the columns that would hold for every alternate. */
const OPENINGS = "Job!$A$4:$E$7";

/** Standards that are words and not lengths. */
const WORDS = ["front style", "bottom fit", "slide"];

const ROOM = 4;
const TOP = 5;
const STANDARDS_TOP = TOP + ROOM + 2;
const ROWS = DIFFERENCES.length + STANDARD_ROWS.length;
const STANDARDS = `$A$${STANDARDS_TOP}:$E$${STANDARDS_TOP + ROWS}`;
const BODY = `A${TOP + 1}:J${TOP + ROOM}`;

const RULES: RuleDefinition[] = [
  best(`D${TOP + 1}:D${TOP + ROOM}`, "<"),
  best(`F${TOP + 1}:F${TOP + ROOM}`, ">"),
  { area: BODY, when: `=$A${TOP + 1}<>""`, look: LOOKS.line },
];

const HEADINGS: Style[] = ["columnText", ...Array<Style>(8).fill("column"), "columnText"];
const CELLS: Style[] = [
  ...(["bareKey", "bareCount", "bareCount", "bareMoney", "bareChange", "bareRoom", "bareRoomChange"] as const),
  ...(["bareCount", "bareCount", "bareWords"] as const),
];

/** The same openings built in other ways, side by side. */
export const ALTERNATES: SheetDefinition<Style> = {
  name: "Alternates",
  widths: [20, 20, 15, 15, 20, 15, 23, 8, 8, 60],
  selected: `C${STANDARDS_TOP + 1}`,
  merged: ["A1:J1", "A2:J2", "A3:J3"],
  page: { orientation: "landscape", onePage: true },
  rules: RULES,
  rows: [
    tall(36, cell("title", "Built in other ways")),
    row(
      cell(
        "subtitle",
        "The bench’s openings, with one standard for all three. Room in cubic feet. The cheapest and the roomiest are marked.",
      ),
    ),
    row(cell("subtitle", "Below, a blank is as in the first column. Name one more alternate, and it is compared.")),
    gap(),
    ...spilled(`=DRAWER.ALTERNATES(${OPENINGS},${STANDARDS},${STOCK},${RATES})`, HEADINGS, CELLS, ROOM, 33),
    gap(),
    tall(
      27,
      cell("columnText", "Standard"),
      cell("resultWord", `=DRAWER.TAPE(B${STANDARDS_TOP + 1})&" sides, as now"`),
      ...NAMES.map((name) => cell("inputWord", name)),
    ),
    ...DIFFERENCES.map(([name, base, ...others]) => standard(name, base, others)),
    ...STANDARD_ROWS.map(([name], i) => standard(name, `=Job!B${STANDARD_TOP_ROW + i}`, [])),
  ],
};

function standard(name: string, base: string, others: (string | number | null)[]): RowDefinition<Style> {
  return row(
    cell("label", name),
    cell(WORDS.includes(name) ? "resultWord" : "result", base),
    ...[0, 1, 2].map((i) => cell(WORDS.includes(name) ? "inputWord" : "input", others[i] ?? null)),
  );
}
