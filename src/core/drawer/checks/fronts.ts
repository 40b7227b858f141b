import { equal, isNegative, isPositive, keyOf, less, negate, roundFigure, subtract } from "../../length";
import { groupsOf } from "../groups";
import { movingOf } from "../loads";
import { isSolidWood } from "../material";
import { stripsOf, unmatched } from "../plan/front-strip";
import type { PlannedOpening } from "../plan/plan";
import { pullsOf } from "../plan/pulls";
import type { Standards } from "../standards";
import { isJoined, isLipped, isWithin } from "../joined-front";
import type { Opening } from "../opening";
import { isMoreThan, doubtful, wrong, type Finding, type Found } from "./finding";
import { yearOf } from "./moving";
import { checkFrame } from "./frame";

/** What is doubtful about the fronts of an opening. */
export function checkFronts(planned: PlannedOpening, ends: { left: boolean; right: boolean }): Found[] {
  const { opening, fronts, drawers } = planned;
  const s = opening.standards;
  const { unit } = opening;
  const found: Found[] = [];
  if (isPositive(fronts.left)) {
    const shares = opening.drawers.some((drawer) => "parts" in drawer);
    found.push(doubtful(shares ? "fronts.remainder" : "fronts.unfilled", { left: fronts.left, step: s["front step"] }));
  }
  const isInset = isWithin(s);
  const hasNeighbor = fronts.fronts.length > 1 || (!isInset && !(ends.left && ends.right));
  if (hasNeighbor && less(s["front gap"], roundFigure("1/16", "1.5", unit))) {
    found.push(doubtful("gap.tight", { gap: s["front gap"] }));
  }
  if (isInset && less(s["inset gap"], roundFigure("1/16", "1.5", unit))) {
    found.push(doubtful("gap.tightInset", { gap: s["inset gap"] }));
  }
  const width = fronts.fronts[0]!.width.value;
  const [drawer] = drawers;
  if (drawer && pullsOf(drawer).length === 1 && !less(width, s["two pulls from"]))
    found.push(doubtful("pull.one", { width }));
  if (
    isSolidWood(s["front material"]) &&
    s["front grain"] === "vertical" &&
    isMoreThan(width, roundFigure("12", "300", unit))
  ) {
    found.push(
      doubtful("front.solidUpright", {
        width,
        material: s["front material"],
        ...yearOf(movingOf(s["front material"], width, s), unit),
      }),
    );
  }
  return [
    ...found,
    ...checkJoined(opening),
    ...checkReveals(s, ends),
    ...checkShares(planned),
    ...checkFrame(opening, ends),
  ];
}

/** Where the grain of fronts that match cannot run on: what they are called, and why. */
export function checkMatches(plans: readonly PlannedOpening[]): Finding[] {
  return [
    ...stripsOf(plans).flatMap(({ label, way, fronts, between, hung, lines }): Finding[] => {
      const { standards: s, unit } = fronts[0]!.opening;
      const where = way === "down" ? label : fronts.map((front) => front.label).join(", ");
      const jumps = [{ between, hung }, ...lines].flatMap((strip) =>
        strip.hung.map((gap, i) => ({ gap, jump: subtract(strip.between[i]!, gap) })),
      );
      // The metric defaults differ by a fifth of a millimeter, which no eye sees.
      const seen = jumps.filter(({ jump }) => isMoreThan(jump, roundFigure("1/64", "0.4", unit)));
      return groupsOf(seen, ({ jump }) => keyOf(jump)).map(([one]) => ({
        where,
        ...doubtful("match.kerf", { kerf: s.kerf, ...one! }),
      }));
    }),
    ...unmatched(plans).map(({ label, opening }) => ({
      where: label,
      ...doubtful(opening.standards["front match"] === "panel" ? "match.grid" : "match.alone", {}),
    })),
  ];
}

/** A front that is its box's own holds sides in its end grain, and a bottom in its groove. */
function checkJoined({ standards: s }: Opening): Found[] {
  if (!isJoined(s)) return [];
  const upright = s["front grain"] === "vertical" && s["front joint"] !== "rabbet";
  return [
    ...(upright ? [doubtful("front.uprightJoint", { joint: s["front joint"] })] : []),
    ...(s["bottom fit"] === "applied" ? [doubtful("front.appliedBottom", {})] : []),
  ];
}

/** Where a rail or partition is thinner than the gap between the fronts before it, the opening shows beside it. */
function checkShares({ opening, face }: PlannedOpening): Found[] {
  const s = opening.standards;
  if (isWithin(s) ? !isLipped(s) : s.construction === "face frame") return [];
  const over: [string, boolean][] = [
    ["left", isNegative(face.left.value)],
    ["right", isNegative(face.right.value)],
    ["bottom", isPositive(face.bottom.value)],
    ["top", less(face.top.value, opening.least.height)],
  ];
  return over.filter(([, shows]) => shows).map(([side]) => wrong("front.short", { side }));
}

/** An overlay front must cover the carcase's edge, and should not stand out past it unseen. */
function checkReveals(s: Standards, ends: { left: boolean; right: boolean }): Found[] {
  if (isWithin(s) || s.construction === "face frame") return [];
  const reveals = [
    ...(s["rail above"] === "none" ? [["top", s["top reveal"]] as const] : []),
    ...(s["rail below"] === "none" ? [["bottom", s["bottom reveal"]] as const] : []),
    ...(ends.left ? [["left", s["left reveal"] ?? s["end reveal"]] as const] : []),
    ...(ends.right ? [["right", s["right reveal"] ?? s["end reveal"]] as const] : []),
  ];
  return reveals.flatMap(([side, reveal]): Found[] => {
    const thickness = s["cabinet thickness"];
    // One that leaves the opening itself uncovered is found by its share.
    if (equal(reveal, thickness)) return [doubtful("reveal.edge", { side, thickness })];
    return isNegative(reveal) ? [doubtful("reveal.past", { side, by: negate(reveal) })] : [];
  });
}
