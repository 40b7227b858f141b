import type { Area } from "../address";
import type { Cell, Formula, Result } from "./engine";
import type { Prepared } from "./prepare";
import type { Formats, Matrix, Scalar, SheetArea, Unsupported } from "./values";

/** One formula's cell while the workbook is worked out. */
export interface CellState {
  sheet: number;
  cell: Cell & { formula: Formula };
  prepared: Prepared;
  progress: "waiting" | "ordering" | "running" | "done";
  value: Scalar;
  /** All that an array formula gives; a plain one has its value alone. */
  values?: Matrix;
  /** The number formats that its values bring. */
  formats?: Formats;
  area: Area;
  kept?: Unsupported;
  /** As it was told. */
  result?: Result;
  /** The ranges that its text names, once they were looked up. */
  reads?: readonly SheetArea[];
  /** What else it read when it was worked out last, as INDIRECT and OFFSET do. */
  found: SheetArea[];
  /** It asked for the moment, or for too much to be remembered, and is worked out at every change. */
  isRestless: boolean;
  /** It read a range as far as there are cells, and that was not all of it. */
  isCut: boolean;
}
