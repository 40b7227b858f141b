import { add, Fault, isPositive, less, total, type Rational } from "../../length";
import { checkGroove, checkHold } from "../bottom";
import { checkSocket } from "../corner";
import { lapOf } from "../joined-front";
import { minus, plus, sum, type Size } from "../size";
import type { Standards } from "../standards";

/**
 * What of a box is measured from front to back, where its front is its own: the box begins at that front's face, and
 * only the back is joined and set in as the corner joint says.
 * @throws Fault where joints, grooves and thicknesses do not go together
 */
export function joinedBox(
  s: Standards,
  depth: Rational,
  end: Rational,
  inset: Rational,
): Record<"behind" | "sideLength" | "insideDepth" | "bottomDepth", Size> {
  const whole = plus("box depth", depth);
  const front = minus("front thickness", s["front thickness"]);
  const back = [minus("end thickness", end), minus("dado inset", inset)];
  const insideDepth = sum(whole, front, ...back);
  const both = total([s["front thickness"], end, inset]);
  if (!isPositive(insideDepth.value)) throw new Fault("front.boxShallow", { depth, both });
  const socket =
    s["corner joint"] === "half-blind dovetail"
      ? [minus("end thickness", end), plus("socket depth", checkSocket(end, s["joint depth"]))]
      : [];
  return {
    behind: sum(whole, front),
    sideLength: sum(whole, { ...lapOf(s), minus: true }, ...socket),
    insideDepth,
    bottomDepth: bottomDepth(),
  };

  /** In the front's groove, and in the back's or under the back; applied, it lies behind the front. */
  function bottomDepth(): Size {
    if (s["bottom fit"] === "applied") return sum(whole, front);
    const [groove, play] = [s["groove depth"], s["bottom play"]];
    checkGroove(groove, less(end, s["front thickness"]) ? end : s["front thickness"], "end");
    const grooved = s["bottom fit"] === "grooved";
    checkHold(grooved ? add(groove, groove) : groove, play);
    return sum(
      whole,
      front,
      ...(grooved ? back : [back[1]!]),
      plus("groove depth", groove, grooved ? 2 : 1),
      minus("bottom play", play),
    );
  }
}
