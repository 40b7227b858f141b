import { isFramed, type Drawer } from "../core/drawer";
import { add, isZero, type Rational } from "../core/length";
import { carcaseOf } from "./carcase";
import { Paper } from "./paper";
import { scaleFor, type Scale } from "./scale";

/** A section's paper, on which the opening's floor is at 0. */
export interface Desk {
  paper: Paper;
  scale: Scale;
  /** A height above the floor. */
  y(height: Rational): number;
  /** What bounds the opening above and below, cut, from one place across to another. */
  boards(from: number, to: number): void;
}

/** What a section may take on the paper, in millimeters. */
const ROOM = { width: 72, height: 100 };

/** @param width of all that is shown */
export function sectionDesk(drawer: Drawer, width: Rational): Desk {
  const { opening, cabinet } = drawer;
  const carcase = carcaseOf([{ opening, cabinet }]);
  const scale = scaleFor(
    [
      [width, ROOM.width],
      [add(carcase.top, carcase.bottom), ROOM.height],
    ],
    opening.unit,
  );
  const paper = new Paper();
  const y = (height: Rational): number => (isZero(height) ? 0 : -scale.of(height));
  return {
    paper,
    scale,
    y,
    boards(from, to) {
      const [top, ceiling, bottom] = [y(carcase.top), y(opening.least.height), scale.of(carcase.bottom)];
      // Only the edges of a face frame's rails are known, not how thick they are.
      if (isFramed(opening)) {
        paper.line("visible", [from, ceiling], [to, ceiling]);
        paper.line("visible", [from, 0], [to, 0]);
        return;
      }
      paper.rectangle("visible", from, top, to - from, ceiling - top, "end");
      paper.rectangle("visible", from, 0, to - from, bottom, "end");
    },
  };
}
