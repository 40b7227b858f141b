import { pullHeightOf, pullHolesOf, pullsOf, type Drawer } from "../core/drawer";
import { half, orElse, type Rational } from "../core/length";
import type { Paper } from "./paper";
import type { Scale } from "./scale";

/**
 * A front's pulls: shop-made ones as large as they are, bought ones, of which only the holes are known, as a bar from
 * hole to hole, and knobs as a round.
 * @param x of the front's left edge
 */
export function drawPulls(paper: Paper, scale: Scale, drawer: Drawer, x: number): void {
  const s = drawer.opening.standards;
  const y = -scale.of(pullHeightOf(drawer).value);
  const found = <T>(of: () => readonly T[]): readonly T[] => orElse(of, () => []);
  if (s["pull kind"] === "shop-made") {
    for (const { value } of found(() => pullsOf(drawer))) {
      plate(paper, x + scale.of(value), y, scale.of(half(s["pull length"])), scale.of(half(s["pull width"])));
    }
    return;
  }
  const holes = found(() => pullHolesOf(drawer)).map((hole: Rational) => x + scale.of(hole));
  const paired = found(() => pullsOf(drawer)).length < holes.length;
  const radius = Math.min(paired ? 0.45 : 1, scale.of(drawer.front.height.value) / 4);
  for (const hole of holes) paper.circle("visible", hole, y, radius, "paper");
  if (!paired) return holes.forEach((hole) => keepFree(paper, hole - radius, hole + radius, y, radius));
  for (let i = 0; i < holes.length; i += 2) {
    const [from, to] = [holes[i]!, holes[i + 1]!];
    paper.line("visible", [from, y], [to, y]);
    keepFree(paper, from - radius, to + radius, y, radius);
  }
}

function plate(paper: Paper, x: number, y: number, halfLength: number, halfWidth: number): void {
  paper.rectangle("visible", x - halfLength, y - halfWidth, 2 * halfLength, 2 * halfWidth, "paper");
  keepFree(paper, x - halfLength, x + halfLength, y, halfWidth);
}

const keepFree = (paper: Paper, left: number, right: number, y: number, by: number): void =>
  paper.keep({ left: left - 0.5, right: right + 0.5, top: y - by - 0.3, bottom: y + by + 0.3 });
