import type { RowDefinition, RuleDefinition, SheetDefinition } from "../author/index";
import { best, cell, gap, row, tall } from "./cells";
import { fixed, opening as ofBench, STANDARDS } from "./job";
import { RATES, STOCK } from "./prices";
import { LOOKS, SCALES, type Style } from "./styles";

const COUNTS = [2, 3, 4, 5, 6];
const WIDTHS = [15, 18, 21, 24, 27, 30];
const LETTERS = ["B", "C", "D", "E", "F", "G"];
const [FIRST, LAST] = [LETTERS[0]!, LETTERS.at(-1)!];

/** The heading rows of the two grids. */
const PRICE_TOP = 14;
const ROOM_TOP = PRICE_TOP + COUNTS.length + 2;

const grid = (top: number): string => `$${FIRST}$${top + 1}:$${LAST}$${top + COUNTS.length}`;
const standards = fixed(STANDARDS);
const INCHES_IN_A_FOOT = 12 ** 3;

/** One opening as a table, made inside the formula: headings over sizes. */
const opening = (top: number, letter: string, count: string): string =>
  `CHOOSE({1,2,3,4;5,6,7,8},"Width","Height","Depth","Drawers",${letter}$${top},$B$4,$B$5,${count})`;

const price = (letter: string, r: number): string =>
  `=DRAWER.PRICE(${opening(PRICE_TOP, letter, "1")},${standards},${STOCK},${RATES},$A${r})`;

const room = (letter: string, r: number): string =>
  `=LET(plan,DRAWER.PLAN(${opening(ROOM_TOP, letter, `$A${r}`)},${standards}),` +
  `ROUND(SUMPRODUCT(INDEX(plan,0,12),INDEX(plan,0,13),INDEX(plan,0,14))/${INCHES_IN_A_FOOT},3))`;

/**
 * The choice with the least score, in words.
 * @param score of each price p with its room v; where it is an error the choice does not count
 */
const choice = (score: string): string =>
  `=LET(p,${grid(PRICE_TOP)},v,${grid(ROOM_TOP)},score,IFERROR(${score},1E+99),least,MIN(score),` +
  `down,MIN(IF(score=least,ROW(p)))-ROW($A$${PRICE_TOP}),across,MATCH(least,INDEX(score,down,0),0),` +
  `drawers,INDEX($A$${PRICE_TOP + 1}:$A$${PRICE_TOP + COUNTS.length},down),` +
  `IF(least=1E+99,IF(COUNT(p)*COUNT(v)=0,"No price yet: select one below to read why.","None."),drawers&IF(drawers=1," drawer at "," drawers at ")&` +
  `DRAWER.TAPE(INDEX($${FIRST}$${PRICE_TOP}:$${LAST}$${PRICE_TOP},across))&": "&TEXT(INDEX(p,down,across),"$#,##0.00")&` +
  `", "&TEXT(INDEX(v,down,across),"0.0")&" cubic feet"))`;

const RULES: RuleDefinition[] = [
  best(area(PRICE_TOP), "<"),
  best(area(ROOM_TOP), ">"),
  { area: area(PRICE_TOP), when: `=${FIRST}${PRICE_TOP + 1}>$B$6`, look: LOOKS.beyond },
  { area: area(PRICE_TOP), colors: SCALES.money },
  { area: area(ROOM_TOP), colors: SCALES.room },
];

function area(top: number): string {
  return grid(top).replaceAll("$", "");
}

function rows(top: number, title: string, own: boolean, content: (letter: string, r: number) => string, style: Style) {
  const head = (letter: string, i: number) =>
    own ? cell("input", WIDTHS[i]!) : cell("columnSize", `=${letter}$${PRICE_TOP}`);
  return [
    tall(27, cell("section", title), ...LETTERS.map(head)),
    ...COUNTS.map((count, i): RowDefinition<Style> =>
      row(
        own ? cell("inputDrawers", count) : cell("drawers", `=$A$${PRICE_TOP + 1 + i}`),
        ...LETTERS.map((letter) => cell(style, content(letter, top + 1 + i))),
      ),
    ),
  ];
}

const line = (label: string, score: string) =>
  row(cell("key", label), ...LETTERS.map((_, i) => cell("sentence", i === 0 ? choice(score) : null)));

/** What an opening costs and holds, by its width and its count of drawers. */
export const PRICE_GRID: SheetDefinition<Style> = {
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
    row(
      cell("label", "Opening height"),
      cell("input", `=${ofBench(1, "height")}`),
      cell("note", "Opening B’s, or type another."),
    ),
    row(cell("label", "Inside depth"), cell("input", `=${ofBench(1, "depth")}`), cell("note", "Likewise.")),
    row(cell("label", "Most to spend"), cell("inputMoney", 700), cell("note", "What costs more stands in italics.")),
    gap(),
    line("Cheapest", "p+0*v"),
    line("Roomiest", "-v+0*p"),
    line("Roomiest within that", "IF(p<=$B$6,-v,1/0)"),
    line("Least for a cubic foot", "p/v"),
    gap(),
    gap(),
    ...rows(PRICE_TOP, "Price, by width in inches", true, price, "money"),
    gap(),
    ...rows(ROOM_TOP, "Room inside, cubic feet", false, room, "volume"),
  ],
};
