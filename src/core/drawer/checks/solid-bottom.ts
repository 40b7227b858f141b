import { half, isPositive, roundFigure, roundUp, subtract } from "../../length";
import { movingOf, slotOf, type Moving } from "../loads";
import { isSolidWood } from "../material";
import type { PlannedOpening } from "../plan/plan";
import type { Findings } from "./findings";
import { fine, yearOf } from "./moving";
import { doubtful, isMoreThan, type Found } from "./finding";

/** A solid bottom moves across its grain: it wants the grain side to side, and room where it moves. */
export function checkSolidBottom(planned: PlannedOpening): Found[] {
  const { opening, drawers } = planned;
  const s = opening.standards;
  const material = s["bottom material"];
  if (!isSolidWood(material)) return [];
  const across = drawers[0]!.stock.bottomDepth.value;
  const moving = movingOf(material, across, s);
  const year = { material, fit: s["bottom fit"], ...yearOf(moving, opening.unit) };
  switch (s["bottom fit"]) {
    case "under back":
      return [doubtful("bottom.solidGrain", year), ...checkSlot(planned, moving)];
    case "grooved":
      return moving ? checkPlay(planned, moving, year) : [doubtful("bottom.solidHeld", year)];
    default:
      return [doubtful("bottom.solidHeld", year)];
  }
}

/**
 * Where it shrinks by half of the back, its screws stand before its rear edge; where its slots are longer than the back is
 * thick, they are seen from inside.
 */
function checkSlot({ opening, drawers }: PlannedOpening, moving: Moving | undefined): Found[] {
  const { "bottom material": material, ...s } = opening.standards;
  const { end } = drawers[0]!.stock;
  const length = slotOf(drawers[0]!)?.length.value;
  const past = length && isMoreThan(length, end) ? [doubtful("bottom.slotsPast", { length, end })] : [];
  if (!moving || s["bottom screws"] === 0 || !isMoreThan(moving.shrinking, half(end))) return past;
  const { shrinking, low, middle } = moving;
  return [doubtful("bottom.drawsOut", { material, by: fine(shrinking, opening.unit), low, middle, end }), ...past];
}

/** A bottom in grooves all round swells into their play, and shrinks out of what they hold. */
function checkPlay({ opening }: PlannedOpening, moving: Moving, year: Findings["bottom.solidHeld"]): Found[] {
  const { "groove depth": groove, "bottom play": play } = opening.standards;
  const { unit } = opening;
  const { swelling, shrinking, low, middle, high } = moving;
  const needs = roundUp(swelling, roundFigure("1/16", "0.5", unit));
  const bare = { ...year, play, low, middle, high };
  if (isMoreThan(swelling, play)) {
    const deeper = isPositive(subtract(subtract(groove, needs), shrinking)) ? {} : { groove };
    return [doubtful("bottom.solidTight", { ...bare, by: fine(swelling, unit), needs, ...deeper })];
  }
  // Pushed into one groove, it stays in the other by this much.
  const hold = subtract(groove, play);
  return isPositive(subtract(hold, shrinking))
    ? [doubtful("bottom.solidFloats", bare)]
    : [doubtful("bottom.solidDrops", { ...bare, by: fine(shrinking, unit), hold })];
}
