import type { Unit } from "../../length";
import type { Drawer } from "../plan/plan";
import { carriedBy } from "./load";

/**
 * The ratings that pairs of slides are commonly sold in, lb or kg.
 * @source common practice; each maker has a series of its own
 */
export const RATINGS: Record<Unit, readonly number[]> = { in: [75, 100, 150, 200], mm: [35, 45, 70, 90] };

/** The least of them that carries so much; none where none does. */
export const ratingFor = (total: number, unit: Unit): number | undefined =>
  RATINGS[unit].find((rating) => total <= rating);

/** What a pair is to be ordered for: what the standards say, where that is enough, or the least that is. */
export function ratingToOrder(drawer: Drawer): number {
  const { standards, unit } = drawer.opening;
  const { total } = carriedBy(drawer);
  const typed = standards["slide rating"];
  return typed !== undefined && typed >= total ? typed : (ratingFor(total, unit) ?? Math.ceil(total));
}
