import type { SheetDefinition } from "../author/definition";
import { cell, gap, row, tall } from "./cells";
import type { Style } from "./styles";

/** Rows left free below what is typed, for more of the same. */
const FREE = { stock: 3, rates: 4 };

const SHEET_GOODS: [thickness: number, price: number][] = [
  [0.25, 34],
  [0.5, 62],
  [0.75, 79],
];

const RATE_ROWS: [name: string, style: Style, value: number | string | null, note: string][] = [
  ["labor rate", "inputMoney", 48, "An hour."],
  ["box minutes", "inputPlain", 40, "A drawer: cutting, grooves, gluing up, sanding."],
  ["front minutes", "inputPlain", 20, "A drawer: cutting and edges."],
  ["fitting minutes", "inputPlain", 25, "A drawer: slides, front, pull."],
  ["slide price", "inputMoney", 16.5, "A pair."],
  ["pull price", "inputMoney", 4.75, "Each."],
  ["screw price", "inputMoney", 0.06, "Each, nails too."],
  ["box finish price", "inputMoney", 0.85, "A square foot of one face."],
  ["front finish price", "inputMoney", 1.9, "Likewise."],
  ["charge sheets", "inputWord", "whole", "whole; or used, the part that becomes pieces."],
  ["overhead", "inputPlain", 12, "Percent of materials and labor: 12, not 0.12."],
  ["markup", "inputPlain", null, "Percent on cost. Give this one …"],
  ["margin", "inputPlain", 25, "… or this one, percent of the price."],
  ["extra delivery", "inputMoney", 60, "Extras have names of your own; add as many as you like."],
  ["tax", "inputPlain", 6.5, "Percent. What is taxed, and how, ask your own adviser."],
  ["tax on", "inputWord", "all", "all, materials or none."],
];

export const STOCK_COLUMNS = ["Thickness", "Length", "Width", "Price", "Available", "Sold by", "Waste"];
export const STOCK_STYLES: Style[] = ["input", "input", "input", "inputMoney", "inputCount", "inputWord", "inputPlain"];
export const STOCK_NOTE =
  "Length runs with the grain. Available: blank where as many as needed are bought; a count without a price for free offcuts. " +
  "Sold by: sheet, board foot or cubic meter, with the waste in percent; of boards the thickness is the rough one, 1 for 4/4.";
const STOCK_TOP = 4;
const STOCK_BOTTOM = STOCK_TOP + SHEET_GOODS.length + FREE.stock;
const RATES_TOP = STOCK_BOTTOM + 2;
const RATES_BOTTOM = RATES_TOP + RATE_ROWS.length + FREE.rates;

/** The tables as formulas on other sheets name them. */
export const STOCK = `Prices!$A$${STOCK_TOP}:$H$${STOCK_BOTTOM}`;
export const RATES = `Prices!$A$${RATES_TOP}:$B$${RATES_BOTTOM}`;

/** What sheets, hardware and hours cost: whatever turns a plan into money. */
export const PRICES: SheetDefinition<Style> = {
  name: "Prices",
  widths: [20, 12, 10, 10, 11, 11, 13, 9],
  selected: "E5",
  merged: [
    ...["A1:H1", "A2:H2", `A${STOCK_BOTTOM + 1}:H${STOCK_BOTTOM + 1}`],
    ...RATE_ROWS.map((_, i) => `C${RATES_TOP + 1 + i}:H${RATES_TOP + 1 + i}`),
  ],
  rows: [
    tall(36, cell("title", "Stock and rates")),
    row(cell("subtitle", "Invented prices, in dollars. The sheets Quote and Price grid are worked out from them.")),
    gap(),
    tall(27, cell("columnText", "Material"), ...STOCK_COLUMNS.map((name) => cell("column", name))),
    ...SHEET_GOODS.map(([thickness, price]) => row(...stockCells("Plywood", thickness, 96, 48, price))),
    ...Array.from({ length: FREE.stock }, () => row(...stockCells(null))),
    tall(36, cell("plainNote", STOCK_NOTE)),
    tall(27, cell("columnText", "Rate"), cell("column", "Value")),
    ...RATE_ROWS.map(([name, style, value, note]) => row(cell("label", name), cell(style, value), cell("note", note))),
    ...Array.from({ length: FREE.rates }, () => row(cell("inputText", null), cell("inputPlain", null))),
  ],
};

function stockCells(material: string | null, ...numbers: number[]) {
  return [cell("inputText", material), ...STOCK_STYLES.map((style, i) => cell(style, numbers[i] ?? null))];
}
