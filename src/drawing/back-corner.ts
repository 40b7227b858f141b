import { groupsOf, hookHoleOf, notchOf, type Drawer, type PlannedOpening } from "../core/drawer";
import { half, keyOf, showLength, type Rational } from "../core/length";
import { heightAtLeft, heightsAtRight, notes, widthsAt, type Dimension } from "./dimensions";
import type { Drawing } from "./drawing";
import { Paper } from "./paper";
import { fullSize } from "./scale";

/** What undermount slides want of the backs, at full size, equal ones once; none where nothing is asked or known. */
export const backCorners = (plan: readonly PlannedOpening[]): Drawing[] =>
  groupsOf(
    plan.flatMap(({ drawers }) => drawers).filter((drawer) => sizesOf(drawer).length > 0),
    (drawer) => sizesOf(drawer).map(keyOf).join(" "),
  ).map((drawers) => backCorner(drawers[0]!, drawers.map(({ label }) => label).join(", ")));

/** How much of the back is seen past what is cut into it, in millimeters. */
const SEEN = 20;

/** A back's lower left corner, its outer face in sight: the notch, and the hook's hole. The other corner mirrors it. */
function backCorner(drawer: Drawer, labels: string): Drawing {
  const { opening, label } = drawer;
  const [notch, hole] = [notchOf(drawer), hookHoleOf(drawer)];
  const scale = fullSize(opening.unit);
  const text = (length: Rational): string => showLength(length, opening.unit);
  const size = (from: number, to: number, length: Rational, of: string, name: string): Dimension => ({
    from,
    to,
    text: text(length),
    of: `${label} ${of}`,
    name,
  });
  const paper = new Paper();
  const [wide, high] = [notch ? scale.of(notch.fromEnd.value) : 0, notch ? scale.of(notch.height) : 0];
  const hook = hole && {
    x: scale.of(hole.fromEnd.value),
    y: scale.of(hole.up.value),
    r: scale.of(half(hole.diameter)),
  };
  const right = Math.max(wide, hook ? hook.x + hook.r : 0) + SEEN;
  const top = -Math.min(scale.of(drawer.backHeight.value), Math.max(high, hook ? hook.y + hook.r : 0) + SEEN);
  const outline = [
    [0, top],
    [0, -high],
    [wide, -high],
    [wide, 0],
    [right, 0],
  ] as const;
  paper.shape("thin", [...outline, [right, top]], "paper");
  paper.line("visible", ...outline);
  if (hook) {
    paper.circle("visible", hook.x, -hook.y, hook.r);
    paper.line("center", [hook.x, -hook.y - hook.r - 2], [hook.x, -hook.y + hook.r + 2]);
    paper.line("center", [hook.x - hook.r - 2, -hook.y], [hook.x + hook.r + 2, -hook.y]);
  }
  if (notch) heightAtLeft(paper, 0, -4, size(-high, 0, notch.height, "Back notch height", "notch"));
  if (hole && hook)
    heightsAtRight(paper, right, right + 4, [
      size(-hook.y, 0, hole.up.value, "Hook hole from the back's lower edge", "hook"),
    ]);
  const rows = [
    ...(hole && hook ? [size(0, hook.x, hole.fromEnd.value, "Hook hole from the back's end", "hook")] : []),
    ...(notch ? [size(0, wide, notch.fromEnd.value, "Back notch from the end", "notch")] : []),
  ];
  let edge = 0;
  for (const row of rows) edge = widthsAt(paper, edge, edge + 4, [row]);
  const bored = hole
    ? `Hook hole ${text(hole.diameter)}, ${hole.depth ? `${text(hole.depth)} deep` : "through"}; both ends`
    : "Both ends";
  notes(paper, 0, [
    { text: bored, of: "hook hole" },
    { text: `Back of ${labels}, from behind`, room: 110 },
    { text: "Scale 1:1", of: "scale" },
  ]);
  return paper.finish(
    `Back corner of ${label}`,
    `Lower corner of the backs ${labels} at full size, for undermount slides. ${bored}.`,
  );
}

function sizesOf(drawer: Drawer): Rational[] {
  const [notch, hole] = [notchOf(drawer), hookHoleOf(drawer)];
  return [
    ...(notch ? [notch.fromEnd.value, notch.height] : []),
    ...(hole ? [hole.fromEnd.value, hole.up.value, hole.diameter, ...(hole.depth ? [hole.depth] : [])] : []),
  ];
}
