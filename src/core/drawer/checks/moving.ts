import { equal, half, lesserOf, roundFigure, roundUp, times, toDouble, type Rational, type Unit } from "../../length";
import { acrossFront, movingOf, type Moving } from "../loads";
import { isWithin } from "../joined-front";
import { isSolidWood } from "../material";
import type { Drawer } from "../plan/plan";
import { doubtful, isMoreThan, type Found } from "./finding";
import type { YearOfWood } from "./findings";

/** A solid front that swells by more than the gaps round it leave. */
export function checkMoving(drawer: Drawer, ends: { left: boolean; right: boolean }): Found[] {
  const { opening, front } = drawer;
  const s = opening.standards;
  const upright = s["front grain"] === "vertical";
  const material = s["front material"];
  const across = acrossFront({ front, standards: s });
  const moving = movingOf(material, across, s);
  const isInset = isWithin(s);
  if (!moving) return isInset && isSolidWood(material) ? [doubtful("front.movesUnknown", { material })] : [];
  const room = upright ? roomBeside(drawer, ends) : roomAbove(drawer);
  if (!room || !isMoreThan(moving.swelling, room)) return [];
  const { wood, swelling, middle, high } = moving;
  const step = roundFigure("1/32", "0.5", opening.unit);
  // Round an inset front it swells into a gap at either side; elsewhere two fronts swell into the one between them.
  const around = isInset && equal(room, times(2, s["inset gap"]));
  const gap = roundUp(around ? half(swelling) : swelling, step);
  const data = { wood, across, by: fine(swelling, opening.unit), room, middle, high };
  return [doubtful("front.moves", { ...data, name: around ? "inset gap" : "front gap", gap })];
}

/** By how much a solid piece moves over a year, where its wood is known, for the words of a finding. */
export const yearOf = (moving: Moving | undefined, unit: Unit): YearOfWood =>
  moving ? { moves: fine(moving.range, unit), low: moving.low, high: moving.high } : {};

/** An estimate, as fine as it can be taken. */
export const fine = (length: Rational, unit: Unit): number => Number(toDouble(length).toFixed(unit === "in" ? 3 : 1));

/** Two fronts beside a gap swell into it by half each; one beside a frame alone, by half. None where nothing is near. */
function roomBeside({ opening }: Drawer, ends: { left: boolean; right: boolean }): Rational | undefined {
  const s = opening.standards;
  if (isWithin(s)) return times(2, s["inset gap"]);
  return s.construction === "face frame" || (ends.left && ends.right) ? undefined : s["front gap"];
}

function roomAbove({ opening, place }: Drawer): Rational | undefined {
  const s = opening.standards;
  const last = opening.drawers.length - 1;
  const stacked = last > 0 ? s["front gap"] : undefined;
  const atEnd = isWithin(s) && (place === 0 || place === last) ? times(2, s["inset gap"]) : undefined;
  if (!stacked || !atEnd) return stacked ?? atEnd;
  return lesserOf(stacked, atEnd);
}
