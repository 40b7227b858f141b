import type { RowDefinition, RuleDefinition, SheetDefinition } from "../author/definition";
import { best, cell, gap, row, tall } from "./cells";
import type { Choices } from "./choices";
import { byUnit, jobPlaces } from "./job-places";
import { pageOf } from "./page";
import { RATES, STOCK } from "./prices-sheet";
import { openingsOf } from "./sheet-tables";
import { LOOKS, SCALES, type Style } from "./styles";

const WIDTHS = { in: ["15", "18", "21", "24", "27", "30"], mm: ["400", "450", "500", "600", "800", "900"] } as const;
/** What the shop would spend at most, until another amount is typed over it. */
const MOST = 700;
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

const price = (standards: string) => (letter: string, r: number) =>
  `=DRAWER.PRICE(${opening(PRICE_TOP, letter, "1")},${standards},${STOCK},${RATES},$A$${r})`;

/** In cubic feet or liters. */
const room = (standards: string, unit: string) => (letter: string, r: number) =>
  `=LET(plan,DRAWER.PLAN(${opening(ROOM_TOP, letter, `$A${r}`)},${standards}),` +
  `ROUND(SUMPRODUCT(INDEX(plan,0,12),INDEX(plan,0,13),INDEX(plan,0,14))/IF(${unit}="mm",${100 ** 3},${12 ** 3}),3))`;

/**
 * The choice with the least score, in words.
 * @param score of each price p with its room v; where it is an error the choice does not count
 */
const choice = (unit: string, score: string): string =>
  `=LET(p,${grid(PRICE_TOP)},v,${grid(ROOM_TOP)},score,IFERROR(${score},1E+99),least,MIN(score),` +
  `down,MIN(IF(score=least,ROW(p)))-ROW($A$${PRICE_TOP}),across,MATCH(least,INDEX(score,down,0),0),` +
  `drawers,INDEX($A$${PRICE_TOP + 1}:$A$${PRICE_TOP + COUNTS.length},down),` +
  `IF(least=1E+99,IF(COUNT(p)*COUNT(v)=0,"No price yet: select one below to read why.","None."),drawers&IF(drawers=1," drawer at "," drawers at ")&` +
  `DRAWER.TAPE(INDEX($${FIRST}$${PRICE_TOP}:$${LAST}$${PRICE_TOP},across),,,${unit})&": "&TEXT(INDEX(p,down,across),"#,##0.00")&` +
  `", "&TEXT(INDEX(v,down,across),"0.0")&IF(${unit}="mm"," liters"," cubic feet")))`;

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

function rows(top: number, title: string, unit: string, content: Content, style: Style, widths?: readonly string[]) {
  const head = (letter: string, i: number) =>
    widths ? cell("input", widths[i]!) : cell("columnSize", `=DRAWER.LENGTH(${letter}$${PRICE_TOP},${unit})`);
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

/** What an opening like the job's first costs and holds, by its width and its count of drawers. */
export function priceGrid(choices: Choices): SheetDefinition<Style> {
  const openings = openingsOf(choices);
  const { standards, unit } = jobPlaces(choices);
  const first = (heading: string): string => {
    const found = `INDEX(${openings},2,MATCH("${heading}",INDEX(${openings},1,0),0))`;
    return `=LET(size,${found},IFERROR(DRAWER.LENGTH(size,${unit}),IF(size="","",size)))`;
  };
  const line = (label: string, score: string) =>
    row(cell("key", label), ...LETTERS.map((_, i) => cell("sentence", i === 0 ? choice(unit, score) : null)));
  return {
    name: "Price grid",
    widths: [27, 12, 12, 12, 12, 12, 12, 4],
    selected: "B6",
    merged: ["A1:G1", "A2:G2", ...[4, 5, 6].map((r) => `C${r}:G${r}`)],
    page: { ...pageOf(choices), onePage: true },
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
        cell("inputResult", first("Height")),
        cell("note", "Of the first opening; or type another over it."),
      ),
      row(cell("label", "Inside depth"), cell("inputResult", first("Depth")), cell("note", "Likewise.")),
      row(cell("label", "Most to spend"), cell("inputMoney", MOST), cell("note", "What costs more stands in italics.")),
      gap(),
      line("Cheapest", "p+0*v"),
      line("Roomiest", "-v+0*p"),
      line("Roomiest within that", "IF(p<=$B$6,-v,1/0)"),
      line("Least for its room", "p/v"),
      gap(),
      gap(),
      ...rows(
        PRICE_TOP,
        byUnit("Price, by width in inches", "Price, by width in mm", unit),
        unit,
        price(standards),
        "money",
        WIDTHS[choices.unit],
      ),
      gap(),
      ...rows(
        ROOM_TOP,
        byUnit("Room inside, cubic feet", "Room inside, liters", unit),
        unit,
        room(standards, unit),
        "volume",
      ),
    ],
  };
}
