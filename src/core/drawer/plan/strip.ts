import { share, type Rational } from "../../length";
import { runnerGrooveDepth, runnerGrooveWidth, runnerOf, stripMaterial, stripThickness } from "../runner";
import { given, minus, plus, sum, type Size } from "../size";
import { sideSpace } from "./mounting";
import type { Drawer } from "./plan";

/** One of the two strips that a box slides on: as long as the box is deep. */
export interface Strip {
  length: Size;
  /** From the case inward. */
  width: Size;
  /** Its height, which is the thickness of its stock. */
  thickness: Rational;
  material: string;
}

/**
 * The strips of a drawer on wood runners.
 * @source common practice: a strip in a groove stays clear of the groove's bottom
 */
export function stripOfRunner(drawer: Pick<Drawer, "opening" | "stock">): Strip | undefined {
  const s = drawer.opening.standards;
  const runner = runnerOf(s);
  if (!runner) return undefined;
  const width =
    runner === "under"
      ? given(s["runner width"], "as the standard says")
      : sum(
          plus("side space", sideSpace(drawer)),
          plus("runner groove depth", runnerGrooveDepth(s)),
          minus("runner play", s["runner play"]),
        );
  return {
    length: drawer.stock.behind,
    width,
    thickness: stripThickness(s),
    material: stripMaterial(s),
  };
}

/** The groove that a strip runs in, on the outer face of a side, through from end to end. */
export interface RunnerGroove {
  width: Size;
  depth: Rational;
  /** From the side's lower edge to its own. */
  offset: Size;
}

export function runnerGrooveOf({ opening, slideCenterline, boxBottom }: Drawer): RunnerGroove | undefined {
  const s = opening.standards;
  if (runnerOf(s) !== "side groove" || !slideCenterline) return undefined;
  const width = runnerGrooveWidth(s);
  // On an applied bottom the sides begin above the box's lower edge.
  const below = s["bottom fit"] === "applied" ? [minus("bottom thickness", s["bottom thickness"])] : [];
  return {
    width,
    depth: runnerGrooveDepth(s),
    offset: sum(
      plus("slide centerline", slideCenterline),
      minus("box bottom", boxBottom),
      ...below,
      minus("half of the runner groove", share(width.value, 2)),
    ),
  };
}
