import type { Unit } from "../../core/length/index";

/** How far a search has come; plain data, for it comes from a worker. */
export type Progress =
  | {
      sheets: number;
      /** Undefined where the stock has no prices. */
      cost: number | undefined;
      /** The least possible in words, such as `4 sheets`. */
      least: string;
      /** Nothing better is possible. */
      proven: boolean;
      unit: Unit;
      /** LAYOUT's table, where it is another than before. */
      layout?: (string | number | boolean)[][];
    }
  | { why: string };
