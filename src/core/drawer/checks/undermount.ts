import { abs, add, half, isZero, less, subtract, type Rational } from "../../length";
import { hookHoleOf, isHoleWithinBack, leavesBack, notchOf, type Notch } from "../plan/box-back";
import { endInset } from "../plan/box-plan";
import type { Drawer, PlannedOpening } from "../plan/plan";
import type { Standards } from "../standards";
import { bottomRecess, depthDifference, hangsBelow, isUndermount, unstated } from "../undermount";
import { doubtful, isMoreThan, wrong, type Found } from "./finding";

/** What the data sheet of undermount slides asks of all boxes of an opening, where it was told, and where it was not. */
export function checkUndermount({ opening, drawers }: PlannedOpening): Found[] {
  const s = opening.standards;
  if (!isUndermount(s)) return [];
  const drawer = drawers[0]!;
  const names = unstated(s);
  const limit = s["undermount thickest side"];
  const { side } = drawer.stock;
  return [
    ...(names.length > 0 ? [doubtful("undermount.unstated", { names })] : []),
    ...(limit && !isZero(limit) && isMoreThan(side, limit) ? [wrong("undermount.sideThick", { side, limit })] : []),
    ...checkRecess(s),
    ...checkDepth(drawer),
    ...checkBack(drawer),
  ];
}

/** What it asks of one box: its space in its zone, and its back. */
export const checkUndermountBox = (drawer: Drawer): Found[] =>
  isUndermount(drawer.opening.standards) ? [...checkSpace(drawer), ...checkHook(drawer)] : [];

function checkSpace({ opening, zone, boxBottom, boxHeight }: Drawer): Found[] {
  const s = opening.standards;
  const top = subtract(subtract(zone.top.value, boxBottom.value), boxHeight.value);
  return (["below", "above"] as const).flatMap((where): Found[] => {
    const asked = s[`undermount space ${where}`];
    const left = where === "below" ? s["space below"] : top;
    return asked && less(left, asked) ? [wrong("undermount.space", { where, left, asked })] : [];
  });
}

/** Both of them are cut, and so may err by what a cut does. */
const differ = (s: Standards, a: Rational, b: Rational): boolean => isMoreThan(abs(subtract(a, b)), s["cut tolerance"]);

function checkRecess(s: Standards): Found[] {
  const asked = s["undermount bottom recess"];
  if (asked && isZero(asked)) return [];
  if (s["bottom fit"] === "applied") return [wrong("bottom.noRecess", {})];
  const recess = bottomRecess(s);
  return asked && differ(s, recess, asked) ? [wrong("undermount.recess", { recess, asked })] : [];
}

/** Where no difference is known, common practice is a box as deep as its slide is long. */
function checkDepth({ opening, stock }: Drawer): Found[] {
  const [depth, slide] = [stock.behind.value, stock.slide.value];
  const asked = subtract(slide, depthDifference(opening.standards));
  return differ(opening.standards, depth, asked) ? [wrong("undermount.depth", { depth, slide, asked })] : [];
}

/** What is cut and drilled into the backs of an opening, which are equally long and thick. */
function checkBack(drawer: Drawer): Found[] {
  const { stock, opening } = drawer;
  const notch = notchOf(drawer);
  const depth = hookHoleOf(drawer)?.depth;
  const width = opening.standards["undermount notch width"];
  return [
    ...(notch ? checkNotch(opening.standards, notch) : []),
    ...(notch && !leavesBack(notch, drawer)
      ? [wrong("undermount.notchWide", { width, length: stock.endLength.value })]
      : []),
    ...checkReach(opening.standards),
    ...(depth && !less(depth, stock.end) ? [doubtful("undermount.hookThrough", { depth, end: stock.end })] : []),
  ];
}

/** A notch reaches up to the bottom that the slide lies under. */
function checkNotch(s: Standards, { height }: Notch): Found[] {
  const recess = bottomRecess(s);
  if (checkRecess(s).length > 0 || !differ(s, recess, height)) return [];
  const short = less(height, recess);
  return [doubtful("undermount.notchHeight", { height, by: abs(subtract(height, recess)), short })];
}

/** Hooks reach for a back at the rear end of its box; one in dadoes stands short of that. */
function checkReach(s: Standards): Found[] {
  const [hole, inset] = [s["undermount hook hole"], endInset(s)];
  return isZero(inset) || (hole && isZero(hole)) ? [] : [doubtful("undermount.backInset", { inset })];
}

/** Holes of hooks that miss the back of one box. One that meets the bottom under the back too is drilled into both. */
function checkHook(drawer: Drawer): Found[] {
  const hole = hookHoleOf(drawer);
  if (!hole || isHoleWithinBack(hole, drawer)) return [];
  const { diameter, fromEnd, up } = hole;
  const s = drawer.opening.standards;
  const [height, bottom] = [s["undermount hook height"]!, s["bottom thickness"]];
  const inBoth = !hangsBelow(s) && !less(height, half(diameter)) && less(height, add(bottom, half(diameter)));
  if (inBoth) return [doubtful("undermount.hookInBottom", { diameter, height, bottom })];
  const data = { diameter, fromEnd: fromEnd.value, up: up.value, height: drawer.backHeight.value };
  return [wrong("undermount.hookOff", data)];
}
