import { intoFront, isJoined, layoutsOf, type Drawer } from "../core/drawer";
import { half } from "../core/length";
import { SEEN, type CornerSheet } from "./corner-sheet";
import { heightAtLeft, heightsAtRight } from "./dimensions";
import { textRoom } from "./paper";

/** One in so many. @source common practice: 1 in 8 for hardwoods; the cutter has its own */
const SLOPE = 8;

/**
 * Tails or fingers at the front end of a side, seen on its outer face: the upper half, for the other is alike. Tails are
 * widest at the side's end.
 */
export function laidOut({ paper, scale, size }: CornerSheet, drawer: Drawer): void {
  const { opening, sideHeight, stock } = drawer;
  const s = opening.standards;
  const { joint, layout } = layoutsOf(s, drawer).front;
  if (!layout) return;
  const isTails = joint !== "box joint";
  const top = paper.box.bottom + textRoom("0").height + 6;
  paper.label(isTails ? `Tails, the upper half; slope 1 in ${SLOPE}` : "Fingers, the upper half", 0, top - 4, {
    anchor: "start",
  });
  const deep = scale.of(isJoined(s) ? intoFront(s) : stock.end);
  const middle = top + scale.of(half(sideHeight.value));
  const inward = isTails ? deep / SLOPE : 0;
  const marks = layout.marks.map((mark) => top + scale.of(mark));
  const right = deep + SEEN;
  paper.rectangle("thin", 0, top, right, middle - top, "paper");
  paper.line("visible", [right, top], [0, top]);
  paper.line("visible", [deep, top], [deep, middle]);
  // Between two marks there is a tail or a finger of the side; a finger is at the edge as well.
  marks.forEach((y, i) => {
    if (y >= middle) return;
    const slant = isTails ? (i % 2 === 0 ? inward : -inward) : 0;
    paper.line("visible", [0, y], [deep, Math.min(y + slant, middle)]);
  });
  const [first, second, third] = marks;
  if (isTails && layout.pitch && third !== undefined && third <= middle) {
    heightAtLeft(paper, 0, -4, size(second!, third, layout.pin.value, "Pin width", "pin"));
  } else if (!isTails && first! <= middle) {
    heightAtLeft(paper, 0, -4, size(top, first!, layout.pin.value, "Finger width", "finger"));
  }
  if (layout.pitch && third !== undefined && third <= middle) {
    heightsAtRight(paper, right, right + 4, [size(first!, third, layout.pitch.value, "Joint pitch", "pitch")]);
  }
}
