import { frontsIn, isLipped, isWithin, pullsOf, type Drawer, type Hung, type PlannedOpening } from "../core/drawer";
import { add, equal, orElse, showLength, subtract, type Rational, type Unit } from "../core/length";
import { carcaseOf, type Carcase } from "./carcase";
import { heightAtLeft, heightsAtRight, notes, widthsAt, type Dimension } from "./dimensions";
import type { Drawing } from "./drawing";
import { LETTERS, Paper, textRoom } from "./paper";
import { drawPulls } from "./pulls";
import { scaleFor, type Scale } from "./scale";

/** How wide and high a drawing's things may be on the paper, in millimeters: a phone's width, with the sizes beside them. */
const ROOM = { width: 66, height: 110 };
/** A bank of several openings takes the width of a sheet of letter or A4 paper. */
const WIDE = { width: 140, height: 160 };

/**
 * The front elevation of openings that stand side by side, left to right: fronts with their labels, gaps and pulls, and
 * the openings behind them.
 * @param openings neighbors in one cabinet, as they stand in it
 */
export function elevation(openings: readonly PlannedOpening[]): Drawing {
  const { unit } = openings[0]!.opening;
  const room = openings.length === 1 ? ROOM : WIDE;
  const carcase = carcaseOf(openings);
  const scale = scaleFor(
    [
      [carcase.width, room.width],
      [add(carcase.top, carcase.bottom), room.height],
    ],
    unit,
  );
  const paper = new Paper();
  const view: View = { paper, scale, unit, carcase, outside: new Set() };
  outline(view, openings);
  openings.forEach((planned, i) => fronts(view, planned, carcase.lefts[i]!));
  openings.forEach((planned, i) => openingBehind(view, planned, carcase.lefts[i]!));
  openings.forEach((planned, i) => labels(view, planned, carcase.lefts[i]!));
  dimensions(view, openings);
  notes(paper, paper.box.left, [
    ...gapsOf(openings).map((gap) => ({ text: `Gap ${showLength(gap, unit)}`, of: "front gap" })),
    { text: `Scale ${scale.name}`, of: "scale" },
  ]);
  return paper.finish(...words(openings));
}

interface View {
  paper: Paper;
  scale: Scale;
  unit: Unit;
  carcase: Carcase;
  /** Labels that have no room in their fronts. */
  outside: Set<string>;
}

function outline({ paper, scale, carcase }: View, openings: readonly PlannedOpening[]): void {
  const { width, top, bottom, lefts } = carcase;
  paper.rectangle("visible", 0, -scale.of(top), scale.of(width), scale.of(add(top, bottom)));
  openings.slice(1).forEach((_, i) => {
    const { opening } = openings[i]!;
    for (const x of [add(lefts[i]!, opening.least.width), lefts[i + 1]!]) {
      paper.line("thin", [scale.of(x), -scale.of(top)], [scale.of(x), scale.of(bottom)]);
    }
  });
}

function fronts({ paper, scale }: View, planned: PlannedOpening, left: Rational): void {
  for (const hung of frontsIn(planned)) {
    const { face, front } = hung;
    const [x, y] = [scale.of(subtract(left, face.left.value)), -scale.of(front.top)];
    paper.rectangle("visible", x, y, scale.of(front.width.value), scale.of(front.height.value), "paper");
    const drawer = planned.drawers.find(({ place }) => place === hung.place);
    if (drawer) drawPulls(paper, scale, drawer, x);
  }
}

/** Fronts that lie on the carcase hide the edges of its opening; between inset ones they are seen. */
function openingBehind({ paper, scale }: View, { opening }: PlannedOpening, left: Rational): void {
  const { width, height } = opening.least;
  const line = isWithin(opening.standards) && !isLipped(opening.standards) ? "thin" : "hidden";
  paper.rectangle(line, scale.of(left), -scale.of(height), scale.of(width), scale.of(height));
}

