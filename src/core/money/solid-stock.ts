import {
  add,
  divide,
  Fault,
  greaterOf,
  isZero,
  multiply,
  ratio,
  share,
  times,
  total,
  unitsIn,
  type Rational,
  type Unit,
} from "../length";
import type { OfMaterial, SheetStock } from "../sheets";

/** What solid wood is sold by. */
export type Measure = "board foot" | "cubic meter";

/** What a piece takes of solid stock. */
export interface SolidPart {
  name: string;
  quantity: number;
  length: Rational;
  width: Rational;
  thickness?: Rational;
}

/** Solid stock, sold by its volume: as thick as it is sold, if that is told, else as thick as each part. */
export interface SolidStock extends OfMaterial {
  soldBy: Measure;
  /** Percent added to the net quantity. */
  waste: Rational;
  price?: Rational;
}

export type AnyStock = SheetStock | SolidStock;

export const isSolid = (row: AnyStock): row is SolidStock => "soldBy" in row;

/**
 * How much to buy for these parts: their volume as thick as the stock is sold, and the waste. Board feet of stock under
 * 1 in are tallied as of 1 in.
 * @source NIST Handbook 44, Appendix C: a board foot is 144 cubic inches; National Hardwood Lumber Association, Rules for
 * the Measurement and Inspection of Hardwood and Cypress, for thin stock; from memory
 * @throws Fault `stock.thicknessUnknown`
 */
export function solidQuantity(
  parts: readonly SolidPart[],
  stock: Pick<SolidStock, "name" | "soldBy" | "thickness" | "waste">,
  unit: Unit,
): Rational {
  const sold = stock.thickness && tallied(stock.thickness, stock.soldBy, unit);
  const net = total(
    parts.map((part) => {
      const thickness = sold ?? part.thickness;
      if (!thickness) throw new Fault("stock.thicknessUnknown", { part: part.name, stock: stock.name });
      return times(part.quantity, multiply(part.length, multiply(part.width, thickness)));
    }),
  );
  const gross = isZero(stock.waste) ? net : multiply(net, share(add(ratio(100), stock.waste), 100));
  return divide(gross, volumeOf(stock.soldBy, unit));
}

function tallied(thickness: Rational, soldBy: Measure, unit: Unit): Rational {
  return soldBy === "board foot" ? greaterOf(thickness, unitsIn("in", unit)) : thickness;
}

/** A measure in cubic units. */
function volumeOf(measure: Measure, unit: Unit): Rational {
  const side = unitsIn(measure === "board foot" ? "in" : "m", unit);
  const cube = multiply(side, multiply(side, side));
  return measure === "board foot" ? times(144, cube) : cube;
}
