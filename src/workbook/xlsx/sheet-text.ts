import type { Area } from "../address";

/** A piece of the sheet's text, from its first character up to the one after its last. */
export interface Place {
  start: number;
  end: number;
}

/** A cell as it stands in the file. */
export interface CellText extends Place {
  row: number;
  column: number;
  /** Where its start tag ends. */
  tagEnd: number;
  selfClosing: boolean;
  type: string;
  /** `v`'s own text, or the inline string's. */
  content?: string;
  hasRichValue: boolean;
  isDynamic: boolean;
  formula?: FormulaText;
  value?: Place;
  inline?: Place;
}

/** A formula as it stands in the file. */
export interface FormulaText extends Place {
  tagEnd: number;
  kind: string;
  area?: Area;
  sharedIndex?: string;
  text: string;
}

export interface RowText extends Place {
  row: number;
  tagEnd: number;
  /** Where its end tag begins; where its tag ends, if it closes itself. */
  inner: number;
  selfClosing: boolean;
  cells: CellText[];
}

/** The element that holds the rows. */
interface DataText extends Place {
  /** Where its start tag ends, and where its end tag begins. */
  tagEnd: number;
  inner: number;
  selfClosing: boolean;
}

/** A sheet's text with the places of everything that recalculation reads or writes. */
export interface SheetText {
  part: string;
  text: string;
  /** The prefix of its elements, with the colon. */
  prefix: string;
  rows: RowText[];
  /** Where the rows stand; where an element for them would stand, if the sheet has none. */
  data: DataText;
  dimension?: Place & { area: Area };
  merged: Area[];
  hiddenRows: Set<number>;
  filter?: Area;
}
