import { endRabbet, intoFront, lapOf, pastSides, type Drawer } from "../core/drawer";
import { SEEN, type CornerSheet } from "./corner-sheet";
import { heightsAtRight, widthsAt } from "./dimensions";

/** A front that is its box's own, from above: its lap or lip at the left, a side joined to what stands behind that. */
export function frontCorner(
  { paper, scale, size }: CornerSheet,
  { front, stock, opening: { standards: s } }: Drawer,
): void {
  const lap = lapOf(s);
  const [side, thick, before] = [stock.side, s["front thickness"], scale.of(lap.value)];
  const [t, deep] = [scale.of(side), scale.of(thick)];
  const edge = -scale.of(pastSides(s, front.width.value, stock.width.value).value);
  const shoulder = edge + scale.of(endRabbet(s, { front, stock }).value);
  const [right, low] = [deep + SEEN, t + SEEN];
  paper.rectangle("thin", before, 0, right - before, t, "cut");
  paper.line("visible", [right, 0], [before, 0], [before, t], [right, t]);
  const outline: [number, number][] = [
    [0, low],
    [0, edge],
    [before, edge],
    [before, shoulder],
    [deep, shoulder],
    [deep, low],
  ];
  paper.shape("thin", outline, "end");
  paper.line("visible", ...outline);
  if (shoulder < t) {
    paper.line("hidden", [before, t], [deep, t]);
    paper.line("hidden", [before, 0], [before, t]);
  }
  let above = edge;
  for (const row of [
    [size(0, deep, thick, "Front Thickness", "front")],
    ...(before > 0 ? [[size(before, deep, intoFront(s), "Joint depth", "into")]] : []),
  ]) {
    above = widthsAt(paper, above, above - 4, row);
  }
  heightsAtRight(paper, right, right + 4, [size(0, t, side, "Side Thickness", "side")]);
}
