/** Which arguments of a function go into its result as they are, cell by cell; the others only say which, or where. */
export interface Mover {
  moves(argument: number, count: number): boolean;
  /** Leaves out what the function reads besides handing it on: the first column or row of a table to look up in. */
  reads?: "column" | "row";
  /** It treats errors in what it moves otherwise than other values. */
  minds?: "errors";
}

const only = (...places: number[]): Mover => ({ moves: (argument) => places.includes(argument) });
const from = (first: number): Mover => ({ moves: (argument) => argument >= first });

/** Functions that hand cells on. */
export const MOVERS: Record<string, Mover> = {
  IF: from(1),
  IFERROR: { ...from(0), minds: "errors" },
  IFNA: { ...from(0), minds: "errors" },
  IFS: { moves: (argument) => argument % 2 === 1 },
  SWITCH: { moves: (argument, count) => argument > 0 && (argument % 2 === 0 || argument === count - 1) },
  CHOOSE: from(1),
  INDEX: only(0),
  SINGLE: only(0),
  VSTACK: from(0),
  HSTACK: from(0),
  TAKE: only(0),
  DROP: only(0),
  CHOOSEROWS: only(0),
  CHOOSECOLS: only(0),
  TRANSPOSE: only(0),
  TOCOL: { ...only(0), minds: "errors" },
  TOROW: { ...only(0), minds: "errors" },
  WRAPROWS: only(0, 2),
  WRAPCOLS: only(0, 2),
  EXPAND: only(0, 3),
  FILTER: only(0, 2),
  SORTBY: only(0),
  XLOOKUP: only(2, 3),
  LOOKUP: only(2),
  VLOOKUP: { ...only(1), reads: "column" },
  HLOOKUP: { ...only(1), reads: "row" },
};
