import type { Part } from "../drawer";
import { divide, multiply, times, total, unitsIn, type Rational, type Unit } from "../length";
import { charged, words, type Line } from "./line";
import type { Rates } from "./rates";

/** Finish by the area of the pieces of the cut list but runners, each counted on one face. */
export function finishLines(parts: readonly Part[], rates: Rates, unit: Unit): Line[] {
  const areas = pieceAreas(parts, unit);
  return (["box", "front"] as const).flatMap((of) => {
    const price = rates[`${of} finish price`];
    return price === undefined
      ? []
      : [charged("Finish", words(`${of}Finish`), areas[of], "area", price, rates["currency decimals"])];
  });
}

/** Square feet or square meters of boxes, and of fronts with their shop-made pulls; runners are waxed, not finished. */
function pieceAreas(parts: readonly Part[], unit: Unit): { box: Rational; front: Rational } {
  const side = unitsIn(unit === "in" ? "ft" : "m", unit);
  const area = (which: (part: Part) => boolean): Rational =>
    divide(
      total(parts.filter(which).map(({ quantity, length, width }) => times(quantity, multiply(length, width)))),
      multiply(side, side),
    );
  const among =
    (names: readonly string[]) =>
    ({ name }: Part): boolean =>
      names.includes(name);
  return { box: area(among(BOX)), front: area(among(FRONT)) };
}

const BOX = ["Side", "Box front", "Box back", "Bottom", "Divider"];
const FRONT = ["Front", "Pull plate", "Pull strip"];
