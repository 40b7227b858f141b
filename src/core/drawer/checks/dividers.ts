import { add, half, less, lesserOf, roundFigure } from "../../length";
import { dadoedPart, dividersOf } from "../dividers";
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
  ];
}
