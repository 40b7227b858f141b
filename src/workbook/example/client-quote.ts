import type { PageDefinition, SheetDefinition } from "../author/definition";
import { cell, gap, row, tall } from "./cells";
import { LOOKS, type Style } from "./styles";

/** What a client's quote is made of: where the job's own tables stand, and what is typed about it. */
export interface ClientQuote {
  quote: string;
  plan: string;
  cutList: string;
  hardware: string;
  /** What `TAPE` takes after a length, with its commas. */
  tapeUnit: string;
  head: Record<"from" | "client" | "job" | "place" | "number" | "date" | "until", string | null>;
  extra: readonly (string | null)[];
  terms: readonly (string | null)[];
  page: Omit<PageDefinition, "orientation" | "onePage">;
}

const LAST = "D";

/** One page for the client: what is built, for what price, on what terms. What the shop reckons with is not on it. */
export function clientQuote(of: ClientQuote): SheetDefinition<Style> {
  const { head, extra, terms } = of;
  const scope = [
    tall(48, cell("bareWords", builtIn(of.plan))),
    ...[made("Boxes", "Side", of), made("Fronts", "Front", of), hung(of.hardware), ...extra].map((line) =>
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
    amount("Price", price(of.quote)),
    amount("Tax", `=${entry(of.quote, "Total")}-${price(of.quote).slice(1)}`),
    amount("Total", `=${entry(of.quote, "Total")}`),
    gap(),
    section("Terms"),
    ...terms.map((line) => row(...across("typed", line))),
    gap(),
    gap(),
    row(cell("label", "Accepted"), cell("words", null), cell("resultWord", "Date"), cell("words", null)),
  ];
  const top = 9;
  const termsTop = rows.length - terms.length - 2;
  const total = termsTop - 3;
  return {
    name: "Client quote",
    widths: [14, 48, 13, 17],
    selected: "B4",
    merged: [
      ...[1, 8, ...range(top, scope.length), termsTop - 1, ...range(termsTop, terms.length)].map(
        (r) => `A${r}:${LAST}${r}`,
      ),
      "B2:D2",
    ],
    page: { ...of.page, orientation: "portrait", onePage: true },
    rules: [{ area: `A${total}:D${total}`, when: `=$A${total}="Total"`, look: LOOKS.total }],
    rows,
  };
}

const range = (from: number, count: number): number[] => Array.from({ length: count }, (_, i) => from + i);

const across = (style: Style, content: string | null) => [content, null, null, null].map((one) => cell(style, one));

const section = (title: string) => tall(27, ...across("section", title));

const pair = (first: string, answer: string | null, second: string, other: string | null) =>
  row(cell("label", first), cell("typed", answer), cell("resultWord", second), cell("typed", other));

const amount = (name: string, formula: string) =>
  row(cell("label", name), cell("label", null), cell("label", null), cell("money", formula));

/** An amount of the shop's quote, by what stands in its first column. */
const entry = (quote: string, section: string): string => `INDEX(${quote},MATCH("${section}",INDEX(${quote},0,1),0),6)`;

/** A quote of nothing has no price before its tax; one that is an error stays one. */
const price = (quote: string): string =>
  `=IF(ISNUMBER(MATCH("Price",INDEX(${quote},0,1),0)),${entry(quote, "Price")},${entry(quote, "Total")})`;

/** Every opening once, with how many drawers stand in it. */
function builtIn(plan: string): string {
  const of = `INDEX(${plan},0,2)`;
  const counted = `COUNTIF(${of},${of})`;
  const isFirst = `(MATCH(${of},${of},0)=ROW(${of})-MIN(ROW(${of}))+1)*(ROW(${of})>MIN(ROW(${of})))`;
  const drawers = (count: string): string => `${count}&IF(${count}=1," drawer"," drawers")`;
  return `=${drawers(`(ROWS(${plan})-1)`)}&". "&TEXTJOIN("; ",TRUE,IF(${isFirst},${of}&": "&${drawers(counted)},""))`;
}

/** What parts of a kind are made of, to be typed over in other words. */
function made(name: string, part: string, { cutList, tapeUnit }: ClientQuote): string {
  const of = (heading: string): string =>
    `INDEX(${cutList},MATCH("${part}",INDEX(${cutList},0,1),0),MATCH("${heading}",INDEX(${cutList},1,0),0))`;
  return `=IFERROR("${name}: "&LOWER(${of("Material")})&", "&DRAWER.TAPE(${of("Thickness")}${tapeUnit}),"")`;
}

/** Likewise what they run on. */
const hung = (hardware: string): string =>
  `=IFERROR("Hung on "&LOWER(INDEX(${hardware},MATCH("*slide*",INDEX(${hardware},0,1),0),1))&"s","")`;
