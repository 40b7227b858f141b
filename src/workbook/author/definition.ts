/** A workbook as data: what stands in which cell, and in what style. */
export interface WorkbookDefinition<Style extends string = string> {
  sheets: SheetDefinition<Style>[];
  styles: Record<Style, StyleDefinition>;
  /** Names for ranges, each with what it stands for, as in a formula. */
  names?: Readonly<Record<string, string>>;
}

export interface SheetDefinition<Style extends string = string> {
  name: string;
  /** Widths in characters, from column A. */
  widths: number[];
  /** From row 1. */
  rows: RowDefinition<Style>[];
  /** Such as `A1:D1`. */
  merged: string[];
  /** The cell that is selected at first. */
  selected: string;
  page?: PageDefinition;
  /** Rows at the head that stay when the rest is scrolled. */
  frozen?: number;
  /** Cells that take words of a list, which the spreadsheet program offers. */
  lists?: { area: string; words: readonly string[] }[];
  /** Looks that depend on what cells hold. Where two of them give the same thing, the first counts. */
  rules?: RuleDefinition[];
}

/** How a sheet is printed. Left out, it is as wide as a page and as many pages long as it takes. */
export interface PageDefinition {
  orientation: "portrait" | "landscape";
  paper?: "letter" | "A4";
  /** Shrunk until all of it stands on one page. */
  onePage?: boolean;
  /** At the foot of each page; `&P` is the page's number, `&N` how many there are. */
  footer?: string;
  /** The row, from 1, that stands at the head of every page. */
  repeated?: number;
}

/** Numbers colored from the least to the greatest, or a look wherever a formula is true. */
export type RuleDefinition = { area: string } & (
  | { colors: readonly [least: string, greatest: string] | readonly [least: string, middle: string, greatest: string] }
  | {
      /** As a person types it, for the area's upper left cell; it calls none of our functions. */
      when: string;
      look: RuleLook;
    }
);

export type RuleLook = Pick<StyleDefinition, "font" | "fill" | "borders" | "format">;

export interface RowDefinition<Style extends string = string> {
  /** In points; left out, as the spreadsheet likes. */
  height?: number;
  /** From column A; null is an empty cell without a style. */
  cells: (CellDefinition<Style> | null)[];
}

export interface CellDefinition<Style extends string = string> {
  style: Style;
  /** A text that starts with = is a formula, as a person types it. */
  content: string | number | null;
}

export interface StyleDefinition {
  font?: { name?: string; size?: number; bold?: boolean; italic?: boolean; color?: string };
  /** Six hexadecimal digits, like every color here. */
  fill?: string;
  borders?: Partial<Record<"left" | "right" | "top" | "bottom", { line: "thin" | "medium" | "thick"; color: string }>>;
  horizontal?: "left" | "center" | "right";
  vertical?: "top" | "center" | "bottom";
  wrap?: boolean;
  indent?: number;
  /** Number format. */
  format?: string;
}
