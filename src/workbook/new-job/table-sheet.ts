import type { RuleDefinition, SheetDefinition } from "../author/definition";
import { cell, gap, row, spilled, tall } from "./cells";
import type { Choices } from "./choices";
import { pageOf } from "./page";
import type { Style } from "./styles";

/** The row of a table's headings. */
export const HEADINGS = 5;

/** A sheet of one spilled table, with room to grow. */
export function tableSheet(table: TableSheet, choices: Choices): SheetDefinition<Style> {
  const { name, title, subtitle, caution, ask, formula, styles, widths, rows, height, rules = [] } = table;
  const last = String.fromCharCode(64 + Math.max(styles.length, 4));
  const headings = styles.map((style) => (NUMBERS.includes(style) ? "column" : "columnText"));
  return {
    name,
    widths,
    selected: `A${HEADINGS}`,
    merged: [`A1:${last}1`, `A2:${last}2`, ...(caution === undefined ? [] : [`A3:${seen(widths)}3`])],
    rules,
    frozen: HEADINGS,
    page: pageOf(choices, HEADINGS),
    rows: [
      tall(36, cell("title", title)),
      row(cell("subtitle", subtitle)),
      caution === undefined ? gap() : tall(52, cell("caution", caution)),
      ask ? row(cell("label", ask[0]), cell("inputResult", ask[1])) : gap(),
      ...spilled(formula, headings, styles, rows, height),
    ],
  };
}

/** The last column of those that are seen together on a small screen. */
function seen(widths: readonly number[]): string {
  let sum = 0;
  return String.fromCharCode(64 + widths.filter((width) => (sum += width) <= 96).length);
}

/** Columns whose headings stand to the right, as what is below them does. */
const NUMBERS: readonly Style[] = ["result", "size", "number", "amount", "bareNumber", "percent", "money"];

/** Columns of lengths in the format that they bring. */
export const results = (count: number): Style[] => Array<Style>(count).fill("result");

export interface TableSheet {
  name: string;
  title: string;
  subtitle: string;
  /** What a person has to know before they take the table to a machine. */
  caution?: string;
  /** An input above the table: its label, and the formula that gives what stands in it at first. */
  ask?: [string, string];
  formula: string;
  /** Of each column, as far down as the table may grow. */
  styles: Style[];
  widths: number[];
  rows: number;
  height?: number;
  rules?: RuleDefinition[];
}
