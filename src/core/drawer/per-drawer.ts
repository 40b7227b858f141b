import { Fault } from "../length";
import type { Opening } from "./opening";

/** What one drawer has of a standard that holds for all of its opening's, or lists them from the top. */
export function ofDrawer<T>(
  { opening, place }: { opening: Pick<Opening, "drawers">; place: number },
  name: string,
  asked: readonly T[],
): T {
  const { length: count } = opening.drawers;
  if (asked.length !== 1 && asked.length !== count) throw new Fault("list.count", { name, given: asked.length, count });
  return asked[asked.length === 1 ? 0 : place]!;
}
