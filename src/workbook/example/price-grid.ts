import type { RowDefinition, RuleDefinition, SheetDefinition } from "../author/definition";
import { best, cell, gap, row, tall } from "./cells";
import { fixed, opening as ofBench, STANDARDS } from "./job";
import { RATES, STOCK } from "./prices";
import { LOOKS, SCALES, type Style } from "./styles";

/** What a grid of prices is made of: tables as formulas name them, and what is its own. */
export interface GridOf {
  standards: string;
  stock: string;
  rates: string;
  /** Formulas that give the opening's sizes at first, and what is said beside them. */
  height: string;
  depth: string;
  notes: readonly [height: string, depth: string];
  widths: readonly (string | number)[];
  most: number;
  /** Texts, or formulas that give them. */
  titles: readonly [price: string, room: string];
  /** In formulas: a text of room, after its number; how many cubic units are one of it; the format of money. */
  roomIn: string;
  unitsInRoom: string;
  money: string;
  /** For `TAPE`: the unit, after a comma. */
  tapeUnit: string;
}

const COUNTS = [2, 3, 4, 5, 6];
const LETTERS = ["B", "C", "D", "E", "F", "G"];
const [FIRST, LAST] = [LETTERS[0]!, LETTERS[LETTERS.length - 1]!];

/** The heading rows of the two grids. */
const PRICE_TOP = 14;
const ROOM_TOP = PRICE_TOP + COUNTS.length + 2;

const grid = (top: number): string => `$${FIRST}$${top + 1}:$${LAST}$${top + COUNTS.length}`;

/** One opening as a table, made inside the formula: headings over sizes. */
const opening = (top: number, letter: string, count: string): string =>
  `CHOOSE({1,2,3,4;5,6,7,8},"Width","Height","Depth","Drawers",${letter}$${top},$B$4,$B$5,${count})`;

const price =
  ({ standards, stock, rates }: GridOf): Content =>
  (letter, r) =>
    `=DRAWER.PRICE(${opening(PRICE_TOP, letter, "1")},${standards},${stock},${rates},$A$${r})`;

const room =
  ({ standards, unitsInRoom }: GridOf): Content =>
  (letter, r) =>
    `=LET(plan,DRAWER.PLAN(${opening(ROOM_TOP, letter, `$A${r}`)},${standards}),` +
    `ROUND(SUMPRODUCT(INDEX(plan,0,12),INDEX(plan,0,13),INDEX(plan,0,14))/${unitsInRoom},3))`;

/**
 * The choice with the least score, in words.
 * @param score of each price p with its room v; where it is an error the choice does not count
 */
const choice = ({ money, roomIn, tapeUnit }: GridOf, score: string): string =>
  `=LET(p,${grid(PRICE_TOP)},v,${grid(ROOM_TOP)},score,IFERROR(${score},1E+99),least,MIN(score),` +
  `down,MIN(IF(score=least,ROW(p)))-ROW($A$${PRICE_TOP}),across,MATCH(least,INDEX(score,down,0),0),` +
  `drawers,INDEX($A$${PRICE_TOP + 1}:$A$${PRICE_TOP + COUNTS.length},down),` +
  `IF(least=1E+99,IF(COUNT(p)*COUNT(v)=0,"No price yet: select one below to read why.","None."),drawers&IF(drawers=1," drawer at "," drawers at ")&` +
  `DRAWER.TAPE(INDEX($${FIRST}$${PRICE_TOP}:$${LAST}$${PRICE_TOP},across)${tapeUnit})&": "&TEXT(INDEX(p,down,across),"${money}")&` +
  `", "&TEXT(INDEX(v,down,across),"0.0")&${roomIn}))`;

const RULES: RuleDefinition[] = [
  best(area(PRICE_TOP), "<"),
  best(area(ROOM_TOP), ">"),
  { area: area(PRICE_TOP), when: `=${FIRST}${PRICE_TOP + 1}>$B$6`, look: LOOKS.beyond },
  { area: area(PRICE_TOP), colors: SCALES.money },
  { area: area(ROOM_TOP), colors: SCALES.room },
];

function area(top: number): string {
  return grid(top).replace(/\$/g, "");
}

type Content = (letter: string, r: number) => string;

function rows(top: number, title: string, content: Content, style: Style, widths?: GridOf["widths"]) {
  const head = (letter: string, i: number) =>
    widths ? cell("input", widths[i]!) : cell("columnSize", `=${letter}$${PRICE_TOP}`);
  return [
    tall(27, cell("section", title), ...LETTERS.map(head)),
    ...COUNTS.map((count, i): RowDefinition<Style> =>
      row(
        widths ? cell("inputDrawers", count) : cell("drawers", `=$A$${PRICE_TOP + 1 + i}`),
        ...LETTERS.map((letter) => cell(style, content(letter, top + 1 + i))),
      ),
    ),
  ];
}

/** What an opening costs and holds, by its width and its count of drawers. */
export function priceGrid(of: GridOf): SheetDefinition<Style> {
  const line = (label: string, score: string) =>
    row(cell("key", label), ...LETTERS.map((_, i) => cell("sentence", i === 0 ? choice(of, score) : null)));
  return {
    name: "Price grid",
    widths: [27, 12, 12, 12, 12, 12, 12, 4],
    selected: "B6",
    merged: ["A1:G1", "A2:G2", ...[4, 5, 6].map((r) => `C${r}:G${r}`)],
    page: { orientation: "landscape", onePage: true },
    rules: RULES,
    rows: [
      tall(36, cell("title", "What would it cost?")),
      row(
        cell(
          "subtitle",
          "One opening in a cabinet of its own, at the rates of the sheet Prices: drawers down, widths across.",
        ),
      ),
      gap(),
      row(cell("label", "Opening height"), cell("inputResult", of.height), cell("note", of.notes[0])),
      row(cell("label", "Inside depth"), cell("inputResult", of.depth), cell("note", of.notes[1])),
      row(
        cell("label", "Most to spend"),
        cell("inputMoney", of.most),
        cell("note", "What costs more stands in italics."),
      ),
      gap(),
      line("Cheapest", "p+0*v"),
      line("Roomiest", "-v+0*p"),
      line("Roomiest within that", "IF(p<=$B$6,-v,1/0)"),
      line("Least for its room", "p/v"),
      gap(),
      gap(),
      ...rows(PRICE_TOP, of.titles[0], price(of), "money", of.widths),
      gap(),
      ...rows(ROOM_TOP, of.titles[1], room(of), "volume"),
    ],
  };
}

export const PRICE_GRID = priceGrid({
  standards: fixed(STANDARDS),
  stock: STOCK,
  rates: RATES,
  height: `=${ofBench(1, "height")}`,
  depth: `=${ofBench(1, "depth")}`,
  notes: ["Opening B’s, or type another.", "Likewise."],
  widths: [15, 18, 21, 24, 27, 30],
  most: 700,
  titles: ["Price, by width in inches", "Room inside, cubic feet"],
  roomIn: '" cubic feet"',
  unitsInRoom: String(12 ** 3),
  money: "$#,##0.00",
  tapeUnit: "",
});
