import { parseLength, ratio, times, toDouble, type Rational } from "../../../src/core/length";
import type { Part, Piece, Problem, Solution } from "../../../src/core/sheets";
import { exact } from "../../../src/core/sheets/exact";

export const inches = (text: string | number): Rational => parseLength(`${text}`, "in");

/** In eighths of an inch, as the answer below counts. */
export const eighths = (text: string | number): number => toDouble(times(8, inches(text)));

const part = (
  name: string,
  quantity: number,
  length: number,
  width: number,
  grain: Part["grain"],
  more: Partial<Part> = {},
): Part => ({ name, quantity, length: ratio(length), width: ratio(width), grain, ...more });

/**
 * Five parts from a sheet of 48 × 96 in and an offcut that is just as large as one of them, the kerf 1/8 in. From the
 * sheet two strips are ripped, of 20 in and 16 in; 48 − 20 − 1/8 − 16 − 1/8 leaves an offcut 11 3/4 in wide.
 *
 *     36 1/4 ┌──────────────────────────────────────┐
 *            │ offcut 96 × 11 3/4                   │
 *     20 1/8 ├────────────┬──────────┬──────────────┤
 *            │ Tall 40    │ Side 30  │ offcut       │   16 in
 *            ├────────────┼──────────┼──────────────┤
 *            │            │ offcut   │              │   the offcut over the Side: 20 − 16 − 1/8 = 3 7/8 in
 *            │ Back 40    │ Side 30  │ offcut       │   20 in
 *          0 └────────────┴──────────┴──────────────┘
 *            0        40 1/8     70 1/4            96      96 − 70 1/4 = 25 3/4 in
 *
 * A Tall is 16 in long and 40 in wide, its length to lie across the sheet's.
 */
export function workedAnswer(): Solution {
  const problem: Problem = {
    parts: [
      part("Side", 2, 30, 16, "length"),
      part("Back", 2, 40, 20, "any", { from: [0, 1] }),
      part("Tall", 1, 16, 40, "width"),
    ],
    stock: [
      { name: "sheet", length: ratio(96), width: ratio(48), price: ratio(60) },
      { name: "cutoff", length: ratio(40), width: ratio(20), available: 1 },
      { name: "unused", length: ratio(24), width: ratio(24), price: ratio(9) },
    ],
    kerf: inches("1/8"),
    trim: ratio(0),
  };
  const side = { index: 0, turned: false };
  const back = { index: 1, turned: false };
  const tall = { index: 2, turned: true };
  const low = piece(0, 0, 96, 20, "crosscut", [
    { ...piece(0, 0, 40, 20), part: back },
    piece("40 1/8", 0, 30, 20, "rip", [
      { ...piece("40 1/8", 0, 30, 16), part: side },
      piece("40 1/8", "16 1/8", 30, "3 7/8"),
    ]),
    piece("70 1/4", 0, "25 3/4", 20),
  ]);
  const high = piece(0, "20 1/8", 96, 16, "crosscut", [
    { ...piece(0, "20 1/8", 40, 16), part: tall },
    { ...piece("40 1/8", "20 1/8", 30, 16), part: side },
    piece("70 1/4", "20 1/8", "25 3/4", 16),
  ]);
  const sheet = piece(0, 0, 96, 48, "rip", [low, high, piece(0, "36 1/4", 96, "11 3/4")]);
  return {
    problem,
    exact: exact(problem),
    sheets: [
      { stock: 0, piece: sheet },
      { stock: 1, piece: { ...piece(0, 0, 40, 20), part: back } },
    ],
    least: { measure: "cost", value: ratio(0) },
    proven: false,
    isShort: false,
  };
}

type Size = string | number;

export const piece = (
  x: Size,
  y: Size,
  length: Size,
  width: Size,
  kind?: "rip" | "crosscut",
  into: Piece[] = [],
): Piece => ({
  x: eighths(x),
  y: eighths(y),
  length: eighths(length),
  width: eighths(width),
  ...(kind ? { cut: { kind, into } } : {}),
});

/** One sheet of 96 × 48 in, cut as given, and one part that is wanted once. */
export function single(wanted: Part, root: Piece, more: Partial<Problem> = {}): Solution {
  const problem: Problem = {
    parts: [wanted],
    stock: [{ name: "sheet", length: ratio(96), width: ratio(48) }],
    kerf: inches("1/8"),
    trim: ratio(0),
    ...more,
  };
  return {
    problem,
    exact: exact(problem),
    sheets: [{ stock: 0, piece: root }],
    least: { measure: "sheets", value: ratio(1) },
    proven: true,
    isShort: false,
  };
}
