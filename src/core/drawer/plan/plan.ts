import { once } from "../once";
import { Fault, half, isPositive, less, orElse, subtract, ZERO } from "../../length";
import { minus, plus, Size, sum } from "../size";
import { isJoined, pastSides } from "../joined-front";
import { hangsAtSide, runnerGrooveWidth, runnerOf } from "../runner";
import { isUnread, type AnyOpening, type Cabinet, type Job, type Opening } from "../opening";
import type { Standards } from "../standards";
import type { Draft } from "./draft";
import { boxStock, ownHeight, zonesOf, type BoxStock, type Zone } from "./box-plan";
import { faceOf, type Face } from "./face";
import { frontsOf, type Front, type Fronts } from "./front-plan";
import { matchHeights } from "./match";

/** A front in its opening, with a box behind it or without one. */
export interface Hung {
  label: string;
  /** From the top of its opening, from 0. */
  place: number;
  opening: Opening;
  cabinet: Cabinet;
  face: Face;
  front: Front;
}

/** One drawer: its front, its box and where they are. Every size keeps the sum that gave it. */
export interface Drawer extends Hung {
  zone: Zone;
  stock: BoxStock;
  boxHeight: Size;
  /** Up from the opening's floor; the underside of an applied bottom. */
  boxBottom: Size;
  /** Up from the opening's floor; none where nothing is fixed at the box's side. */
  slideCenterline?: Size;
  sideHeight: Size;
  backHeight: Size;
  insideHeight: Size;
}

export interface PlannedOpening {
  opening: Opening;
  cabinet: Cabinet;
  face: Face;
  fronts: Fronts;
  /** Those without a box, above the drawers. */
  falseFronts: Hung[];
  drawers: Drawer[];
}

/** Every front of an opening, from the top. */
export const frontsIn = ({ falseFronts, drawers }: PlannedOpening): Hung[] => [...falseFronts, ...drawers];

/** An opening that cannot be planned, and why. */
export interface FailedOpening {
  opening: AnyOpening;
  cabinet: Cabinet;
  fault: Fault;
}

export type Plan = readonly (PlannedOpening | FailedOpening)[];

export const failed = (planned: PlannedOpening | FailedOpening): planned is FailedOpening => "fault" in planned;

/** Of a plan the openings that can be planned; where all can, the plan itself, of which much may be known already. */
export const ableOf = (plan: Plan): readonly PlannedOpening[] =>
  plan.some(failed) ? plan.filter((one): one is PlannedOpening => !failed(one)) : (plan as PlannedOpening[]);

/**
 * Plans a job: every opening in the order of the table, planned or with its fault. A job is planned once.
 */
export const planJob = once((job: Job): Plan => {
  const drafts = job.cabinets.flatMap((cabinet) => {
    const fault = disagreement(cabinet);
    return cabinet.openings.map((opening, i) => draft(opening, cabinet, i, fault));
  });
  matchHeights(drafts.filter(isDraft));
  const plans = new Map(drafts.map((d) => [d.opening, isDraft(d) ? finish(d) : d]));
  return job.openings.map((opening) => plans.get(opening)!);
});

const isDraft = (d: Draft | FailedOpening): d is Draft => !("fault" in d);

function draft(opening: AnyOpening, cabinet: Cabinet, place: number, fault?: Fault): Draft | FailedOpening {
  return attempt({ opening, cabinet }, () => {
    if (fault) throw fault;
    if (isUnread(opening)) throw [...opening.faults.values()][0]!;
    const face = faceOf(opening, cabinet.openings[place - 1], cabinet.openings[place + 1]);
    const fronts = frontsOf(opening, face);
    const first = Math.min(opening.standards["false fronts"], fronts.fronts.length);
    const zones = zonesOf(opening, fronts.fronts);
    if (first === zones.length) return { opening, cabinet, face, fronts, first, zones, heights: [] };
    const stock = boxStock(opening);
    if (isJoined(opening.standards)) pastSides(opening.standards, face.width.value, stock.width.value);
    const own = zones.slice(first).map((zone, i) => ownHeight(opening, zone, first + i, zones.length));
    // An opening that fails by its own heights must not lower those of others.
    for (const height of own) checkHeight(opening.standards, height);
    return { opening, cabinet, face, fronts, first, zones, stock, heights: own };
  });
}

