import type { CellDefinition, RowDefinition, RuleDefinition } from "../author/definition";
import { LOOKS, type Style } from "./styles";

type Cell = CellDefinition<Style>;
type Row = RowDefinition<Style>;

export const cell = (style: Style, content: string | number | null): Cell => ({ style, content });

/** The usual air. */
const HEIGHT = 19.5;

/** A row with the usual air; `null` leaves a cell empty. */
export const row = (...cells: (Cell | null)[]): Row => ({ height: HEIGHT, cells });

export const gap = (): Row => ({ height: 12, cells: [] });

export const tall = (height: number, ...cells: (Cell | null)[]): Row => ({ height, cells });

/** A formula that spills a table: styles of its headings, then of each row below that it may reach. */
export const spilled = (formula: string, headings: Style[], cells: Style[], rows: number, height = HEIGHT): Row[] => [
  tall(27, ...headings.map((style, i) => cell(style, i === 0 ? formula : null))),
  ...Array.from({ length: rows }, () => tall(height, ...cells.map((style) => cell(style, null)))),
];

/** Asks whether a cell holds a whole number. */
export const isWhole = (address: string): string => `=IF(ISNUMBER(${address}),${address}=INT(${address}))`;

/** Marks the number in an area that no other is less than, or greater than. */
export function best(area: string, than: "<" | ">"): RuleDefinition {
  const [own] = area.split(":");
  const whole = area.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
  return { area, when: `=AND(ISNUMBER(${own}),COUNTIF(${whole},"${than}"&${own})=0)`, look: LOOKS.best };
}
