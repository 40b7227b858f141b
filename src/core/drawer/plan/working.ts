import { Fault, keyOf, orElse, toDouble, multiply, add, type Rational } from "../../length";
import { given, plus, Size, sum, type Write } from "../size";
import { MEASURED, type Job, type Opening } from "../opening";
import { balanceRows, estimatesOf, slotOf } from "../loads";
import { cutoutOf } from "../cutout";
import { dividersOf } from "../dividers";
import { groupsOf } from "../groups";
import { filesOf } from "../files";
import { layoutsOf } from "../joint-layout";
import { endRabbet, isJoined } from "../joined-front";
import { bottomRecess, isUndermount } from "../undermount";
import { hookHoleOf, notchOf } from "./box-back";
import { mountingOf, sideSpace } from "./mounting";
import { outsideOf } from "./outside";
import { stripsOf, type FrontStrip } from "./front-strip";
import { bottomCut } from "./parts";
import { runnerGrooveOf, stripOfRunner } from "./strip";
import { ableOf, failed, frontsIn, within, type Drawer, type Hung, type Plan, type PlannedOpening } from "./plan";

/** One size of a drawer, and how it came about. A diagonal is a root, and so no exact length. */
export interface WorkingRow {
  name: string;
  value: Rational | number;
  how: (write: Write) => string;
}

/**
 * Every size of one drawer with the sum that gave it, the diagonals that prove box and front square, and the outside
 * width of the cabinet.
 * @param label the drawer's, as A1, whatever its case
 * @throws Fault `drawer.unknown`, or that of the drawer's opening
 */
export function workingOf({ cabinets }: Job, plan: Plan, label: string): WorkingRow[] {
  const wanted = label.trim().toUpperCase();
  const strips = stripsOf(ableOf(plan)).flatMap((strip) => [strip, ...strip.lines]);
  for (const planned of plan) {
    if (failed(planned)) continue;
    const isWanted = (one: Hung): boolean => one.label.toUpperCase() === wanted;
    const hung = planned.falseFronts.find(isWanted);
    if (hung) return [...sizesOf([...frontRows(hung, strips), ...outsideOf(planned)]), frontDiagonal(hung)];
    const drawer = planned.drawers.find(isWanted);
    if (drawer) return [...rows(drawer, planned, strips), ...balanceIn(cabinets, plan, drawer)];
  }
  for (const planned of plan) if (failed(planned) && isOf(planned.opening.label, wanted)) throw planned.fault;
  throw new Fault("drawer.unknown", {
    received: label,
    drawers: plan.flatMap((planned) => (failed(planned) ? [] : frontsIn(planned).map(({ label }) => label))),
  });
}

/** Only where all of its cabinet is planned, and what each drawer carries is known. */
function balanceIn(cabinets: Job["cabinets"], plan: Plan, drawer: Drawer): WorkingRow[] {
  const { openings } = cabinets.find(({ openings }) => openings.includes(drawer.opening))!;
  const able = plan.flatMap((one) => (failed(one) || !openings.includes(one.opening) ? [] : [one]));
  if (able.length < openings.length) return [];
  return orElse(
    () => balanceRows(able, drawer),
    () => [],
  );
}

/** Whether a drawer's label can be one of an opening's. */
const isOf = (opening: string, label: string): boolean =>
  label.startsWith(opening.toUpperCase()) && /^-?\d+$/.test(label.slice(opening.length));

function rows(drawer: Drawer, planned: PlannedOpening, strips: readonly FrontStrip[]): WorkingRow[] {
  const { stock, zone, opening } = drawer;
  const mounting = within(opening, () => mountingOf(planned)).find((one) => one.drawer === drawer)!;
  const bottom = bottomCut(drawer);
  const joined = isJoined(opening.standards);
  const [strip, groove] = [stripOfRunner(drawer), runnerGrooveOf(drawer)];
  const dividers = within(opening, () => dividersOf(drawer));
  const cutout = within(opening, () => cutoutOf(drawer));
  const sized: Sized[] = [
    ...frontRows(drawer, strips),
    ["Front rabbet at left and right", joined ? endRabbet(opening.standards, drawer) : undefined],
    ["Zone bottom", zone.bottom],
    ["Zone top", zone.top],
    ["Zone height", zone.height],
    ["Box width", stock.width],
    ["Box height", drawer.boxHeight],
    ["Box depth", stock.depth],
    ["Box bottom", drawer.boxBottom],
    ["Slide length", stock.slide],
    ["Slide centerline", drawer.slideCenterline],
    ["Runner length", strip?.length],
    ["Runner width", strip?.width],
    ["Runner groove width", groove?.width],
    ["Runner groove from the side's lower edge", groove?.offset],
    ...underneath(drawer),
    ["Side length", stock.sideLength],
    ["Side height", drawer.sideHeight],
    [joined ? "Box back length" : "Box front length", stock.endLength],
    ["Box back height", drawer.backHeight],
    ["Bottom width", bottom.width],
    ["Bottom depth", bottom.depth],
    ["Bottom slot", slotOf(drawer)?.length],
    ...jointRows(drawer),
    ["Inside width", stock.insideWidth],
    ["Inside depth", stock.insideDepth],
    ["Inside height", drawer.insideHeight],
    ["Divider cell", dividers?.cell],
    ["Last divider cell", dividers?.last],
    ["Divider length", dividers?.length],
    ["Divider height", dividers?.height],
    ["Inside at the left of the cutout", cutout?.left],
    ["Inside at the right of the cutout", cutout?.right],
    ["Inside before the cutout", cutout?.front],
    ["Filing length", filesOf(drawer)?.rails?.filing],
    ["Side space", sideSpace(drawer)],
    ["Box spacer", mounting.boxSpacer],
    ["Slide spacer", mounting.slideSpacer],
    ["Box spacer from the case floor", mounting.fromFloor?.box],
    ["Slide spacer from the case floor", mounting.fromFloor?.slide],
    ["Front past box left", mounting.pastLeft],
    ["Front past box right", mounting.pastRight],
    ["Front below box", mounting.below],
    ["Pull height", mounting.pullHeight],
    ["Pull from left", mounting.pulls[0]],
    ["Second pull", mounting.pulls[1]],
    ...outsideOf(planned),
  ];
  return [
    ...sizesOf(sized),
    diagonal("Box diagonal", ["box width", stock.width], ["box depth", stock.depth]),
    frontDiagonal(drawer),
    ...within(opening, () => estimatesOf(drawer)),
  ];
}