/** Writes labels into their fronts, clear of the pulls, and beside them where they are too low. */
function labels(view: View, planned: PlannedOpening, left: Rational): void {
  const { paper, scale } = view;
  for (const { label, face, front } of frontsIn(planned)) {
    const [x, y] = [scale.of(subtract(left, face.left.value)), -scale.of(front.top)];
    const [width, height] = [scale.of(front.width.value), scale.of(front.height.value)];
    const isWritten = [LETTERS.usual, LETTERS.small].some((size) => {
      const line = textRoom(label, size).height;
      if (line > height) return false;
      const inset = Math.min(2, width / 12);
      const first = y + Math.min(height / 2, inset + line / 2);
      const options = { anchor: "start", size, room: width - 2 * inset } as const;
      const at = (places: readonly (readonly [number, number])[]): boolean =>
        paper.labelWhereFree(label, places, options);
      const middle = y + height / 2;
      return (
        at([
          [x + inset, first],
          [x + inset, middle],
        ]) ||
        paper.labelWhereFree(label, [[x + width / 2, middle]], { size, room: width / 3 }) ||
        at([[x + inset, y + height - line / 2]])
      );
    });
    if (!isWritten) view.outside.add(label);
  }
}

function dimensions(view: View, openings: readonly PlannedOpening[]): void {
  const { paper, scale, unit, carcase } = view;
  const { left, right, top, bottom } = paper.box;
  const last = openings.length - 1;
  openings.forEach((planned, i) => {
    const { opening } = planned;
    // Of openings side by side the sizes of the last stand beside it; those of others would stand on their neighbors.
    if (i === last) {
      heightsAtRight(
        paper,
        right,
        right + 4,
        frontsIn(planned).map(({ label, front }) => ({
          from: -scale.of(front.top),
          to: -scale.of(front.bottom.value),
          text: showLength(front.height.value, unit),
          of: `${label} Front height`,
          ...(view.outside.has(label) && { name: label }),
        })),
      );
    }
    if (i === 0) {
      heightAtLeft(paper, left, left - 4, {
        from: -scale.of(opening.least.height),
        to: 0,
        text: showLength(opening.least.height, unit),
        of: `${opening.label} Opening height`,
      });
    }
  });
  const place = (from: Rational, size: Rational): Pick<Dimension, "from" | "to" | "text"> => ({
    from: scale.of(from),
    to: scale.of(add(from, size)),
    text: showLength(size, unit),
  });
  const under = widthsAt(
    paper,
    bottom,
    bottom + 4,
    openings.map(({ opening }, i) => ({
      ...place(carcase.lefts[i]!, opening.least.width),
      of: `${opening.label} Opening width`,
    })),
  );
  widthsAt(
    paper,
    under,
    under + 4,
    openings.map((planned, i) => ({
      ...place(subtract(carcase.lefts[i]!, planned.face.left.value), planned.face.width.value),
      of: `${frontsIn(planned)[0]!.label} Front width`,
    })),
  );
  pullDimensions(view, openings, top);
}

/** From a front's left edge to its pulls, where they stand alike on all fronts of an opening. */
function pullDimensions({ paper, scale, unit, carcase }: View, openings: readonly PlannedOpening[], top: number): void {
  const dimensions = openings.flatMap((planned, i): Dimension[] => {
    const [first] = planned.drawers;
    const pulls = planned.drawers.map(placesOfPulls);
    if (!first || !pulls.every((places) => samePlaces(places, pulls[0]!))) return [];
    const edge = subtract(carcase.lefts[i]!, planned.face.left.value);
    return pulls[0]!.slice(0, 1).map(({ value }) => ({
      from: scale.of(edge),
      to: scale.of(add(edge, value)),
      text: showLength(value, unit),
      of: `${first.label} Pull from left`,
    }));
  });
  if (dimensions.length > 0) widthsAt(paper, top, top - 4, dimensions);
}

const placesOfPulls = (drawer: Drawer): { value: Rational }[] =>
  orElse(
    () => pullsOf(drawer),
    () => [],
  );

const samePlaces = (a: readonly { value: Rational }[], b: readonly { value: Rational }[]): boolean =>
  a.length === b.length && a.every(({ value }, i) => equal(value, b[i]!.value));

const gapsOf = (openings: readonly PlannedOpening[]): Rational[] =>
  openings
    .filter(({ fronts }) => fronts.fronts.length > 1)
    .map(({ opening }) => opening.standards["front gap"])
    .filter((gap, i, all) => all.findIndex((other) => equal(other, gap)) === i);

function words(openings: readonly PlannedOpening[]): [title: string, about: string] {
  const names = openings.map(({ opening }) => opening.label).join(", ");
  const said = ({ label, front, opening: { unit } }: Hung): string =>
    `${label} ${showLength(front.width.value, unit)} × ${showLength(front.height.value, unit)}`;
  const all = openings.flatMap((planned) => frontsIn(planned).map(said));
  return [`Front elevation of ${names}`, `Fronts, width × height: ${all.join(", ")}.`];
}
