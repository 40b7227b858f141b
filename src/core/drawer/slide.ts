import { Fault, less, subtract, type Rational } from "../length";

/**
 * The longest slide that the shop buys and the opening takes.
 * @throws Fault `slide.noneFits`, with the room and the shortest slide
 */
export function slideLength(
  insideDepth: Rational,
  rearClearance: Rational,
  frontSetback: Rational,
  lengths: readonly Rational[],
): Rational {
  const room = subtract(subtract(insideDepth, rearClearance), frontSetback);
  let longest: Rational | undefined;
  for (const length of lengths) {
    if (!less(room, length) && (!longest || less(longest, length))) longest = length;
  }
  if (longest) return longest;
  const shortest = lengths.reduce((a, b) => (less(b, a) ? b : a));
  throw new Fault("slide.noneFits", { insideDepth, room, shortest });
}