function finish(draft: Draft): PlannedOpening | FailedOpening {
  const { opening, cabinet, face, fronts, first, zones, stock, heights } = draft;
  return attempt({ opening, cabinet }, () => {
    const hung = fronts.fronts.map((front, place): Hung => {
      const label = drawerLabel(opening.label, place + 1);
      return { label, place, opening, cabinet, face, front };
    });
    const drawers = stock
      ? heights.map((height, i) => drawerOf(hung[first + i]!, zones[first + i]!, stock, height))
      : [];
    return { opening, cabinet, face, fronts, falseFronts: hung.slice(0, first), drawers };
  });
}

/** A drawer's name: the opening's and its number from the top; a hyphen stands between two digits. */
const drawerLabel = (opening: string, number: number): string =>
  /\d$/.test(opening) ? `${opening}-${number}` : `${opening}${number}`;

function drawerOf(hung: Hung, zone: Zone, stock: BoxStock, boxHeight: Size): Drawer {
  const s = hung.opening.standards;
  checkHeight(s, boxHeight);
  const boxBottom = sum(plus("zone bottom", zone.bottom), plus("space below", s["space below"]));
  const insideHeight = insideHeightOf(s, boxHeight);
  const applied = s["bottom fit"] === "applied";
  const sideHeight = applied
    ? sum(plus("box height", boxHeight), minus("bottom thickness", s["bottom thickness"]))
    : sum(plus("box height", boxHeight));
  const backHeight = s["bottom fit"] === "under back" ? sum(plus("inside height", insideHeight)) : sideHeight;
  return {
    ...hung,
    zone,
    stock,
    boxHeight,
    boxBottom,
    sideHeight,
    backHeight,
    insideHeight,
    slideCenterline: hangsAtSide(s) ? centerline(s, boxBottom, boxHeight) : undefined,
  };
}

function insideHeightOf(s: Standards, boxHeight: Size): Size {
  const offset = s["bottom fit"] === "applied" ? ZERO : s["groove offset"];
  const inside = sum(
    plus("box height", boxHeight),
    minus("groove offset", offset),
    minus("bottom thickness", s["bottom thickness"]),
  );
  if (!isPositive(inside.value)) {
    throw new Fault("box.low", { height: boxHeight.value, bottom: subtract(boxHeight.value, inside.value) });
  }
  return inside;
}

function centerline(s: Standards, boxBottom: Size, boxHeight: Size): Size {
  const from = plus("box bottom", boxBottom);
  const standard = s["slide centerline"];
  if (standard === "center") return sum(from, plus("half of box height", half(boxHeight.value)));
  if (standard === "bottom") {
    const [name, height] = runnerOf(s)
      ? ["half of the runner groove", runnerGrooveWidth(s).value]
      : ["half of slide height", s["slide height"]];
    return sum(from, plus(name, half(height)));
  }
  return sum(from, plus("slide centerline up the box", standard));
}

/** @throws Fault where a box so high has nothing inside, or is lower than its slide's centerline */
function checkHeight(s: Standards, boxHeight: Size): void {
  insideHeightOf(s, boxHeight);
  const standard = s["slide centerline"];
  if (!hangsAtSide(s) || typeof standard === "string" || !less(boxHeight.value, standard)) return;
  throw new Fault("slide.aboveBox", { centerline: standard, height: boxHeight.value });
}

/** What belongs to the carcase is one for all openings in it. */
const CARCASE = ["construction", "front style", "cabinet thickness"] as const;

/** What the openings of a cabinet disagree on; what cannot be read is the fault of its opening alone. */
function disagreement({ openings }: Cabinet): Fault | undefined {
  for (const name of [...CARCASE, "quantity"] as const) {
    const valueOf = (one: AnyOpening): string => String(name === "quantity" ? one.quantity : one.standards[name]);
    const [first, ...others] = openings.filter((one) => !(isUnread(one) && one.faults.has(name)));
    const other = first && others.find((one) => valueOf(one) !== valueOf(first));
    if (other) return new Fault("cabinet.disagrees", { name, first: first.label, second: other.label });
  }
  return undefined;
}

const attempt = <T>(where: { opening: AnyOpening; cabinet: Cabinet }, work: () => T): T | FailedOpening =>
  orElse(work, (fault) => ({ ...where, fault: ofOpening(where.opening, fault) }));

/** Works something out of a planned opening; what fails names the opening. */
export const within = <T>(opening: AnyOpening, work: () => T): T =>
  orElse(work, (fault): never => {
    throw ofOpening(opening, fault);
  });

const ofOpening = ({ label }: AnyOpening, fault: Fault): Fault => fault.told({ openingLabel: label });
