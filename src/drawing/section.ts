import {
  boxStartOf,
  closing,
  endInset,
  isJoined,
  isLipped,
  lapOf,
  lipOf,
  setbackOf,
  type Drawer,
  type PlannedOpening,
} from "../core/drawer";
import { add, showLength, subtract, type Rational } from "../core/length";
import { sectionDesk, type Desk } from "./desk";
import { heightAtLeft, heightsAtRight, notes, widthsAt } from "./dimensions";
import type { Drawing } from "./drawing";
import { slideFromSide } from "./slides";
import { backFromSide } from "./undermount";

/**
 * A drawer in its opening, cut from front to back through its middle: front at the left, box with its bottom in the
 * grooves, slide and what lies behind. Of the other drawers in its opening only the outlines are shown.
 */
export function section(drawer: Drawer, { drawers }: Pick<PlannedOpening, "drawers">): Drawing {
  const { opening, stock, front } = drawer;
  const s = opening.standards;
  const desk = sectionDesk(drawer, add(opening.least.depth, s["front thickness"]));
  const { paper, scale } = desk;
  const setback = setbackOf(s);
  const start = scale.of(setback);
  const depth = scale.of(opening.least.depth);
  desk.boards(0, depth);
  // What stands behind, or the first obstruction.
  paper.line("visible", [depth, desk.y(opening.least.height)], [depth, 0]);

  const begins = boxStartOf(s);
  const boxAt = scale.of(begins);
  for (const other of drawers) if (other !== drawer) outline(desk, other, start);
  const outer = start - scale.of(s["front thickness"]);
  box(desk, drawer, boxAt, () => frontCut(desk, drawer, outer));
  slideFromSide(desk, drawer, start);
  if (!isJoined(s)) frontCut(desk, drawer, outer);

  const length = (value: Rational): string => showLength(value, opening.unit);
  inside(desk, drawer, boxAt);
  heightAtLeft(paper, Math.min(outer, 0), Math.min(outer, 0) - 4, {
    from: desk.y(front.top),
    to: desk.y(front.bottom.value),
    text: length(front.height.value),
    of: `${drawer.label} Front height`,
  });
  boxHeights(desk, drawer, depth);
  const { label } = drawer;
  const rows = [
    { at: start, size: stock.slide.value, of: `${label} Slide length`, name: "slide" },
    { at: boxAt, size: stock.depth.value, of: `${label} Box depth`, name: "box" },
    { at: 0, size: opening.least.depth, of: `${label} Opening depth`, name: "opening" },
  ];
  let edge = paper.box.bottom;
  for (const { at, size, ...named } of rows) {
    edge = widthsAt(paper, edge, edge + 4, [{ from: at, to: at + scale.of(size), text: length(size), ...named }]);
  }
  notes(paper, paper.box.left, [{ text: `Scale ${scale.name}`, of: "scale" }]);
  return paper.finish(
    `Section through ${label}`,
    `Drawer ${label} in its opening, from the side: box ${length(stock.depth.value)} deep and ${length(drawer.boxHeight.value)} high, its bottom ${length(s["bottom thickness"])} thick, ${s["bottom fit"]}; slide ${length(stock.slide.value)}.`,
  );
}

function outline(
  { paper, scale, y }: Desk,
  { front, stock, boxBottom, boxHeight, opening }: Drawer,
  start: number,
): void {
  const thick = scale.of(opening.standards["front thickness"]);
  paper.rectangle("thin", start - thick, y(front.top), thick, scale.of(front.height.value));
  const top = add(boxBottom.value, boxHeight.value);
  paper.rectangle("thin", start, y(top), scale.of(stock.behind.value), scale.of(boxHeight.value));
}

/** A front, with what its lip laps. */
function frontCut({ paper, scale, y }: Desk, { front, opening: { standards: s } }: Drawer, outer: number): void {
  const [top, low, thick] = [y(front.top), y(front.bottom.value), scale.of(s["front thickness"])];
  if (!isLipped(s)) return paper.rectangle("visible", outer, top, thick, scale.of(front.height.value), "cut");
  const [lip, lap] = [scale.of(lipOf(s)), outer + scale.of(lapOf(s).value)];
  const half = (edge: number, inward: number): [number, number][] => [
    [outer, edge],
    [lap, edge],
    [lap, edge + inward],
    [outer + thick, edge + inward],
  ];
  paper.shape("visible", [...half(top, lip), ...half(low, -lip).reverse()], "cut");
}

/**
 * Ends and bottom are cut; the side is seen behind them.
 * @param ownFront draws the front in the box front's place
 */
function box(desk: Desk, drawer: Drawer, start: number, ownFront: () => void): void {
  const { paper, scale, y } = desk;
  const { stock, boxBottom, boxHeight, sideHeight, backHeight, opening } = drawer;
  const s = opening.standards;
  const top = add(boxBottom.value, boxHeight.value);
  const high = scale.of(sideHeight.value);
  const [deep, end, inset] = [scale.of(stock.depth.value), scale.of(stock.end), scale.of(endInset(s))];
  paper.rectangle("visible", start, y(top), deep, high, "paper");
  const before = closing(s, stock.end, endInset(s));
  const inner = start + scale.of(add(before.inset, before.thick));
  if (isJoined(s)) ownFront();
  else paper.rectangle("visible", start + inset, y(top), end, high, "cut");
  paper.rectangle("visible", start + deep - inset - end, y(top), end, scale.of(backHeight.value), "cut");

  const back = start + deep - inset - end;
  backFromSide(desk, drawer, [back, back + end]);

  const thick = scale.of(s["bottom thickness"]);
  const long = scale.of(stock.bottomDepth.value);
  const isApplied = s["bottom fit"] === "applied";
  const lower = isApplied ? boxBottom.value : add(boxBottom.value, s["groove offset"]);
  const groove = isApplied ? 0 : scale.of(s["groove depth"]);
  const upper = y(lower) - thick;
  // Grooves are as deep as they are; the bottom has its play in them.
  if (!isApplied) {
    paper.rectangle("thin", inner - groove, upper, groove, thick, "paper");
    if (s["bottom fit"] === "grooved") {
      paper.rectangle("thin", start + deep - inset - end, upper, groove, thick, "paper");
    }
  }
  const left = isApplied
    ? start + deep - long
    : s["bottom fit"] === "grooved"
      ? (inner + back - long) / 2
      : start + deep - inset - long;
  paper.rectangle("visible", left, upper, long, thick, "end");
}

/** The height over the bottom, in the box itself. */
function inside({ paper, scale, y }: Desk, drawer: Drawer, start: number): void {
  const { stock, boxBottom, boxHeight, insideHeight, label, opening } = drawer;
  const top = add(boxBottom.value, boxHeight.value);
  const lower = subtract(top, insideHeight.value);
  const middle = start + scale.of(stock.depth.value) / 3;
  heightsAtRight(paper, middle, middle, [
    {
      from: y(top),
      to: y(lower),
      text: showLength(insideHeight.value, opening.unit),
      of: `${label} Inside height`,
    },
  ]);
}

function boxHeights({ paper, y }: Desk, { boxBottom, boxHeight, label, opening }: Drawer, edge: number): void {
  const text = (value: Rational): string => showLength(value, opening.unit);
  const top = add(boxBottom.value, boxHeight.value);
  heightsAtRight(paper, edge, edge + 4, [
    { from: y(top), to: y(boxBottom.value), text: text(boxHeight.value), of: `${label} Box height`, name: "box" },
    { from: y(boxBottom.value), to: 0, text: text(boxBottom.value), of: `${label} Box bottom` },
  ]);
}
