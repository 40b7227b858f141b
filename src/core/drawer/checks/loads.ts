import { carriedBy, RATINGS, ratingFor, saggingOf } from "../loads";
import type { Drawer } from "../plan/plan";
import { doubtful, wrong, type Found } from "./finding";

/** What a drawer's load asks of its slides and its bottom; all of it estimates. */
export const checkLoads = (drawer: Drawer): Found[] => [...checkRating(drawer), ...checkSag(drawer)];

/** Wood runners have no rating, and center-mount slides one of their own kind. */
function checkRating(drawer: Drawer): Found[] {
  const { standards: s, unit } = drawer.opening;
  if (s.slide === "wood runner") return [];
  const { load, box, total } = carriedBy(drawer);
  const rating = s["slide rating"];
  const needs = ratingFor(total, unit);
  const weights = { load: tenths(load), box: tenths(box), total: tenths(total) };
  if (rating === undefined) {
    const most = Math.max(...RATINGS[unit]);
    return needs === undefined ? [doubtful("slide.beyond", { ...weights, most })] : [];
  }
  const remedy = needs ?? Math.ceil(total);
  if (total > rating) return [wrong("slide.overloaded", { ...weights, rating: tenths(rating), needs: remedy })];
  return total > NEAR * rating ? [doubtful("slide.nearRating", { ...weights, rating: tenths(rating) })] : [];
}

/** Within a tenth of what they carry a few things more are too many. */
const NEAR = 0.9;

function checkSag(drawer: Drawer): Found[] {
  const sagging = saggingOf(drawer);
  if (!sagging) return [];
  const { sag, limit, span, thickness, load, thicker, divided } = sagging;
  if (sag !== undefined && sag <= limit) return [];
  const data = { thickness, span, load: tenths(load), limit: Math.round(1 / drawer.opening.standards["sag limit"]) };
  const { unit } = drawer.opening;
  const fine = (size: number): number => Number(size.toFixed(unit === "in" ? 3 : 1));
  const remedy = { ...(thicker && { thicker }), ...(divided !== undefined && { divided: fine(divided) }) };
  return sag === undefined
    ? [wrong("bottom.breaks", { ...data, ...remedy })]
    : [doubtful("bottom.sags", { ...data, sag: fine(sag), ...remedy })];
}

const tenths = (weight: number): number => Math.round(weight * 10) / 10;
