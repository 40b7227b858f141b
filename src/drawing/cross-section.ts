import { sideSpace, type Drawer, type PlannedOpening } from "../core/drawer";
import { add, isPositive, showLength, ZERO, type Rational } from "../core/length";
import { carcaseOf } from "./carcase";
import { sectionDesk, type Desk } from "./desk";
import { heightAtLeft, heightsAtRight, notes, widthsAt, type Dimension } from "./dimensions";
import type { Drawing } from "./drawing";
import { slidesAcross } from "./slides";
import { backAcross, recessOf } from "./undermount";

/** A drawer in its opening, cut across and seen from the front: sides, bottom in its grooves, and what it runs on. */
export function crossSection(drawer: Drawer, { drawers }: Pick<PlannedOpening, "drawers">): Drawing {
  const { opening, cabinet, stock, label, boxBottom, boxHeight, slideCenterline } = drawer;
  const carcase = carcaseOf([{ opening, cabinet }]);
  const desk = sectionDesk(drawer, carcase.width);
  const { paper, scale, y } = desk;
  const wide = scale.of(opening.least.width);
  const left = -scale.of(carcase.lefts[0]!);
  const right = left + scale.of(carcase.width);
  sides(desk, [left, 0, wide, right], carcase.top, carcase.bottom);
  desk.boards(0, wide);
  for (const other of drawers) {
    if (other === drawer) continue;
    const upper = y(add(other.boxBottom.value, other.boxHeight.value));
    const [width, height] = [scale.of(stock.width.value), scale.of(other.boxHeight.value)];
    paper.rectangle("thin", scale.of(sideSpace(drawer).value), upper, width, height);
  }
  box(desk, drawer);
  slidesAcross(desk, drawer);

  const text = (value: Rational): string => showLength(value, opening.unit);
  const space = sideSpace(drawer).value;
  const at = (from: Rational, size: Rational, called: string, name?: string): Dimension => ({
    from: scale.of(from),
    to: scale.of(add(from, size)),
    text: text(size),
    of: `${label} ${called}`,
    ...(name !== undefined && { name }),
  });
  const top = add(boxBottom.value, boxHeight.value);
  heightAtLeft(paper, left, left - 4, {
    from: y(top),
    to: y(boxBottom.value),
    text: text(boxHeight.value),
    of: `${label} Box height`,
  });
  const [height, called, name] = slideCenterline
    ? [slideCenterline.value, "Slide centerline", "slide"]
    : [boxBottom.value, "Box bottom"];
  const recess = recessOf(drawer);
  heightsAtRight(paper, right, right + 4, [
    ...(recess
      ? [
          {
            from: y(add(boxBottom.value, recess)),
            to: y(boxBottom.value),
            text: text(recess),
            of: `${label} Bottom recess`,
            name: "recess",
          },
        ]
      : []),
    { from: y(height), to: 0, text: text(height), of: `${label} ${called}`, ...(name !== undefined && { name }) },
  ]);
  const inside = add(space, stock.side);
  let edge = paper.box.bottom;
  for (const row of [
    [at(inside, stock.insideWidth.value, "Inside width", "inside")],
    [...(isPositive(space) ? [at(ZERO, space, "Side space")] : []), at(space, stock.width.value, "Box width", "box")],
    [at(ZERO, opening.least.width, "Opening width", "opening")],
  ]) {
    edge = widthsAt(paper, edge, edge + 4, row);
  }
  notes(paper, paper.box.left, [{ text: `Scale ${scale.name}`, of: "scale" }]);
  return paper.finish(
    `Cross section of ${label}`,
    `Drawer ${label} in its opening, from the front: box ${text(stock.width.value)} wide in ${text(opening.least.width)}, ${text(space)} free at each side.`,
  );
}

function sides({ paper, scale, y }: Desk, [left, from, to, right]: number[], top: Rational, bottom: Rational): void {
  const [upper, high] = [y(top), scale.of(add(top, bottom))];
  paper.rectangle("visible", left!, upper, from! - left!, high, "cut");
  paper.rectangle("visible", to!, upper, right! - to!, high, "cut");
}

/** Sides and bottom are cut; the back is seen behind them. */
function box(desk: Desk, drawer: Drawer): void {
  const { paper, scale, y } = desk;
  const { stock, boxBottom, boxHeight, sideHeight, backHeight, opening } = drawer;
  const s = opening.standards;
  const space = scale.of(sideSpace(drawer).value);
  const [wide, side] = [scale.of(stock.width.value), scale.of(stock.side)];
  const upper = y(add(boxBottom.value, boxHeight.value));
  paper.rectangle("visible", space, upper, wide, scale.of(backHeight.value), "paper");
  backAcross(desk, drawer);
  for (const x of [space, space + wide - side]) {
    paper.rectangle("visible", x, upper, side, scale.of(sideHeight.value), "cut");
  }
  const isApplied = s["bottom fit"] === "applied";
  const thick = scale.of(s["bottom thickness"]);
  const low = y(isApplied ? boxBottom.value : add(boxBottom.value, s["groove offset"])) - thick;
  if (!isApplied) {
    const groove = scale.of(s["groove depth"]);
    paper.rectangle("thin", space + side - groove, low, groove, thick, "paper");
    paper.rectangle("thin", space + wide - side, low, groove, thick, "paper");
  }
  const across = scale.of(stock.bottomWidth.value);
  paper.rectangle("visible", space + (wide - across) / 2, low, across, thick, "end");
}
