import { add, half, isZero, less, share, subtract, ZERO, type Rational } from "../../length";
import { minus, plus, sum, type Size, type Term } from "../size";
import { bottomRecess, hangsBelow, isUndermount } from "../undermount";
import type { Drawer } from "./plan";

/** What is cut out of both lower corners of a back, so that it clears undermount slides. */
export interface Notch {
  /** From the back's end inward. */
  fromEnd: Size;
  /** From its lower edge up. */
  height: Rational;
}

/** The holes in a back that the hooks of undermount slides go into, one at each end. */
export interface HookHole {
  diameter: Rational;
  /** None where it goes through. */
  depth?: Rational;
  /** From the back's end, and from its lower edge, to the hole's center. */
  fromEnd: Size;
  up: Size;
}

/** None where nothing is asked for, or not all of it is known. */
export function notchOf(drawer: Drawer): Notch | undefined {
  const s = drawer.opening.standards;
  const [width, height] = [s["undermount notch width"], s["undermount notch height"]];
  if (!isUndermount(s) || !hangsBelow(s) || !isAsked(width) || !isAsked(height)) return undefined;
  return { fromEnd: sum(plus("notch width", width), pastSide(drawer)), height };
}

/** None where nothing is asked for, or not all of it is known. */
export function hookHoleOf(drawer: Drawer): HookHole | undefined {
  const s = drawer.opening.standards;
  const [diameter, inset, height] = [
    s["undermount hook hole"],
    s["undermount hook inset"],
    s["undermount hook height"],
  ];
  if (!isUndermount(s) || !isAsked(diameter) || !inset || !height) return undefined;
  const depth = s["undermount hook depth"];
  const up = hangsBelow(s)
    ? sum(plus("groove offset", bottomRecess(s)), plus("hook height", height))
    : sum(plus("hook height", height), minus("bottom thickness", s["bottom thickness"]));
  return { diameter, ...(isAsked(depth) && { depth }), fromEnd: sum(plus("hook inset", inset), pastSide(drawer)), up };
}

const isAsked = (length: Rational | undefined): length is Rational => length !== undefined && !isZero(length);

/** How far the back reaches past the side's inner face, from which data sheets measure. */
function pastSide({ stock, opening }: Drawer): Term {
  const joint = opening.standards["corner joint"];
  const past = share(subtract(stock.endLength.value, stock.insideWidth.value), 2);
  return plus(joint === "rabbet" || joint === "dado" ? `${joint} depth` : "side thickness", past);
}

/** Whether the notches of both ends leave something of the back between them. */
export const leavesBack = ({ fromEnd }: Notch, { stock }: Drawer): boolean =>
  less(fromEnd.value, half(stock.endLength.value));

/** Whether a hook's hole has wood of the back all round it. */
export function isHoleWithinBack({ diameter, fromEnd, up }: HookHole, drawer: Drawer): boolean {
  const radius = half(diameter);
  const notch = notchOf(drawer);
  const overNotch = notch && less(subtract(fromEnd.value, radius), notch.fromEnd.value);
  const lower = subtract(up.value, radius);
  return (
    !less(lower, overNotch ? notch.height : ZERO) &&
    !less(drawer.backHeight.value, add(up.value, radius)) &&
    !less(fromEnd.value, radius) &&
    less(add(fromEnd.value, radius), half(drawer.stock.endLength.value))
  );
}
