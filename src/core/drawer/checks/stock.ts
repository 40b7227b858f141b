import { equal, ratio, type Rational } from "../../length";
import { isPlywood } from "../material";
import type { PlannedOpening } from "../plan/plan";
import { doubtful, type Found } from "./finding";

/**
 * Nominal thickness of sanded panels, and what they may measure, in inches. A panel of the 15/32 performance category is another panel than one of 1/2 in.
 * @source NIST Voluntary Product Standard PS 1 (PS 1-09, PS 1-19), section on thickness tolerances: sanded panels
 */
const NOMINAL: readonly [Rational, least: number, most: number][] = [
  [ratio(1, 4), 0.219, 0.281],
  [ratio(3, 8), 0.344, 0.406],
  [ratio(1, 2), 0.469, 0.531],
  [ratio(5, 8), 0.594, 0.656],
  [ratio(3, 4), 0.719, 0.781],
];

/** Plywood given by the name it is sold under: joints, grooves and widths want what it measures. */
export function checkThickness({ opening, drawers }: PlannedOpening): Found[] {
  if (opening.unit !== "in") return [];
  const s = opening.standards;
  const { side, end } = drawers[0]!.stock;
  const stock = [
    ["side", side, s["side material"]],
    ...(equal(side, end) ? [] : [["end", end, s["side material"]] as const]),
    ["bottom", s["bottom thickness"], s["bottom material"]],
  ] as const;
  return stock.flatMap(([part, thickness, material]): Found[] => {
    const nominal = NOMINAL.find(([size]) => equal(size, thickness));
    if (!nominal || !isPlywood(material)) return [];
    return [doubtful("stock.nominal", { part, thickness, material, least: nominal[1], most: nominal[2] })];
  });
}
