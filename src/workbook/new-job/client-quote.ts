import type { SheetDefinition } from "../author/definition";
import { cell, gap, row, tall } from "./cells";
import type { Choices, Filled } from "./choices";
import { jobPlaces } from "./job-places";
import { filledOf } from "./job-table";
import { pageOf } from "./page";
import { BOX_WIDTHS, CUT_LIST, HARDWARE, PLAN, plannedOf, QUOTE, timesOf } from "./sheet-tables";
import { LOOKS, type Style } from "./styles";

const LAST = "D";

/** Lines that are left free, for what is built besides and for terms. */
const FREE = { extra: 3, terms: 4 };

/** One page for the client: what is built, for what price, on what terms. What the shop reckons with is not on it. */
export function clientQuote(choices: Choices): SheetDefinition<Style> {
  const { extra = [], terms = [], ...head } = filledOf(choices)?.quote ?? ({} as Partial<Filled["quote"]>);
  const { unit } = jobPlaces(choices);
  const scope = [
    tall(48, cell("bareWords", built(choices))),
    ...[made("Boxes", "Side", unit), made("Fronts", "Front", unit), HUNG, ...upTo(FREE.extra, extra)].map((line) =>
      row(...across("typed", line)),
    ),
  ];
  const rows = [
    tall(36, cell("title", "Quote")),
    row(cell("label", "From"), ...across("typed", head.from).slice(0, 3)),
    gap(),
    pair("For", head.client, "Number", head.number),
    pair("Job", head.job, "Date", head.date),
    pair("Place", head.place, "Good until", head.until),
    gap(),
    section("What is built"),
    ...scope,
    gap(),
    section("Price"),
    amount("Price", PRICE),
    amount("Tax", `=${entry("Total")}-${PRICE.slice(1)}`),
    amount("Total", `=${entry("Total")}`),
    gap(),
    section("Terms"),
    ...upTo(FREE.terms, terms).map((line) => row(...across("typed", line))),
    gap(),
    gap(),
    row(cell("label", "Accepted"), cell("words", null), cell("resultWord", "Date"), cell("words", null)),
  ];
  const top = 9;
  const termsTop = rows.length - FREE.terms - 2;
  const total = termsTop - 3;
  return {
    name: "Client quote",
    widths: [14, 48, 13, 17],
    selected: "B4",
    merged: [
      ...[1, 8, ...range(top, scope.length), termsTop - 1, ...range(termsTop, FREE.terms)].map(
        (r) => `A${r}:${LAST}${r}`,
      ),
      "B2:D2",
    ],
    page: { paper: pageOf(choices).paper, orientation: "portrait", onePage: true },
    rules: [{ area: `A${total}:D${total}`, when: `=$A${total}="Total"`, look: LOOKS.total }],
    rows,
  };
}

/** So many lines, the last of them free. */
const upTo = (count: number, lines: readonly string[]): (string | null)[] =>
  Array.from({ length: count }, (_, i) => lines[i] ?? null);

const range = (from: number, count: number): number[] => Array.from({ length: count }, (_, i) => from + i);

const across = (style: Style, content: string | null = null) =>
  [content, null, null, null].map((one) => cell(style, one));

const section = (title: string) => tall(27, ...across("section", title));

const pair = (first: string, answer: string | undefined, second: string, other: string | undefined) =>
  row(cell("label", first), cell("typed", answer ?? null), cell("resultWord", second), cell("typed", other ?? null));

const amount = (name: string, formula: string) =>
  row(cell("label", name), cell("label", null), cell("label", null), cell("money", formula));

/** An amount of the shop's quote, by what stands in its first column. */
function entry(section: string): string {
  return `INDEX(${QUOTE},MATCH("${section}",INDEX(${QUOTE},0,1),0),6)`;
}

/** A quote of nothing has no price before its tax; one that is an error stays one. */
const PRICE = `=IF(ISNUMBER(MATCH("Price",INDEX(${QUOTE},0,1),0)),${entry("Price")},${entry("Total")})`;

/** Every opening that has drawers, once, with how many are made for it. */
function built(choices: Choices): string {
  const of = `INDEX(${PLAN},0,2)`;
  const made = `COUNTIFS(${of},${of},${BOX_WIDTHS},">0")*${timesOf(choices)}`;
  const isFirst = `(MATCH(${of},${of},0)=ROW(${of})-MIN(ROW(${of}))+1)*(ROW(${of})>MIN(ROW(${of})))`;
  const drawers = (count: string): string => `${count}&IF(${count}=1," drawer"," drawers")`;
  return `=${drawers(plannedOf(choices))}&". "&TEXTJOIN("; ",TRUE,IF(${isFirst}*(${made}>0),${of}&": "&${drawers(made)},""))`;
}

/** What parts of a kind are made of, to be typed over in other words. */
function made(name: string, part: string, unit: string): string {
  const of = (heading: string): string =>
    `INDEX(${CUT_LIST},MATCH("${part}",INDEX(${CUT_LIST},0,1),0),MATCH("${heading}",INDEX(${CUT_LIST},1,0),0))`;
  return `=IFERROR("${name}: "&LOWER(${of("Material")})&", "&DRAWER.TAPE(${of("Thickness")},,,${unit}),"")`;
}

/** Likewise what they run on. */
const HUNG = `=IFERROR("Hung on "&LOWER(INDEX(${HARDWARE},MATCH("*slide*",INDEX(${HARDWARE},0,1),0),1))&"s","")`;
