import { add, divide, Fault, half, less, ratio, share, subtract, times, wholePart, type Rational } from "../length";
import { isJoined } from "./joined-front";
import { given, plus, shared, Size, sum } from "./size";
import type { Standards } from "./standards";

/** A joint laid out along a height: from its upper edge to where its pins, tails or fingers begin and end. */
export interface JointLayout {
  /** From pin to pin of dovetails. */
  pitch?: Size;
  /** The width of a whole pin where it is narrowest, or of a finger: what a cutter must go into. */
  pin: Size;
  marks: Rational[];
}

/**
 * Dovetails with half a pin at both edges, or an odd number of equal fingers, so that both edges are alike. Nothing where
 * no pitch is asked for, or the joint has none.
 * @throws Fault `joint.pinWide`
 */
function jointLayout(s: Standards, joint: string, name: string, height: Size): JointLayout | undefined {
  const asked = s["joint pitch"];
  if (!asked || !isLaidOut(joint)) return undefined;
  const whole = sum(plus(name, height));
  if (joint === "box joint") {
    // The nearest odd number: two fingers make a pitch.
    const count = 2 * Number(wholePart(divide(height.value, asked))) + 1;
    const pin = each(whole, count);
    return { pin, marks: Array.from({ length: count - 1 }, (_, i) => times(i + 1, pin.value)) };
  }
  const count = Math.max(1, Number(wholePart(add(divide(height.value, asked), ratio(1, 2)))));
  const pitch = each(whole, count);
  const own = s["pin width"];
  const pin =
    own === "auto"
      ? new Size(share(pitch.value, 3), (write) => `a third of joint pitch ${write(pitch.value)}`)
      : given(own, "as the standard says");
  if (!less(pin.value, pitch.value)) throw new Fault("joint.pinWide", { pin: pin.value, pitch: pitch.value });
  const marks = Array.from({ length: count }, (_, i) => [
    add(times(i, pitch.value), half(pin.value)),
    subtract(times(i + 1, pitch.value), half(pin.value)),
  ]).flat();
  return { pitch, pin, marks };
}

/** One of so many equal ones. */
const each = (whole: Size, count: number): Size =>
  new Size(shared(whole, count).value, (write) => `${whole.how(write)} / ${count}`);

const isLaidOut = (joint: string): boolean => /dovetail|box joint/.test(joint);

/** Whether any joint of an opening can be laid out. */
export const hasLayout = (s: Standards): boolean =>
  isLaidOut(s["corner joint"]) || (isJoined(s) && isLaidOut(s["front joint"]));

/** The layouts of a drawer's corners, in front and behind, with the joint that each is of. */
export function layoutsOf(
  s: Standards,
  { sideHeight, backHeight }: { sideHeight: Size; backHeight: Size },
): Record<"front" | "back", { joint: string; layout: JointLayout | undefined }> {
  const front = isJoined(s) ? s["front joint"] : s["corner joint"];
  const back = s["corner joint"];
  return {
    front: { joint: front, layout: jointLayout(s, front, "side height", sideHeight) },
    back: {
      joint: back,
      layout: jointLayout(s, back, backHeight === sideHeight ? "side height" : "box back height", backHeight),
    },
  };
}
