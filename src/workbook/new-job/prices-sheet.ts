import { orElse, parseLength, toDouble, type Unit } from "../../core/length/index";
import type { SheetDefinition } from "../author/definition";
import { cell, gap, row, tall } from "./cells";
import type { Style } from "./styles";
import type { Choices } from "./choices";
import { filledOf } from "./job-table";
import { pageOf } from "./page";

const STOCK_COLUMNS = ["Thickness", "Length", "Width", "Price", "Available", "Sold by", "Waste"];
const STOCK_STYLES: Style[] = ["input", "input", "input", "inputMoney", "inputCount", "input", "inputPlain"];
const STOCK_NOTE =
  "Length runs with the grain. Available: blank where as many as needed are bought; a count without a price for free offcuts. " +
  "Sold by: sheet, board foot or cubic meter, with the waste in percent; of boards the thickness is the rough one, 1 for 4/4.";

/** Round figures to be typed over, so that every sheet shows something from the start. */
type StockRow = readonly [thickness: string, length: string, width: string, price: number];
const STOCK_ROWS: Record<Unit, StockRow[]> = {
  in: [
    ["1/4", "96", "48", 30],
    ["1/2", "96", "48", 50],
    ["3/4", "96", "48", 70],
  ],
  mm: [
    ["6", "2440", "1220", 30],
    ["12", "2440", "1220", 50],
    ["19", "2440", "1220", 70],
  ],
};

const rates = (unit: Unit): [name: string, value: number | string | null, note: string][] => {
  const [foot, square] = unit === "in" ? ["foot", "square foot"] : ["meter", "square meter"];
  return [
    ["labor rate", 50, "An hour."],
    ["box minutes", 40, "A drawer: cutting, grooves, gluing up, sanding."],
    ["front minutes", 20, "A drawer: cutting and edges."],
    ["fitting minutes", 25, "A drawer: slides, front, pull."],
    ["slide price", 15, "A pair."],
    ["pull price", 5, "Each."],
    ["screw price", 0.05, "Each, nails too."],
    ["edge band price", 0.5, `A ${foot}.`],
    ["box finish price", 1, `A ${square} of one face.`],
    ["front finish price", 2, "Likewise."],
    ["charge sheets", "whole", "whole; or used, the part that becomes pieces."],
    ["overhead", 10, "Percent of materials and labor: 10, not 0.1."],
    ["markup", null, "Percent on cost. Give this one …"],
    ["margin", 25, "… or this one, percent of the price."],
    ["tax", 0, "Percent. What is taxed, and how, ask your own adviser."],
    ["tax on", "all", "all, materials or none."],
    ["extra delivery", null, "Extras have names of your own; add as many as you like."],
  ];
};

const FREE = { stock: 7, rates: 4 };
const TOP = 4;
const BOTTOM = TOP + STOCK_ROWS.in.length + FREE.stock;
const RATES_TOP = BOTTOM + 3;
const RATES_BOTTOM = RATES_TOP + rates("in").length + FREE.rates;

/** The tables as formulas of other sheets name them. */
export const STOCK = `Prices!$A$${TOP}:$H$${BOTTOM}`;
export const RATES = `Prices!$A$${RATES_TOP}:$B$${RATES_BOTTOM}`;

/** What the shop buys, and what it charges. */
export function pricesSheet(choices: Choices): SheetDefinition<Style> {
  const stock = stockOf(choices);
  const more = filledOf(choices)?.moreRates ?? [];
  return {
    name: "Prices",
    widths: [22, 12, 11, 11, 11, 11, 14, 9],
    selected: `E${TOP + 1}`,
    page: pageOf(choices),
    merged: ["A1:H1", "A2:H2", `A${BOTTOM + 1}:H${BOTTOM + 1}`],
    lists: [
      { area: `G${TOP + 1}:G${BOTTOM}`, words: ["sheet", "board foot", "cubic meter"] },
      ...rates(choices.unit).flatMap(([name], i) => {
        const words = { "charge sheets": ["whole", "used"], "tax on": ["all", "materials", "none"] }[name];
        return words ? [{ area: `B${RATES_TOP + 1 + i}`, words }] : [];
      }),
    ],
    rows: [
      tall(36, cell("title", "Stock and rates")),
      row(cell("subtitle", "These are invented figures, not prices: type yours over them.")),
      gap(),
      tall(27, cell("columnText", "Material"), ...STOCK_COLUMNS.map((name) => cell("column", name))),
      ...Array.from({ length: BOTTOM - TOP }, (_, i) => stockRow(stock[i] ? ["Plywood", ...stock[i]] : [])),
      tall(42, cell("plainNote", STOCK_NOTE)),
      gap(),
      tall(27, cell("columnText", "Rate"), cell("column", "Value")),
      ...filledRates(choices).map(([name, value, note]) =>
        row(cell("label", name), cell(typeof value === "string" ? "input" : "inputPlain", value), cell("note", note)),
      ),
      ...Array.from({ length: FREE.rates }, (_, i) => {
        const [name, value, note] = more[i] ?? [null, null, null];
        return row(cell("inputText", name), cell("inputPlain", value), note === null ? null : cell("note", note));
      }),
    ],
  };
}

const filledRates = (choices: Choices): ReturnType<typeof rates> => {
  const own = filledOf(choices)?.rates ?? {};
  return rates(choices.unit).map(([name, value, note]) => [name, own[name] ?? value, note]);
};

/** The usual sheets, and one as thick as the chosen sides where it is none of them. */
function stockOf(choices: Choices): readonly StockRow[] {
  const { unit, sideThickness } = choices;
  const rows = filledOf(choices)?.stock ?? STOCK_ROWS[unit];
  const size = (text: string): number =>
    orElse(
      () => toDouble(parseLength(text, unit)),
      () => 0,
    );
  const sides = size(sideThickness);
  const near = { in: 1 / 32, mm: 0.8 }[unit];
  if (sides === 0 || rows.some(([thickness]) => Math.abs(size(thickness) - sides) <= near)) return rows;
  const [, [, length, width, price]] = rows as [StockRow, StockRow];
  return [...rows, [sideThickness, length, width, price]];
}

const stockRow = (values: readonly (string | number)[]) =>
  row(
    cell("inputText", (values[0] as string) ?? null),
    ...STOCK_STYLES.map((style, i) => cell(style, values[i + 1] ?? null)),
  );
