import {
  add,
  divide,
  Fault,
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
 * How much to buy for these parts: their net volume and the waste.
 * @source NIST Handbook 44, Appendix C: a board foot is 144 cubic inches
 * @throws Fault `stock.thicknessUnknown`
 */
export function solidQuantity(
  parts: readonly SolidPart[],
  stock: Pick<SolidStock, "name" | "soldBy" | "thickness" | "waste">,
  unit: Unit,
): Rational {
  const net = total(
    parts.map((part) => {
      const thickness = stock.thickness ?? part.thickness;
      if (!thickness) throw new Fault("stock.thicknessUnknown", { part: part.name, stock: stock.name });
      return times(part.quantity, multiply(part.length, multiply(part.width, thickness)));
    }),
  );
  const gross = isZero(stock.waste) ? net : multiply(net, share(add(ratio(100), stock.waste), 100));
  return divide(gross, volumeOf(stock.soldBy, unit));
}

/** A measure in cubic units. */
function volumeOf(measure: Measure, unit: Unit): Rational {
  const side = unitsIn(measure === "board foot" ? "in" : "m", unit);
  const cube = multiply(side, multiply(side, side));
  return measure === "board foot" ? times(144, cube) : cube;
}
