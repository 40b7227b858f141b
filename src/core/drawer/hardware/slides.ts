import {
  add,
  isPositive,
  lesserOf,
  ratio,
  roundFigure,
  share,
  subtract,
  times,
  ZERO,
  type Rational,
} from "../../length";
import { isFramed, type AnyOpening } from "../opening";
import { ratingToOrder } from "../loads";
import { partitionRightOf } from "../plan/face";
import { runnerOf, stripThickness } from "../runner";
import type { Drawer } from "../plan/plan";
import { stripOfRunner } from "../plan/strip";
import type { Item } from "./item";
import { lengthOrRule, longestScrew, screwThrough } from "./screws";

/**
 * Slides, what they are screwed to behind a face frame, and their screws. Each half of a slide has as many screws as
 * the standard says.
 * @source common practice: three screws in each half, no longer than the stock that they end in
 */
export function slideItems(drawer: Drawer): Item[] {
  const { opening, stock } = drawer;
  const { slide } = opening.standards;
  const size = stock.slide.value;
  switch (slide) {
    case "side-mount":
      return [
        slidesOf("side-mount slide", drawer),
        ...blockingItems(drawer),
        ...sideScrews(drawer),
        ...wallScrews(drawer),
      ];
    case "undermount":
      return [
        { ...slidesOf("undermount slide", drawer), purpose: "datasheet" },
        { name: "locking device", quantity: ratio(1), unit: "pair", purpose: "none" },
        ...blockingItems(drawer),
        ...wallScrews(drawer),
      ];
    case "center-mount":
      // One slide under the middle, on brackets that come with it.
      return [
        {
          name: "center-mount slide",
          size,
          quantity: ratio(1),
          unit: "each",
          purpose: "datasheet",
          rating: ratingToOrder(drawer),
        },
        ...centerScrews(drawer),
      ];
    default:
      return [...blockingItems(drawer), ...runnerScrews(drawer)];
  }
}

const slidesOf = (name: "side-mount slide" | "undermount slide", drawer: Drawer): Item => ({
  name,
  size: drawer.stock.slide.value,
  rating: ratingToOrder(drawer),
  quantity: ratio(1),
  unit: "pair",
  purpose: "none",
});

/** What a face frame hides at each side of its opening; none where the case width is not given. */
export function blockingOf({ opening }: Pick<Drawer, "opening">): Rational | undefined {
  if (!isFramed(opening)) return ZERO;
  const { caseWidth } = opening;
  return caseWidth && share(subtract(caseWidth, opening.least.width), 2);
}

function blockingItems(drawer: Drawer): Item[] {
  const { opening, stock } = drawer;
  // Runners are as long as their box.
  const detail = runnerOf(opening.standards) ? stock.behind.value : stock.slide.value;
  const thickness = blockingOf(drawer);
  if (thickness && !isPositive(thickness)) return [];
  const width = blockingWidth(opening);
  const blocking = { name: "blocking", quantity: ratio(2), unit: "each", detail, width } as const;
  if (!thickness) return [{ ...blocking, purpose: "frameUnknown" }];
  const { standards: s, unit } = opening;
  return [
    { ...blocking, size: thickness, purpose: "frame" },
    ...carcase(drawer).map((wall): Item => ({
      name: "blocking screw",
      size: screwThrough(s, thickness, wall.stock, unit),
      quantity: ratio(s["slide screws"]),
      unit: "each",
      purpose: wall.purpose,
      most: add(thickness, wall.stock),
    })),
  ];
}

/** @source common practice: 3/8 in (10 mm) above and below what is screwed to it */
function blockingWidth({ standards: s, unit }: Drawer["opening"]): Rational {
  const height = runnerOf(s) ? stripThickness(s) : s["slide height"];
  return add(height, times(2, roundFigure("3/8", "10", unit)));
}

function sideScrews(drawer: Drawer): Item[] {
  const { stock, opening } = drawer;
  return [
    {
      name: "slide screw",
      size: slideScrew(drawer, stock.side),
      quantity: ratio(2 * opening.standards["slide screws"]),
      unit: "each",
      purpose: "box",
      most: stock.side,
    },
  ];
}

const wallScrews = (drawer: Drawer): Item[] =>
  walls(drawer).map((wall): Item => ({
    name: "slide screw",
    size: slideScrew(drawer, wall.stock),
    quantity: ratio(drawer.opening.standards["slide screws"]),
    unit: "each",
    purpose: wall.purpose,
    most: wall.stock,
  }));

/** Into edges, which are deep enough for any, and into what carries the slide, at its front and its back. */
const centerScrews = (drawer: Drawer): Item[] =>
  (["middle", "rail"] as const).map((purpose) => ({
    name: "slide screw",
    size: slideScrew(drawer, drawer.opening.standards["cabinet thickness"]),
    quantity: ratio(drawer.opening.standards["slide screws"]),
    unit: "each",
    purpose,
  }));

/** The strips of wood runners are screwed on through their width. */
function runnerScrews(drawer: Drawer): Item[] {
  const { standards: s, unit } = drawer.opening;
  const width = stripOfRunner(drawer)!.width.value;
  return walls(drawer).map((wall): Item => ({
    name: "runner screw",
    size: lengthOrRule(s["slide screw length"], () => screwThrough(s, width, wall.stock, unit)),
    quantity: ratio(s["slide screws"]),
    unit: "each",
    purpose: wall.purpose,
    most: add(width, wall.stock),
    through: width,
  }));
}

function slideScrew({ opening }: Drawer, stock: Rational): Rational | undefined {
  const usual = roundFigure("5/8", "16", opening.unit);
  const s = opening.standards;
  return lengthOrRule(s["slide screw length"], () => longestScrew(s, lesserOf(usual, stock)));
}

interface Wall {
  stock: Rational;
  purpose: "cabinet" | "partition" | "blocking";
}

/** What slides are screwed to at both sides: blocking where there is any, with the carcase behind it. */
function walls(drawer: Drawer): Wall[] {
  const blocking = blockingOf(drawer);
  if (blocking && !isPositive(blocking)) return carcase(drawer);
  return carcase(drawer).map(({ stock }) => ({ stock: add(stock, blocking ?? ZERO), purpose: "blocking" }));
}

/** What stands at both sides of an opening. A partition may be screwed into from both sides. */
function carcase({ opening, cabinet: { openings } }: Drawer): Wall[] {
  const place = openings.indexOf(opening);
  const [left, right] = [openings[place - 1], openings[place + 1]];
  const end: Wall = { stock: opening.standards["cabinet thickness"], purpose: "cabinet" };
  const partition = (of: AnyOpening): Wall => ({ stock: partitionRightOf(of), purpose: "partition" });
  return [left ? partition(left) : end, right ? partition(opening) : end];
}
