import type { RowDefinition, RuleDefinition, RuleLook, SheetDefinition } from "../author/definition";
import { clientQuote } from "./client-quote";
import { cell, gap, isWhole, row, spilled, tall } from "./cells";
import { OPENINGS, STANDARDS } from "./job";
import { RATES, STOCK } from "./prices";
import { LOOKS, type Style } from "./styles";

/** Where the quote's own headings stand, and how far down it may grow. */
const TOP = 9;
const ROOM = 50;
const FIRST = TOP + 1;

/** What a line looks like hangs on what it is, for which ones there will be is not known before. */
const lines = (from: string, to: string, when?: string, look?: RuleLook): RuleDefinition[] => {
  const area = `${from}${FIRST}:${to}${TOP + ROOM}`;
  return [
    { area, when: `=$A${FIRST}="Total"`, look: LOOKS.total },
    { area, when: `=OR($B${FIRST}="Subtotal",$A${FIRST}="Price")`, look: LOOKS.sum },
    ...(when && look ? [{ area, when, look }] : []),
    { area, when: `=$A${FIRST}<>""`, look: LOOKS.line },
  ];
};

const HEADINGS: Style[] = ["columnText", "columnText", "column", "columnText", "column", "column"];
const CELLS: Style[] = ["bareText", "bareText", "bareNumber", "bareText", "bareNumber", "bareNumber"];

/** A quote for the bench, to be printed and handed over. */
export const QUOTE: SheetDefinition<Style> = {
  name: "Quote",
  widths: [14, 40, 10, 13, 12, 13],
  selected: "B4",
  merged: ["A1:F1", "A2:F2", "D4:E4", "D5:E5", "D6:E6"],
  page: { orientation: "portrait", paper: "letter", onePage: true, footer: "&CPage &P of &N" },
  rules: [
    ...lines("A", "A", `=$A${FIRST}=$A${TOP}`, LOOKS.again),
    ...lines("B", "B"),
    ...lines("C", "C", isWhole(`$C${FIRST}`), LOOKS.whole),
    ...lines("D", "F"),
  ],
  rows: [
    tall(36, cell("title", "Quote")),
    row(cell("subtitle", "In dollars. For tax, labor law and the wording of contracts ask your own adviser.")),
    gap(),
    headRow("For", cell("inputText", "An invented bicycle workshop"), "Number", cell("inputWord", "Q-104")),
    headRow("Job", cell("inputText", "Drawers for the parts bench"), "Date", cell("inputWord", "4th of May")),
    headRow(
      "Scope",
      cell("words", `=ROWS(Plan!A5#)-1&" drawers in "&COUNTA(Job!A5:A7)&" openings"`),
      "Good for",
      cell("inputWord", "30 days"),
    ),
    gap(),
    gap(),
    ...spilled(`=DRAWER.QUOTE(${OPENINGS},${STANDARDS},${STOCK},${RATES})`, HEADINGS, CELLS, ROOM, 18),
  ],
};

/** The same job as its client sees it. */
export const CLIENT_QUOTE: SheetDefinition<Style> = clientQuote({
  quote: `Quote!$A$${TOP}#`,
  plan: "Plan!$A$5#",
  cutList: "'Cut list'!$A$5#",
  hardware: "Hardware!$A$5#",
  tapeUnit: "",
  head: {
    from: "An invented cabinet shop",
    client: "=Quote!B4",
    job: "=Quote!B5",
    place: "At the workshop",
    number: "=Quote!F4",
    date: "=Quote!F5",
    until: "3rd of June",
  },
  extra: ["Fitted and adjusted at the bench", null],
  terms: [
    "A third with the order, the rest when the drawers run.",
    "Changes after the order are quoted anew.",
    "The bench is to be fixed to the wall before the drawers go in.",
    null,
  ],
  page: { paper: "letter" },
});

function headRow(
  first: string,
  answer: ReturnType<typeof cell>,
  second: string,
  other: ReturnType<typeof cell>,
): RowDefinition<Style> {
  return row(cell("label", first), answer, null, cell("resultWord", second), cell("resultWord", null), other);
}
