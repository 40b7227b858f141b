import { less, times, toDouble, type Rational, type Unit } from "../../length";
import { movingOf } from "../loads";
import type { Opening } from "../opening";
import type { Drawer } from "../plan/plan";
import { doubtful, isMoreThan, type Found } from "./finding";

/** A solid front that swells by more than the gaps round it leave. */
export function checkMoving(drawer: Drawer, ends: { left: boolean; right: boolean }): Found[] {
  const { opening, front } = drawer;
  const s = opening.standards;
  const upright = s["front grain"] === "vertical";
  const across = upright ? front.width.value : front.height.value;
  const moving = movingOf(s["front material"], across, s);
  const room = upright ? roomBeside(drawer, ends) : roomAbove(drawer);
  if (!moving || !room || !isMoreThan(moving.swelling, room)) return [];
  const { wood, swelling, middle, high } = moving;
  return [doubtful("front.moves", { wood, across, by: fine(swelling, opening.unit), room, middle, high })];
}

/** By how much a solid piece moves over a year, where its wood is known, for the words of a finding. */
export function yearOf(material: string, across: Rational, { standards, unit }: Opening): Record<string, unknown> {
  const moving = movingOf(material, across, standards);
  return moving ? { moves: fine(moving.range, unit), low: moving.low, high: moving.high } : {};
}

const fine = (length: Rational, unit: Unit): number => Number(toDouble(length).toFixed(unit === "in" ? 3 : 1));

/** Two fronts beside a gap swell into it by half each; one beside a frame alone, by half. None where nothing is near. */
function roomBeside({ opening }: Drawer, ends: { left: boolean; right: boolean }): Rational | undefined {
  const s = opening.standards;
  if (s["front style"] === "inset") return times(2, s["inset gap"]);
  return s.construction === "face frame" || (ends.left && ends.right) ? undefined : s["front gap"];
}

function roomAbove({ opening, place }: Drawer): Rational | undefined {
  const s = opening.standards;
  const last = opening.drawers.length - 1;
  const stacked = last > 0 ? s["front gap"] : undefined;
  const atEnd = s["front style"] === "inset" && (place === 0 || place === last) ? times(2, s["inset gap"]) : undefined;
  if (!stacked || !atEnd) return stacked ?? atEnd;
  return less(atEnd, stacked) ? atEnd : stacked;
}
