import { Fault, isZero, less, lesserOf, subtract, type Rational } from "../length";
import { Size } from "./size";

/**
 * The longest slide that the shop buys and the opening takes.
 * @throws Fault `slide.noneFits`, with the room and the shortest slide
 */
export function slideLength(
  insideDepth: Rational,
  rearClearance: Rational,
  frontSetback: Rational,
  lengths: readonly Rational[],
): Size {
  const room = subtract(subtract(insideDepth, rearClearance), frontSetback);
  const longest = longestWithin(room, lengths);
  if (!longest) {
    const shortest = lengths.reduce(lesserOf);
    throw new Fault("slide.noneFits", { insideDepth, room, shortest });
  }
  return new Size(longest, (write) => {
    const setback = isZero(frontSetback) ? "" : ` − front setback ${write(frontSetback)}`;
    const sum = `opening depth ${write(insideDepth)} − rear clearance ${write(rearClearance)}${setback}`;
    return `longest slide on sale within ${sum} = ${write(room)}`;
  });
}

/** The longest of `lengths` that is at most `room`. */
export function longestWithin(room: Rational, lengths: readonly Rational[]): Rational | undefined {
  let longest: Rational | undefined;
  for (const length of lengths) {
    if (!less(room, length) && (!longest || less(longest, length))) longest = length;
  }
  return longest;
}
