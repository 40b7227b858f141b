import type { Area } from "../address";
import type { Cell, Formula } from "./engine";
import type { Prepared } from "./prepare";
import type { Formats, Matrix, Scalar, Unsupported } from "./values";

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
}
