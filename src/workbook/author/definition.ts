/** A workbook as data: what stands in which cell, and in what style. */
export interface WorkbookDefinition<Style extends string = string> {
  sheets: SheetDefinition<Style>[];
  styles: Record<Style, StyleDefinition>;
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
}

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
  /** Six hexadecimal digits, like every colour here. */
  fill?: string;
  borders?: Partial<Record<"left" | "right" | "top" | "bottom", { line: "thin" | "medium" | "thick"; color: string }>>;
  horizontal?: "left" | "center" | "right";
  vertical?: "top" | "center" | "bottom";
  wrap?: boolean;
  indent?: number;
  /** Number format. */
  format?: string;
}
