import { bought, type Item, type ItemName, type Purpose } from "../../core/drawer";
import { isZero, multiply, toDouble, unitsIn, type Rational, type Unit } from "../../core/length";
import { lengthResult, titled, type CellResult } from "../cells";
import { measureWord } from "./quote";
import { kindOf } from "./screw-kinds";
import { len, worded, type Template, type Wording } from "./wording";

/** A row of the hardware list: item, size, quantity, its unit, and what it is for. */
export function hardwareRow(item: Item, unit: Unit): CellResult[] {
  const size = item.size ? lengthResult(item.size, unit) : "";
  return [titled(item.name), size, toDouble(bought(item, unit)), measureWord(item.unit, unit), note(item, unit)];
}

function note(item: Item, unit: Unit): string {
  if (item.left) {
    const over = isZero(item.left) ? "none" : String(toDouble(item.left));
    return [worded(PURPOSES.packs, { ...item, over }, unit), ratingWords(item, unit)].filter(Boolean).join("; ");
  }
  const words = worded(SPECIAL[item.name] ?? PURPOSES[item.purpose], { ...item }, unit);
  const unknown = !item.size && item.name.match(/screw|nail/) ? "none of the screw lengths suits this stock" : "";
  return [words, kindOf(item, unit), ratingWords(item, unit), unknown].filter(Boolean).join("; ");
}

/** An estimate; heavier things than were told want more. */
const ratingWords = ({ rating }: Item, unit: Unit): string =>
  rating === undefined
    ? ""
    : `rated for ${Number(rating.toFixed(1))} ${unit === "in" ? "lb" : "kg"} or more, box included (an estimate)`;

const PURPOSES: Record<Purpose, Template> = {
  none: "",
  box: "into the box sides, predrilled",
  middle: "under the box, into the edges of box front and back, predrilled",
  rail: "into the rail in front and, through the rear bracket, into the case's back or a cleat on it, without coming through",
  cabinet: "into the cabinet's ends",
  partition: "into a partition: stagger them where both sides have them",
  blocking: "into the blocking",
  datasheet: "with what its own data sheet asks for",
  ends: "pocket holes in box front and back, into the sides",
  corners: "through the sides into box front and back",
  frame: "as thick as the frame hides, {detail} long and at least {width} wide, behind slide or runner",
  frameUnknown: "{detail} long and at least {width} wide; give the Case width, and its thickness stands here",
  bottom: "round the applied bottom, with glue; drill first near corners and edges",
  back: "up through the bottom into the box back",
  slots:
    "up through slots, {detail} long and open at the bottom's rear edge, into the box back; with washers, snug, not tight: the bottom ({wood}), its grain from side to side, moves there",
  front: "from inside the box into its front",
  frontSolid:
    "from inside the box into its front of solid wood, which moves: oversize holes in the box, snug, not tight",
  falseFront: "from inside the case, through cleats as thick as the cabinet, into the front without a box",
  pull: "from inside the box, through box and front",
  pullFront: "from behind the front, through it alone, beside or above its box",
  plateFront: "from behind the front, through it and the strip into the plate, beside or above its box",
  plate: "from inside the box, through front and strip into the plate",
  packs: "of {pack}, for what is listed above: {over} left over",
  filesDepth: "from front to back at the box's upper edges, {detail} apart in the clear: for {wood} folders",
  filesWidth: "from side to side at the box's upper edges, {detail} apart in the clear: for {wood} folders",
  joints: "a bead along every corner and joint",
};

/** Through a box front that stands in from the ends of its sides: the screw would draw the front in there. */
function packed({ purpose, detail }: Readonly<Record<string, unknown>>): string {
  const packer = "; a packer {detail} thick at each, for the box front stands in from the sides' ends";
  return `${PURPOSES[purpose as Purpose]}${detail ? packer : ""}`;
}

/** Items that their size tells less about than others. */
const SPECIAL: Partial<Record<ItemName, Wording>> = {
  "runner screw": ({ purpose }) =>
    `through the runner ${PURPOSES[purpose as Purpose]}${purpose === "blocking" ? " and what stands behind it" : ""}; countersunk, and the runner waxed`,
  "front screw": packed,
  "pull screw": packed,
  pull: ({ size }, unit) =>
    size ? `size: spacing of its holes, ${len(multiply(size as Rational, unitsIn(unit, "mm")), "mm")}` : "one hole",
  "shop-made pull": "plate and strip are in the cut list",
  washer: "under the heads of the bottom screws, over their slots",
  "locking device":
    "left and right, under the bottom behind the box front; the slides' data sheet says whether they come with them, and with what screws",
  "edge band": "size: its thickness; for edges {detail} thick; add what trimming takes",
};
