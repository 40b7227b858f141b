import { Fault, isPositive, less, subtract, ZERO, type Rational } from "../length";
import { minus, plus, plusSum, shared, sum, type Size, type Term } from "./size";
import type { Standards } from "./standards";

/** Whether the front is its box's own front: the sides are joined to it, and there is no box front behind it. */
export const isJoined = (s: Standards): boolean => s["front style"] === "integral" || isLipped(s);

/** Whether a rabbet round the front lets it into the opening, and its lip laps that. */
export const isLipped = (s: Standards): boolean => s["front style"] === "lipped";

/** Whether fronts stand in the opening, by an inset gap smaller than that. A lipped one does but for its lip. */
export const isWithin = (s: Standards): boolean => s["front style"] !== "overlay";

/** How far the lip reaches round what of the front goes into the opening; nothing on other fronts. */
export const lipOf = (s: Standards): Rational => (isLipped(s) ? s.lip : ZERO);

/** Joints that show on the face of the front. */
const isThrough = (s: Standards): boolean => s["front joint"] === "dovetail" || s["front joint"] === "box joint";

/** What of the front stands before the ends of the sides: its lap or its lip; nothing where they come through. */
export function lapOf(s: Standards): Term {
  const [name, lap] = isLipped(s)
    ? (["lip thickness", s["lip thickness"]] as const)
    : (["front lap", s["front lap"]] as const);
  const front = s["front thickness"];
  if (!less(lap, front)) throw new Fault("front.lapThick", { name, lap, front });
  return plus(name, !isLipped(s) && isThrough(s) ? ZERO : lap);
}

/** How far the sides reach into the front, which is how deep its sockets and rabbets are. */
export const intoFront = (s: Standards): Rational => subtract(s["front thickness"], lapOf(s).value);

/** What closes a box in front: its name, how thick it is, and how far it stands in from the ends of the sides. */
export const closing = (
  s: Standards,
  end: Rational,
  inset: Rational,
): { name: string; thick: Rational; inset: Rational } =>
  isJoined(s)
    ? { name: "front thickness", thick: s["front thickness"], inset: ZERO }
    : { name: "end thickness", thick: end, inset };

/**
 * How far the front reaches past each side of its box: so much is rabbeted off its ends first.
 * @throws Fault `front.through` where a joint that shows on the face cannot be made
 */
export function pastSides(s: Standards, front: Rational, box: Rational): Size {
  const past = shared(sum(plus("front width", front), minus("box width", box)), 2);
  if (isThrough(s) && (isLipped(s) || isPositive(past.value))) {
    throw new Fault("front.through", { joint: s["front joint"], front, box });
  }
  return past;
}

/** What of a drawer is joined: its front, and the sides of its box. */
interface Joining {
  front: { width: Size };
  stock: { width: Size; side: Rational };
}

/** What is rabbeted off the front's left and right edge: what reaches past the box, and the sides where they lie in it. */
export const endRabbet = (s: Standards, { front, stock }: Joining): Size =>
  sum(
    plusSum(pastSides(s, front.width.value, stock.width.value)),
    plus("side thickness", s["front joint"] === "rabbet" ? stock.side : ZERO),
  );
