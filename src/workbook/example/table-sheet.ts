import type { RuleDefinition, SheetDefinition } from "../author/definition";
import { cell, gap, row, spilled, tall } from "./cells";
import type { Style } from "./styles";

/** A sheet of one spilled table, with room to grow. */
export function tableSheet({
  name,
  title,
  subtitle,
  ask,
  formula,
  styles,
  widths,
  rows,
  height,
  rules = [],
}: TableSheet): SheetDefinition<Style> {
  const last = String.fromCharCode(64 + Math.max(styles.length, 4));
  const headings = styles.map((style) =>
    ["result", "size", "number", "amount"].includes(style) ? "column" : "columnText",
  );
  return {
    name,
    widths,
    selected: "A5",
    merged: [`A1:${last}1`, `A2:${last}2`],
    rules,
    page: { orientation: "landscape", repeated: 5 },
    rows: [
      tall(36, cell("title", title)),
      row(cell("subtitle", subtitle)),
      gap(),
      ask ? row(cell("label", ask[0]), cell(ask[1].startsWith("=") ? "inputResult" : "inputWord", ask[1])) : gap(),
      ...spilled(formula, headings, styles, rows, height),
    ],
  };
}

export interface TableSheet {
  name: string;
  title: string;
  subtitle: string;
  /** An input above the table: its label, and what stands in it at first. */
  ask?: [string, string];
  formula: string;
  /** Of each column, as far down as the table may grow. */
  styles: Style[];
  widths: number[];
  rows: number;
  height?: number;
  rules?: RuleDefinition[];
}
