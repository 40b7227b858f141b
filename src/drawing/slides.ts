import { runnerGrooveOf, sideSpace, stripOfRunner, type Drawer } from "../core/drawer";
import { add, half } from "../core/length";
import type { Desk } from "./desk";

/**
 * What a drawer runs on, seen from the side: hidden behind its box where it is fixed at the side, open under the box. Of
 * undermount slides only the length is shown, as a line: their data sheets have the rest.
 * @param start of the box, and of its slide
 */
export function slideFromSide({ paper, scale, y }: Desk, drawer: Drawer, start: number): void {
  const { stock, boxBottom, slideCenterline, opening } = drawer;
  const s = opening.standards;
  const [length, under] = [scale.of(stock.slide.value), y(boxBottom.value)];
  const strip = stripOfRunner(drawer);
  if (strip) {
    const high = scale.of(strip.thickness);
    const top = slideCenterline ? y(slideCenterline.value) - high / 2 : under;
    paper.rectangle(slideCenterline ? "hidden" : "visible", start, top, scale.of(strip.length.value), high);
  } else if (s.slide === "side-mount" && slideCenterline) {
    const high = scale.of(s["slide height"]);
    const middle = y(slideCenterline.value);
    paper.rectangle("hidden", start, middle - high / 2, length, high);
    paper.line("center", [start - 1.5, middle], [start + length + 1.5, middle]);
  } else if (s.slide === "center-mount") {
    paper.rectangle("visible", start, under, length, scale.of(s["center slide height"]));
  } else paper.line("center", [start, under + 0.8], [start + length, under + 0.8]);
}

/** The same, cut across: between box and case at both sides, or strips under the box or in its grooves. */
export function slidesAcross({ paper, scale, y }: Desk, drawer: Drawer): void {
  const { boxBottom, slideCenterline, opening } = drawer;
  const s = opening.standards;
  const wide = scale.of(opening.least.width);
  const both = (width: number, top: number, high: number): void => {
    paper.rectangle("visible", 0, top, width, high, "end");
    paper.rectangle("visible", wide - width, top, width, high, "end");
  };
  const strip = stripOfRunner(drawer);
  const groove = runnerGrooveOf(drawer);
  if (strip) {
    const high = scale.of(strip.thickness);
    if (groove && slideCenterline) {
      const [deep, tall] = [scale.of(add(sideSpace(drawer).value, groove.depth)), scale.of(groove.width.value)];
      const top = y(slideCenterline.value) - tall / 2;
      const space = scale.of(sideSpace(drawer).value);
      paper.rectangle("thin", space, top, deep - space, tall, "paper");
      paper.rectangle("thin", wide - deep, top, deep - space, tall, "paper");
      // The box's upper cheek lies on the strip.
      both(scale.of(strip.width.value), top, high);
    } else both(scale.of(strip.width.value), y(boxBottom.value), high);
  } else if (s.slide === "side-mount" && slideCenterline) {
    const top = y(add(slideCenterline.value, half(s["slide height"])));
    both(scale.of(sideSpace(drawer).value), top, scale.of(s["slide height"]));
  } else if (s.slide === "center-mount") {
    const high = scale.of(s["center slide height"]);
    paper.rectangle("hidden", wide / 2 - 2 * high, y(boxBottom.value), 4 * high, high);
  }
}
