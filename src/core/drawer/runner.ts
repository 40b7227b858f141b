import { add, Fault, less, share, type Rational } from "../length";
import { plus, sum, type Size } from "./size";
import type { Standards } from "./standards";
import type { Runner } from "./words";

/** How a box is hung on wood runners; none where it is not. */
export const runnerOf = (s: Standards): Runner | undefined => (s.slide === "wood runner" ? s.runner : undefined);

/** Whether what holds a box is fixed at its side, at a height that can be chosen. */
export const hangsAtSide = (s: Standards): boolean => s.slide === "side-mount" || runnerOf(s) === "side groove";

/** Strips are of the sides' stock where nothing else is said. */
export const stripThickness = (s: Standards): Rational => s["runner thickness"] ?? s["side thickness"];
export const stripMaterial = (s: Standards): string => s["runner material"] ?? s["side material"];

/** @source common practice: a groove takes no more than half of its stock */
export const runnerGrooveDepth = (s: Standards): Rational => s["runner groove depth"] ?? share(s["side thickness"], 2);

export const runnerGrooveWidth = (s: Standards): Size =>
  sum(plus("runner thickness", stripThickness(s)), plus("runner play", s["runner play"]));

/** @throws Fault `runner.through`, `runner.thin` where a groove and its strip cannot be made */
export function checkRunner(s: Standards, clearance: Rational): void {
  if (runnerOf(s) !== "side groove") return;
  const [depth, side, play] = [runnerGrooveDepth(s), s["side thickness"], s["runner play"]];
  if (!less(depth, side)) throw new Fault("runner.through", { depth, side });
  if (!less(play, add(clearance, depth))) throw new Fault("runner.thin", { clearance, depth, play });
}
