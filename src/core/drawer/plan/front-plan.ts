import { equal, subtract, total, ZERO, type Rational } from "../../length";
import { ACROSS, cutOfFront, UPRIGHT } from "../bands";
import { divideFace, type FrontShare } from "../fronts";
import { given, minus, plus, Size, sum, withResult } from "../size";
import type { Opening } from "../opening";
import type { Face } from "./face";

/** A front in its place, measured up from the opening's floor. */
export interface Front {
  height: Size;
  width: Size;
  bottom: Size;
  top: Rational;
  /** Its height before it was rounded to the step, which makes equal fronts differ. */
  unstepped: Rational;
  /** What it is cut to, before its edges are milled and banded. */
  cut: { height: Size; width: Size };
}

/** The fronts of an opening from top to bottom, and what their steps and fixed heights leave below them. */
export interface Fronts {
  fronts: Front[];
  /** What widens the bottom reveal. */
  left: Rational;
}

/** @throws Fault where the fronts asked for do not go into the face */
export function frontsOf(opening: Opening, face: Face): Fronts {
  const { "front gap": gap, "front step": step } = opening.standards;
  const asked = opening.drawers;
  const shares = divideFace(face.height.value, asked, { gap, first: ZERO, last: ZERO }, step);
  const parts = total(asked.map((drawer) => ("parts" in drawer ? drawer.parts : ZERO)));
  const fixed = total(asked.map((drawer) => ("fixed" in drawer ? drawer.fixed : ZERO)));
  const room = sum(
    plus("face height", face.height),
    minus("front gap", gap, asked.length - 1),
    minus("fixed fronts", fixed),
  );
  let edge = face.top.value;
  let above = plus("upper edge of the face", face.top);
  const fronts = shares.map((front, i): Front => {
    const drawer = asked[i]!;
    const height =
      "fixed" in drawer ? given(front.height, "as asked for") : sharedHeight(front, drawer.parts, parts, room, step);
    const bottom =
      i === 0
        ? sum(above, minus("front height", height))
        : sum(above, minus("front gap", gap), minus("front height", height));
    const top = i === 0 ? edge : subtract(edge, gap);
    edge = bottom.value;
    above = plus("lower edge of the front above", bottom);
    return {
      height,
      width: face.width,
      bottom,
      top,
      unstepped: front.exact ?? front.height,
      cut: {
        height: cutOfFront("front height", height, opening.standards, UPRIGHT),
        width: cutOfFront("front width", face.width, opening.standards, ACROSS),
      },
    };
  });
  return { fronts, left: subtract(edge, face.bottom.value) };
}

function sharedHeight(front: FrontShare, parts: Rational, all: Rational, room: Size, step: Rational): Size {
  return new Size(front.height, (write) => {
    const whole = `(${room.how(write)})`;
    const share = equal(parts, all) ? room.how(write) : `${write(parts)} of ${write(all)} parts of ${whole}`;
    const exact = front.exact!;
    if (equal(exact, front.height)) return share;
    const spare = front.spare ? `, and a spare step` : "";
    return `${withResult(share, write(exact))}, down to a multiple of ${write(step)}${spare}`;
  });
}
