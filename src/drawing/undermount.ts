import { hookHoleOf, notchOf, sideSpace, type Drawer } from "../core/drawer";
import { add, half, subtract, type Rational } from "../core/length";
import type { Desk } from "./desk";

/** What is cut and bored for undermount slides into the back, seen from the side: hidden in it, for it lies at the back's ends. */
export function backFromSide({ paper, scale, y }: Desk, drawer: Drawer, [inner, outer]: [number, number]): void {
  const [notch, hole] = [notchOf(drawer), hookHoleOf(drawer)];
  const up = (height: Rational): number => y(add(lowerEdge(drawer), height));
  if (notch) paper.line("hidden", [inner, up(notch.height)], [outer, up(notch.height)]);
  if (!hole) return;
  const [middle, radius] = [up(hole.up.value), scale.of(half(hole.diameter))];
  const end = hole.depth ? Math.max(inner, outer - scale.of(hole.depth)) : inner;
  paper.line(
    "hidden",
    [outer, middle - radius],
    [end, middle - radius],
    [end, middle + radius],
    [outer, middle + radius],
  );
}

/** The same from the front, at both ends of the back. */
export function backAcross({ paper, scale, y }: Desk, drawer: Drawer): void {
  const { stock } = drawer;
  const [notch, hole] = [notchOf(drawer), hookHoleOf(drawer)];
  const left = scale.of(add(sideSpace(drawer).value, half(subtract(stock.width.value, stock.endLength.value))));
  const right = left + scale.of(stock.endLength.value);
  const low = y(lowerEdge(drawer));
  if (notch) {
    const [wide, high] = [scale.of(notch.fromEnd.value), scale.of(notch.height)];
    for (const x of [left, right - wide]) paper.rectangle("visible", x, low - high, wide, high, "paper");
  }
  if (hole) {
    const [inset, radius] = [scale.of(hole.fromEnd.value), scale.of(half(hole.diameter))];
    for (const x of [left + inset, right - inset]) paper.circle("thin", x, low - scale.of(hole.up.value), radius);
  }
}

/** From the sides' lower edge up to the bottom, where slides stand in it. */
export const recessOf = ({ opening: { standards: s } }: Drawer): Rational | undefined =>
  s.slide === "undermount" && s["bottom fit"] !== "applied" ? s["groove offset"] : undefined;

const lowerEdge = ({ boxBottom, boxHeight, backHeight }: Drawer): Rational =>
  subtract(add(boxBottom.value, boxHeight.value), backHeight.value);
