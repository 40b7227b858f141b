import { divide, orElse, parseLength, ratio, toDouble, type Rational, type Unit } from "../../length";
import { sag, stiffnessByName } from "../../wood";
import { isSolidWood } from "../material";
import type { Drawer } from "../plan/plan";
import { carriedBy } from "./load";

/** How far a bottom sags, and what would make it less. */
export interface Sagging {
  /** None where the bottom would break. */
  sag?: number;
  /** What the limit allows over the shorter span. */
  limit: number;
  span: Rational;
  thickness: Rational;
  load: number;
  /** The thinnest stock that keeps to the limit. */
  thicker?: Rational;
  /** The sag with a muntin under the middle of the width. */
  divided?: number;
}

/** What bottoms are commonly made of. @source common practice */
const THICKNESSES: Record<Unit, readonly string[]> = {
  in: ["1/4", "3/8", "1/2", "5/8", "3/4", "1"],
  mm: ["6", "9", "12", "15", "18", "25"],
};

/**
 * The sag of a drawer's bottom under its load, held at all four edges; none for a material whose stiffness nobody told.
 * It is an estimate: wood creeps, and what is published of panels differs by a fifth and more.
 */
export function saggingOf(drawer: Drawer): Sagging | undefined {
  const { opening, stock } = drawer;
  const { standards: s, unit } = opening;
  const stiffness = s.stiffness === "auto" ? byMaterial(s["bottom material"], unit) : s.stiffness;
  if (stiffness === undefined) return undefined;
  const [width, depth] = [stock.insideWidth.value, stock.insideDepth.value];
  const { load } = carriedBy(drawer);
  const sagWith = (thickness: Rational, part = 1): number | undefined =>
    orElse(
      () => sag({ width: divide(width, ratio(part)), depth, thickness, stiffness }, load / part, "held", unit),
      () => undefined,
    );
  const span = toDouble(width) < toDouble(depth) ? width : depth;
  const limit = s["sag limit"] * toDouble(span);
  const thickness = s["bottom thickness"];
  const within = (size: number | undefined): boolean => size !== undefined && size <= limit;
  const thicker = THICKNESSES[unit]
    .map((text) => parseLength(text, unit))
    .find((each) => toDouble(each) > toDouble(thickness) && within(sagWith(each)));
  return { sag: sagWith(thickness), limit, span, thickness, load, thicker, divided: sagWith(thickness, 2) };
}

/** A panel's lowest published stiffness; solid wood along its grain, from side to side, is no less stiff than plywood. */
const byMaterial = (material: string, unit: Unit): number | undefined =>
  stiffnessByName(material, unit) ?? (isSolidWood(material) ? stiffnessByName("plywood", unit) : undefined);
