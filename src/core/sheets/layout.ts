import { add, divide, multiply, ratio, ZERO, type Rational } from "../length";
import { lengthOf } from "./exact";
import { isOffcut, isWaste, piecesOf, type Piece, type Solution } from "./solution";

/** A part where it lies; lengths in the problem's unit, from the lower left of the untrimmed sheet. */
export interface Placement {
  /** The sheet's number, from 1. */
  sheet: number;
  /** The row of stock. */
  stock: number;
  /** The part's number among the problem's parts, from 0. */
  part: number;
  fromLeft: Rational;
  fromBottom: Rational;
  /** Along the sheet's length. */
  length: Rational;
  width: Rational;
  /** The part's own length lies across the sheet's. */
  turned: boolean;
}

export interface Offcut {
  sheet: number;
  stock: number;
  fromLeft: Rational;
  fromBottom: Rational;
  length: Rational;
  width: Rational;
}

/** What is cut from one row of stock. */
export interface StockUse {
  stock: number;
  sheets: number;
  parts: number;
  /** Area of the parts over area of the sheets. */
  yield: Rational;
  /** Price times sheets; 0 where nothing has a price. */
  cost: Rational;
  largestOffcut?: Offcut;
}

export const placements = (solution: Solution): Placement[] =>
  located(solution, ({ part }) => part !== undefined).map(({ piece, ...place }) => ({
    ...place,
    part: piece.part!.index,
    turned: piece.part!.turned,
  }));

/** What is worth keeping of what is left. */
export const offcuts = (solution: Solution): Offcut[] => kept(solution).map(({ piece: _, ...offcut }) => offcut);

const kept = (solution: Solution): ReturnType<typeof located> =>
  located(solution, (piece) => isOffcut(piece) && !isWaste(piece, solution.exact));

/** One row for each row of stock that is used. */
export function stockUses(solution: Solution): StockUse[] {
  const { problem, exact, sheets } = solution;
  const left = kept(solution);
  return problem.stock.flatMap(({ length, width, price }, stock) => {
    const used = sheets.filter((sheet) => sheet.stock === stock);
    if (used.length === 0) return [];
    const parts = used.flatMap(({ piece }) => piecesOf(piece).filter(({ part }) => part));
    const area = parts.reduce((sum, piece) => add(sum, areaOf(piece, exact)), ZERO);
    const count = ratio(used.length);
    const [largest] = left.filter((offcut) => offcut.stock === stock).sort((a, b) => size(b.piece) - size(a.piece));
    const row: StockUse = {
      stock,
      sheets: used.length,
      parts: parts.length,
      yield: divide(area, multiply(count, multiply(length, width))),
      cost: price ? multiply(count, price) : ZERO,
    };
    if (largest) {
      const { piece: _, ...offcut } = largest;
      row.largestOffcut = offcut;
    }
    return [row];
  });
}

const size = ({ length, width }: Piece): number => length * width;

const areaOf = ({ length, width }: Piece, exact: Solution["exact"]): Rational =>
  multiply(lengthOf(length, exact), lengthOf(width, exact));

function located({ sheets, exact }: Solution, which: (piece: Piece) => boolean): (Offcut & { piece: Piece })[] {
  return sheets.flatMap(({ stock, piece: sheet }, index) =>
    piecesOf(sheet)
      .filter(which)
      .map((piece) => ({
        sheet: index + 1,
        stock,
        fromLeft: lengthOf(piece.x, exact),
        fromBottom: lengthOf(piece.y, exact),
        length: lengthOf(piece.length, exact),
        width: lengthOf(piece.width, exact),
        piece,
      })),
  );
}
