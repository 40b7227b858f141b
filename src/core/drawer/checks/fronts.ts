import { isNegative, isPositive, isZero, less, subtract } from "../../length";
import { pullsOf, stripOf } from "../plan/parts";
import type { PlannedOpening } from "../plan/plan";
import type { Standards } from "../tables/standards";
import { isMoreThan, limit, look, stop, type Found } from "./finding";
import { isSheetGood } from "./stock";

/** What is doubtful about the fronts of an opening. */
export function checkFronts(planned: PlannedOpening, ends: { left: boolean; right: boolean }): Found[] {
  const { opening, fronts, drawers } = planned;
  const s = opening.standards;
  const { unit } = opening;
  const found: Found[] = [];
  if (isPositive(fronts.left)) {
    const shares = opening.drawers.some((drawer) => "parts" in drawer);
    found.push(look(shares ? "fronts.remainder" : "fronts.unfilled", { left: fronts.left, step: s["front step"] }));
  }
  if (drawers.length > 1 && less(s["front gap"], limit("1/16", "1.5", unit)))
    found.push(look("gap.tight", { gap: s["front gap"] }));
  if (s["front style"] === "inset" && less(s["inset gap"], limit("1/16", "1.5", unit))) {
    found.push(look("gap.tight", { gap: s["inset gap"] }));
  }
  const width = drawers[0]!.front.width.value;
  if (pullsOf(drawers[0]!) === 1 && !less(width, s["two pulls from"])) found.push(look("pull.one", { width }));
  if (
    !isSheetGood(s["front material"]) &&
    s["front grain"] === "vertical" &&
    isMoreThan(width, limit("12", "300", unit))
  ) {
    found.push(look("front.solidUpright", { width, material: s["front material"] }));
  }
  if (s["front match"] === "opening" && drawers.length > 1) {
    const { between } = stripOf(planned);
    if (isMoreThan(between, s["front gap"])) {
      found.push(look("match.kerf", { kerf: s.kerf, gap: s["front gap"], jump: subtract(between, s["front gap"]) }));
    }
  }
  return [...found, ...checkReveals(s, ends)];
}

/** An overlay front must cover the carcase's edge, and should not stand out past it unseen. */
function checkReveals(s: Standards, ends: { left: boolean; right: boolean }): Found[] {
  if (s["front style"] === "inset" || s.construction === "face frame") return [];
  const isRail = (name: "rail above" | "rail below"): boolean => s[name] !== undefined && s[name] !== "none";
  const reveals = [
    ...(isRail("rail above") ? [] : [["top", s["top reveal"]] as const]),
    ...(isRail("rail below") ? [] : [["bottom", s["bottom reveal"]] as const]),
    ...(ends.left ? [["left", s["left reveal"] ?? s["end reveal"]] as const] : []),
    ...(ends.right ? [["right", s["right reveal"] ?? s["end reveal"]] as const] : []),
  ];
  return reveals.flatMap(([side, reveal]): Found[] => {
    const thickness = s["cabinet thickness"];
    if (!less(reveal, thickness) && !isZero(thickness)) return [stop("reveal.open", { side, reveal, thickness })];
    return isNegative(reveal) ? [look("reveal.past", { side, by: reveal.neg() })] : [];
  });
}