type Sized = [name: string, size: Size | undefined];

const sizesOf = (sized: readonly Sized[]): WorkingRow[] =>
  sized.flatMap(([name, size]) => (size ? [{ name, value: size.value, how: size.how }] : []));

/** Of any front, with a box or without. */
const frontRows = ({ label, front, face, opening }: Hung, strips: readonly FrontStrip[]): Sized[] => [
  ...MEASURED.map((size): Sized => [`Opening ${size}`, measured(opening, size)]),
  ["Face lower edge", face.bottom],
  ["Face upper edge", face.top],
  ["Face height", face.height],
  ["Front width", front.width],
  ["Front height", front.height],
  ["Front bottom", front.bottom],
  ["Front cut width", front.cut.width === front.width ? undefined : front.cut.width],
  ["Front cut height", front.cut.height === front.height ? undefined : front.cut.height],
  ...strips
    .filter(({ fronts }) => fronts.some((one) => one.label === label))
    .map((strip): Sized => [strip.lines[0] ? "Front panel width" : "Front strip", frontStrip(strip)]),
];

const frontDiagonal = ({ front }: Hung): WorkingRow =>
  diagonal("Front diagonal", ["front width", front.width], ["front height", front.height]);

/** Joints as they are laid out; the back's where they are not those in front. */
function jointRows(drawer: Drawer): [string, Size | undefined][] {
  const { front, back } = layoutsOf(drawer.opening.standards, drawer);
  const alike = front.joint === back.joint && drawer.backHeight === drawer.sideHeight;
  return [front, ...(alike ? [] : [back])].flatMap(({ joint, layout }, i): [string, Size | undefined][] => {
    const where = i === 0 ? "" : " at the back";
    return [
      [`Joint pitch${where}`, layout?.pitch],
      [`${joint === "box joint" ? "Finger" : "Pin"} width${where}`, layout?.pin],
    ];
  });
}

/** Where undermount slides carry the box, and what they want of its back. */
function underneath(drawer: Drawer): [string, Size | undefined][] {
  const s = drawer.opening.standards;
  if (!isUndermount(s)) return [];
  const [notch, hole] = [notchOf(drawer), hookHoleOf(drawer)];
  const recess = plus("groove offset", bottomRecess(s));
  return [
    ["Bottom recess", s["bottom fit"] === "applied" ? undefined : sum(recess)],
    ["Underside of the bottom", sum(plus("box bottom", drawer.boxBottom), recess)],
    ["Back notch from the end", notch?.fromEnd],
    ["Back notch height", notch && given(notch.height, "as the data sheet says")],
    ["Hook hole from the back's end", hole?.fromEnd],
    ["Hook hole from the back's lower edge", hole?.up],
  ];
}

function measured(opening: Opening, size: (typeof MEASURED)[number]): Size {
  const all = opening.measurements[size];
  if (all.length === 1) return given(all[0]!, "as measured");
  return new Size(opening.least[size], (write) => `least of ${all.map(write).join(", ")}`);
}

function frontStrip({ length, sizes, between }: FrontStrip): Size {
  const gaps = groupsOf(between, keyOf);
  return new Size(
    length,
    (write) =>
      `${sizes.map(write).join(" + ")}, and between them ${gaps.map((alike) => `${alike.length} × ${write(alike[0]!)}`).join(" + ")}, the kerf or what lies between the cut fronts once they hang`,
  );
}

function diagonal(name: string, [nameA, a]: [string, Size], [nameB, b]: [string, Size]): WorkingRow {
  return {
    name,
    value: Math.sqrt(toDouble(add(multiply(a.value, a.value), multiply(b.value, b.value)))),
    how: (write) =>
      `root of ${nameA} ${write(a.value)} squared + ${nameB} ${write(b.value)} squared; equal both ways when square`,
  };
}
