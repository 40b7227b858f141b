import { cutLine, type Exact, type SawCut, type SheetStock } from "../core/sheets";
import type { Asides } from "./asides";
import { ringBox, type Paper } from "./paper";
import type { Scale } from "./scale";

type Point = readonly [x: number, y: number];

/**
 * The number of every cut, at the edge that it cuts free: beside the sheet where the cut ends there, else on the piece, in
 * the first place along the edge that is free.
 */
export function cutNumbers(
  paper: Paper,
  scale: Scale,
  cuts: readonly SawCut[],
  exact: Exact,
  { length, width }: SheetStock,
  asides: Asides,
): void {
  const end = { rip: scale.of(length), crosscut: scale.of(width) };
  for (const cut of cuts) {
    const { kind, step, setting } = cut;
    const line = cutLine(cut, exact);
    const text = String(step);
    const { right, bottom } = ringBox(text, 0, 0);
    const [half, across] = kind === "rip" ? [right, bottom] : [bottom, right];
    const [at, from, to] = [line.at, line.from, line.to].map((place) => scale.of(place)) as [number, number, number];
    const inside = at + (cut.frees.keeps === "before" ? -1 : 1) * (across + 0.3);
    // Along the cut and across it; on the paper y goes down.
    const along: Point[] = to >= end[kind] - 1 ? [[end[kind] + half + 0.8, at]] : [];
    // On a piece narrower than itself a ring would tell of its neighbor as well.
    const goesIn = 2 * across + 0.3 <= scale.of(setting);
    for (let place = to - half - 0.3; goesIn && place - half >= from; place -= half / 2) along.push([place, inside]);
    const places = along.map(([a, b]): Point => (kind === "rip" ? [a, -b] : [b, -a]));
    const free = places.find(([x, y]) => paper.isFree(ringBox(text, x, y)));
    if (free) paper.ring(text, ...free, "cut");
    else asides.unnumbered.push(step);
  }
}
