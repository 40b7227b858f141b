import { mountingOf, type PlannedOpening } from "../core/drawer";
import { add, showLength } from "../core/length";
import { heightAtLeft, heightsAtRight, notes } from "./dimensions";
import type { Drawing } from "./drawing";
import { sectionDesk } from "./desk";
import { LETTERS, textRoom } from "./paper";

/** Across, in millimeters of the paper: boxes and what they stand on, in a strip of the opening's height. */
const WIDE = 34;

/**
 * The spacers that set the boxes of an opening without measuring: one under the lowest, and one between each box and the
 * next, hatched, from the floor up.
 */
export function spacerStack(planned: PlannedOpening): Drawing {
  const { opening, drawers } = planned;
  const desk = sectionDesk(drawers[0]!, opening.least.width);
  const { paper, scale, y } = desk;
  desk.boards(0, WIDE);
  const sized = (length: Parameters<typeof showLength>[0]): string => showLength(length, opening.unit);
  const mountings = mountingOf(planned);
  const spacers = mountings.map(({ drawer: { label, boxBottom, boxHeight }, boxSpacer }) => {
    const [bottom, top] = [y(boxBottom.value), y(add(boxBottom.value, boxHeight.value))];
    const high = scale.of(boxSpacer.value);
    paper.rectangle("visible", 4, top, WIDE - 8, bottom - top, "paper");
    // A box too low for its name has it beside its spacer alone.
    const size = Object.values(LETTERS).find((one) => textRoom(label, one).height <= bottom - top);
    if (size) paper.label(label, WIDE / 2, (top + bottom) / 2, { room: WIDE - 10, size });
    if (high > 0) paper.rectangle("visible", 8, bottom, WIDE - 16, high, "cut");
    return {
      from: bottom,
      to: bottom + high,
      text: sized(boxSpacer.value),
      of: `${label} Box spacer`,
      name: label,
    };
  });
  heightsAtRight(paper, WIDE, WIDE + 4, spacers);
  heightAtLeft(paper, 0, -4, {
    from: y(opening.least.height),
    to: 0,
    text: sized(opening.least.height),
    of: `${opening.label} Opening height`,
  });
  notes(paper, paper.box.left, [{ text: `Scale ${scale.name}`, of: "scale" }]);
  const said = mountings.map(({ drawer, boxSpacer }) => `${sized(boxSpacer.value)} under ${drawer.label}`);
  return paper.finish(`Spacers of ${opening.label}`, `Spacers from the top: ${said.join(", ")}.`);
}
