import { endInset, groupsOf, isJoined, lapOf, type Drawer, type PlannedOpening } from "../core/drawer";
import { half, isPositive, keyOf, showLength, subtract, type Rational } from "../core/length";
import { SEEN, type CornerSheet } from "./corner-sheet";
import { heightAtLeft, heightsAtRight, notes, widthsAt, type Dimension } from "./dimensions";
import type { Drawing } from "./drawing";
import { laidOut } from "./joint-layout";
import { Paper, textRoom } from "./paper";
import { frontCorner } from "./front-corner";
import { fullSize } from "./scale";

/** The corners of a job's boxes at full size, equal ones once. */
export const joints = (plan: readonly PlannedOpening[]): Drawing[] =>
  groupsOf(
    plan.flatMap(({ drawers }) => drawers),
    alike,
  ).map((drawers) => joint(drawers[0]!, drawers.map(({ label }) => label).join(", ")));

/**
 * One corner of a box at full size, to lay the work on: side and box front from above, cut; and under it the side cut
 * across, with the bottom in its groove. Dovetails and box joints have baselines there; their
 * tails and fingers stand below, where they are laid out by a pitch.
 * @param labels of all drawers that have it
 */
function joint(drawer: Drawer, labels: string): Drawing {
  const { opening, label } = drawer;
  const s = opening.standards;
  const paper = new Paper();
  const sheet: CornerSheet = {
    paper,
    scale: fullSize(opening.unit),
    size: (from, to, length, of, name) => ({
      from,
      to,
      text: showLength(length, opening.unit),
      of: `${label} ${of}`,
      ...(name !== undefined && { name }),
    }),
  };
  if (isJoined(s)) frontCorner(sheet, drawer);
  corner(sheet, drawer);
  if (s["bottom fit"] !== "applied") groove(sheet, drawer);
  laidOut(sheet, drawer);
  notes(paper, 0, [
    { text: `Box corner, ${isJoined(s) ? `${s["front joint"]}; behind, ` : ""}${s["corner joint"]}`, room: 110 },
    { text: `Of ${labels}`, room: 110 },
    { text: "Scale 1:1", of: "scale" },
  ]);
  const thick = (length: Rational): string => showLength(length, opening.unit);
  return paper.finish(
    `Joint of ${label}`,
    `Corner of the boxes ${labels} at full size: ${isJoined(s) ? `${s["front joint"]} in front, ` : ""}${s["corner joint"]}, sides ${thick(drawer.stock.side)} and ends ${thick(drawer.stock.end)} thick.`,
  );
}

/** Behind a front that is the box's own, the corner at the back, under that in front. */
function corner({ paper, scale, size }: CornerSheet, drawer: Drawer): void {
  const { stock, opening } = drawer;
  const s = opening.standards;
  const top = isJoined(s) ? paper.box.bottom + 3 * (textRoom("0").height + 5) : 0;
  const [end, inset] = [scale.of(stock.end), scale.of(endInset(s))];
  const side = top + scale.of(stock.side);
  const [start, from] = [scale.of(setIn(drawer)), side - scale.of(reach(drawer))];
  const [right, low] = [inset + end + SEEN, side + SEEN];
  paper.rectangle("thin", start, top, right - start, side - top, "cut");
  paper.line("visible", [right, top], [start, top], [start, side], [right, side]);
  const isInterlocked = ["dovetail", "half-blind dovetail", "box joint"].includes(s["corner joint"]);
  // Where pieces interlock both are seen; an end that stands in a rabbet or dado takes the side's place.
  if (!isInterlocked) paper.rectangle("thin", inset, from, end, low - from, "paper");
  paper.rectangle("thin", inset, from, end, low - from, "end");
  paper.line("visible", [inset, low], [inset, from], [inset + end, from], [inset + end, low]);
  if (isInterlocked) {
    paper.line("hidden", [start, side], [inset + end, side]);
    paper.line("hidden", [inset + end, top], [inset + end, side]);
  }
  const depth = s["joint depth"];
  const rows: Dimension[][] = [
    [
      ...(isPositive(endInset(s)) ? [size(0, inset, endInset(s), "Dado inset")] : []),
      size(inset, inset + end, stock.end, `${isJoined(s) ? "Box back" : "Box front"} Thickness`, "end"),
    ],
    ...(depth && s["corner joint"] === "half-blind dovetail"
      ? [[size(start, end, depth, "Joint depth", "socket")]]
      : []),
  ];
  let edge = top;
  for (const row of rows) edge = widthsAt(paper, edge, edge - 4, row);
  if (depth && ["rabbet", "dado"].includes(s["corner joint"])) {
    heightAtLeft(paper, 0, -4, size(from, side, depth, "Joint depth"));
  }
  heightsAtRight(paper, right, right + 4, [size(top, side, stock.side, "Side Thickness", "side")]);
}

/** How far a side's end lies behind the box's outer face, and how far a box front's end reaches into the side. */
const setIn = ({ stock, opening: { standards: s } }: Drawer): Rational => {
  const both = subtract(stock.depth.value, stock.sideLength.value);
  return isJoined(s) ? subtract(both, lapOf(s).value) : half(both);
};
const reach = ({ stock }: Drawer): Rational => half(subtract(stock.endLength.value, stock.insideWidth.value));

function groove({ paper, scale, size }: CornerSheet, { stock, opening }: Drawer): void {
  const s = opening.standards;
  const top = paper.box.bottom + textRoom("0").height + 6;
  const [side, deep] = [scale.of(stock.side), scale.of(s["groove depth"])];
  const [thick, offset] = [scale.of(s["bottom thickness"]), scale.of(s["groove offset"])];
  const upper = top + SEEN / 3;
  const [lower, right] = [upper + thick, side + SEEN];
  const base = lower + offset;
  paper.label("Groove of the bottom", 0, top - 4, { anchor: "start" });
  paper.rectangle("thin", 0, top, side, base - top, "cut");
  paper.line("visible", [0, top], [0, base], [side, base], [side, top]);
  paper.rectangle("visible", side - deep, upper, deep, thick, "paper");
  const inside = scale.of(half(subtract(stock.bottomWidth.value, stock.insideWidth.value)));
  paper.rectangle("thin", side - inside, upper, right - side + inside, thick, "end");
  paper.line("visible", [right, upper], [side - inside, upper], [side - inside, lower], [right, lower]);
  widthsAt(paper, base, base + 4, [size(side - deep, side, s["groove depth"], "Groove depth", "deep")]);
  heightsAtRight(paper, right, right + 4, [
    size(upper, lower, s["bottom thickness"], "Bottom Thickness", "bottom"),
    size(lower, base, s["groove offset"], "Groove offset", "up"),
  ]);
}

/** What makes corners equal. */
function alike(drawer: Drawer): string {
  const { stock, opening } = drawer;
  const s = opening.standards;
  const bottom = s["bottom fit"] === "applied" ? [] : [s["groove depth"], s["groove offset"], s["bottom thickness"]];
  const inside = subtract(stock.bottomWidth.value, stock.insideWidth.value);
  const sizes = [stock.side, stock.end, endInset(s), setIn(drawer), reach(drawer), inside, ...bottom];
  const front = isJoined(s) ? [s["front thickness"], lapOf(s).value, drawer.front.width.value, stock.width.value] : [];
  const marks = s["joint pitch"] ? [s["joint pitch"], drawer.sideHeight.value] : [];
  return [s["corner joint"], isJoined(s) && s["front joint"], ...[...sizes, ...front, ...marks].map(keyOf)].join(" ");
}
