import type { Rational } from "../length";
import { ofDrawer } from "./per-drawer";
import { endInset } from "./plan/box-plan";
import type { Drawer } from "./plan/plan";
import { given, minus, plus, shared, sum, type Size } from "./size";

/** A box cut out from behind, round the plumbing under a sink. */
export interface Cutout {
  width: Rational;
  /** From the left of the box. */
  from: Size;
  /** What is left inside at both sides of it and before it, once walls as thick as sides and ends stand round it. */
  left: Size;
  right: Size;
  front: Size;
}

/** @throws Fault `list.count` */
export function cutoutOf(drawer: Drawer): Cutout | undefined {
  const { opening, stock } = drawer;
  const s = opening.standards;
  const width = ofDrawer(drawer, "cutout width", s["cutout width"]);
  if (width === "none") return undefined;
  const [box, cut, walls] = [
    plus("box width", stock.width),
    minus("cutout width", width),
    minus("side thickness", stock.side, 2),
  ];
  const asked = s["cutout left"];
  const from = asked === "center" ? shared(sum(box, cut), 2) : given(asked, "as the standard says");
  return {
    width,
    from,
    left: sum(plus("left of the cutout", from), walls),
    right: sum(box, minus("left of the cutout", from), cut, walls),
    front: sum(
      plus("inside depth", stock.insideDepth),
      plus("dado inset", endInset(s)),
      minus("cutout depth", s["cutout depth"]),
    ),
  };
}
