import type { Area } from "../address";
import type { Node } from "../formula/nodes";
import type { Table } from "./engine";
import type { Formats, Matrix, Reference, Scalar, SheetArea } from "./values";

/** The cells that formulas read, and what a workbook knows by name. */
export interface CellSource {
  /** A cell's present value; a formula in it is worked out first. */
  read(sheet: number, row: number, column: number): Scalar;
  /** A range's values; whole columns and rows end where the workbook's cells end. */
  matrix(area: SheetArea): Matrix;
  /** The same values one by one, row after row; blanks may be left out. */
  each(area: SheetArea, visit: (value: Scalar) => void): void;
  /**
   * What is worked out of a long range alone, whoever does it: thousands of formulas may want the same sum, which is told
   * again for as long as no cell changes.
   */
  once<T>(area: SheetArea, who: object, work: () => T): T;
  /** The rows of a range within the cells in use that alone hold anything, where those are few among many. */
  sparseRows(area: SheetArea): readonly number[] | undefined;
  /** The number formats that a range's values bring; none where none of them does. */
  formats(area: SheetArea): Formats | undefined;
  /** The range with whole columns and rows cut to where cells are. */
  clip(area: SheetArea): SheetArea;
  /**
   * The range whose places are asked for.
   * @throws CutShort where it reaches beyond the cells in use, and those are all that is read
   */
  placed(area: SheetArea): SheetArea;
  /** What the dynamic array formula in that cell fills. */
  spill(sheet: number, row: number, column: number): Reference | undefined;
  /** The formula in that cell. */
  formula(sheet: number, row: number, column: number): Node | undefined;
  /**
   * The formula in that cell as a person reads it.
   * @throws Unsupported where the program may show it otherwise
   */
  text(sheet: number, row: number, column: number): string | undefined;
  /** Hidden by a filter, or hidden at all. */
  hidden(sheet: number, row: number, byHand: boolean): boolean;
  sheetIndex(name: string): number | undefined;
  /** A sheet of another kind than cells, whatever may stand on it. */
  isOpaque(sheet: number): boolean;
  sheetCount: number;
  name(name: string, sheet: number): Node | undefined;
  table(name: string): (Table & { area: Area }) | undefined;
  /** Parses and reads a reference that a text holds, for INDIRECT. */
  parse(text: string): Node | undefined;
  date1904: boolean;
  /** The moment that TODAY and NOW give. */
  now: Date;
}
