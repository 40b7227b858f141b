import { equal, keyOf } from "../../length";
import { groupsOf } from "../groups";
import { lesser, Size, withResult } from "../size";
import type { Draft } from "./draft";

/**
 * Gives all boxes behind fronts of equal height, in the circle that their rows name, the least of their heights.
 * The step of the fronts counts for nothing: it makes fronts of equal share differ.
 * Boxes whose heights were asked for stay as they are, and count for nobody.
 */
export function matchHeights(drafts: readonly Draft[]): void {
  const boxes = drafts.flatMap((draft) => {
    const circle = circleOf(draft);
    if (circle === undefined || draft.opening.boxHeights) return [];
    return draft.fronts.fronts
      .slice(draft.first)
      .map(({ unstepped }, place) => ({ draft, place, key: `${circle} ${keyOf(unstepped)}` }));
  });
  for (const alike of groupsOf(boxes, ({ key }) => key)) if (alike.length > 1) level(alike);
}

function circleOf({ opening, cabinet }: Draft): string | undefined {
  switch (opening.standards["match heights"]) {
    case "opening":
      return `opening ${opening.place}`;
    case "cabinet":
      return `cabinet ${cabinet.openings[0]!.place}`;
    case "job":
      return "job";
    default:
      return undefined;
  }
}

function level(boxes: readonly { draft: Draft; place: number }[]): void {
  const least = boxes.map(({ draft, place }) => draft.heights[place]!).reduce(lesser);
  for (const { draft, place } of boxes) {
    const own = draft.heights[place]!;
    if (equal(own.value, least.value)) continue;
    const match = draft.opening.standards["match heights"];
    draft.heights[place] = new Size(
      least.value,
      (write) => `${withResult(own.how(write), write(own.value))}, matched to the least behind equal fronts (${match})`,
    );
  }
}
