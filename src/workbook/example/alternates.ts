import type { RowDefinition, RuleDefinition, SheetDefinition } from "../author/definition";
import { best, cell, gap, row, spilled, tall } from "./cells";
import { opening, STANDARD_ROWS, STANDARD_TOP_ROW } from "./job";
import { RATES, STOCK } from "./prices";
import { LOOKS, type Style } from "./styles";

/** What a comparison is made of: tables as formulas name them, and what differs. */
export interface AlternatesOf {
  openings: string;
  stock: string;
  rates: string;
  subtitle: string;
  /** The base by a formula, the others by words, or as inputs that are still empty. */
  names: readonly [base: string, ...alternates: (string | null)[]];
  /** Each standard as it is at first, by a formula or a word, and in the alternates. */
  standards: readonly AlternateStandard[];
  isWord: (name: string) => boolean;
  lists?: SheetDefinition["lists"];
}

export type AlternateStandard = readonly [name: string, base: string, ...alternates: (string | number | null)[]];

const ROOM = 4;
const TOP = 5;
/** The row of the alternates' names, over the standards. */
export const ALTERNATES_TOP = TOP + ROOM + 2;
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
export function alternates(of: AlternatesOf): SheetDefinition<Style> {
  const standards = `$A$${ALTERNATES_TOP}:$E$${ALTERNATES_TOP + of.standards.length}`;
  const [base, ...names] = of.names;
  const oneStandard = ([name, own, ...others]: AlternateStandard): RowDefinition<Style> =>
    row(
      cell("label", name),
      cell(of.isWord(name) ? "resultWord" : "result", own),
      ...names.map((_, i) => cell(of.isWord(name) ? "inputWord" : "input", others[i] ?? null)),
    );
  return {
    name: "Alternates",
    widths: [20, 20, 15, 15, 20, 15, 23, 8, 8, 60],
    selected: `C${ALTERNATES_TOP + 1}`,
    merged: ["A1:J1", "A2:J2", "A3:J3"],
    page: { orientation: "landscape", onePage: true },
    rules: RULES,
    ...(of.lists ? { lists: of.lists } : {}),
    rows: [
      tall(36, cell("title", "Built in other ways")),
      row(cell("subtitle", of.subtitle)),
      row(cell("subtitle", "Below, a blank is as in the first column. Name one more alternate, and it is compared.")),
      gap(),
      ...spilled(`=DRAWER.ALTERNATES(${of.openings},${standards},${of.stock},${of.rates})`, HEADINGS, CELLS, ROOM, 33),
      gap(),
      tall(
        27,
        cell("columnText", "Standard"),
        cell("resultWord", base),
        ...names.map((name) => cell("inputWord", name)),
      ),
      ...of.standards.map(oneStandard),
    ],
  };
}

/** Standards that are words and not lengths. */
const WORDS = ["front style", "bottom fit", "slide"];

export const ALTERNATES = alternates({
  // Without the columns that would hold for every alternate.
  openings: "Job!$A$4:$E$7",
  stock: STOCK,
  rates: RATES,
  subtitle:
    "The bench’s openings, with one standard for all three. Room in cubic feet. The cheapest and the roomiest are marked.",
  names: [`=DRAWER.TAPE(B${ALTERNATES_TOP + 1})&" sides, as now"`, '3/4" sides', "Inset fronts", null],
  standards: [
    ["side thickness", `=${opening(0, "Side thickness")}`, 0.75, null],
    ["front style", "overlay", null, "inset"],
    ["bottom thickness", `=${opening(0, "Bottom thickness")}`],
    ["bottom fit", `=${opening(0, "Bottom fit")}`],
    ...STANDARD_ROWS.map(([name], i): AlternateStandard => [name, `=Job!B${STANDARD_TOP_ROW + i}`]),
  ],
  isWord: (name) => WORDS.includes(name),
});
