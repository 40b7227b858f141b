import { add, half, isPositive, less, lesserOf, roundFigure, subtract, total, type Rational } from "../../length";
import { bandsOf } from "../bands";
import { dadoedPart, dadoesOf, dividersOf } from "../dividers";
import type { Drawer } from "../plan/plan";
import { runnerGrooveOf } from "../plan/strip";
import { doubtful, isMoreThan, wrong, type Found } from "./finding";

/** Dividers that stand too close or too high, or whose dadoes are too deep. Limits are common practice. */
export function checkDividers(drawer: Drawer): Found[] {
  const dividers = dividersOf(drawer);
  if (!dividers) return [];
  const { opening, stock, insideHeight } = drawer;
  const { standards: s, unit } = opening;
  const { cell, last = cell, height } = dividers;
  const least = lesserOf(cell.value, last.value);
  const [depth, dadoed, groove] = [s["divider dado depth"], dadoedPart(drawer), runnerGrooveOf(drawer)?.depth];
  const { side } = stock;
  return [
    ...(less(least, roundFigure("2", "50", unit)) ? [doubtful("divider.narrow", { cell: least })] : []),
    ...(isMoreThan(height.value, insideHeight.value)
      ? [wrong("divider.tall", { height: height.value, inside: insideHeight.value })]
      : []),
    ...(dadoed && isMoreThan(depth, half(dadoed.thickness)) ? [doubtful("divider.deep", { depth, ...dadoed })] : []),
    ...(dadoed?.part === "side" && groove && !less(add(depth, groove), side)
      ? [wrong("divider.meetsRunner", { depth, groove, side })]
      : []),
    ...checkRunOut(drawer, height.value),
  ];
}

/** Dadoes go from edge to edge, and show above in a front that is its box's own, unless a band hides them. */
function checkRunOut(drawer: Drawer, height: Rational): Found[] {
  const { opening, front, boxBottom, boxHeight, insideHeight } = drawer;
  const isBare = !bandsOf("Front", opening.standards).some(({ edge }) => edge === "top");
  const upper = total([subtract(boxBottom.value, insideHeight.value), boxHeight.value, height]);
  const by = subtract(front.top, upper);
  const shows = isBare && isPositive(by) && dadoesOf(drawer).some(({ name }) => name === "Front");
  return shows ? [doubtful("divider.runsOut", { by })] : [];
}
