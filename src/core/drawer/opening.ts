import type { Fault, Rational, Unit } from "../length";
import type { DrawerAsked } from "./fronts";
import type { StandardName, Standards } from "./standards";

/** Sizes of an opening that may have several measurements, of which the least counts. */
export const MEASURED = ["width", "height", "depth"] as const;
export type Measured = (typeof MEASURED)[number];

/** One opening as measured. */
export interface Opening {
  label: string;
  /** Its place in its list. */
  place: number;
  unit: Unit;
  /** What holds for this opening: its own, and the job's beneath. */
  standards: Readonly<Standards>;
  /** Those that are its own. */
  own: ReadonlySet<StandardName>;
  measurements: Readonly<Record<Measured, readonly Rational[]>>;
  /** The least of the measurements. */
  least: Readonly<Record<Measured, Rational>>;
  drawers: readonly DrawerAsked[];
  /** How often it is there, its whole cabinet with it. */
  quantity: number;
  caseWidth?: Rational;
  /** What its cabinet has besides it, where that is known: with it the outside comes back. */
  carcase?: Carcase;
  /** Heights for its boxes, top to bottom; one for all, or one a drawer. */
  boxHeights?: readonly Rational[];
}

/** What of a cabinet lies below and behind its openings. */
export interface Carcase {
  toeKick: Rational;
  back: Rational;
  backInset: Rational;
}

/** An opening of which something cannot be read: it is not planned, but its neighbors may be. */
export interface UnreadOpening extends Pick<Opening, "label" | "place" | "unit"> {
  /** What cannot be read, the first first, and why. */
  faults: ReadonlyMap<string, Fault>;
  /** What can. */
  standards: Readonly<Partial<Standards>>;
  measurements: Readonly<Partial<Opening["measurements"]>>;
  least: Readonly<Partial<Opening["least"]>>;
  quantity?: number;
}

export type AnyOpening = Opening | UnreadOpening;

/** What has standards and a unit: an opening, or what openings come from. */
export type WithStandards = Pick<Opening, "standards" | "unit"> | UnreadOpening;

/** Behind a face frame the opening's floor is the top edge of its rail; the case's own may lie lower. */
export const isFramed = ({ standards }: WithStandards): boolean => standards.construction === "face frame";

export const isUnread = (opening: WithStandards): opening is UnreadOpening => "faults" in opening;

/** A standard of a neighbor. @throws its fault, where it cannot be read */
export function standardOf<N extends StandardName>(opening: WithStandards, name: N): Standards[N] {
  refuseUnread(opening, name);
  return (opening.standards as Standards)[name];
}

/** The least width of a neighbor. @throws its fault, where it cannot be read */
export function widthOf(opening: AnyOpening): Rational {
  refuseUnread(opening, "width");
  return opening.least.width!;
}

function refuseUnread(opening: WithStandards, name: string): void {
  const fault = isUnread(opening) && opening.faults.get(name);
  if (fault) throw fault;
}

/** A job to plan: openings, left to right, in their cabinets. */
export interface Job {
  unit: Unit;
  standards: Readonly<Standards>;
  /** In the order of their list. */
  openings: readonly AnyOpening[];
  cabinets: readonly Cabinet[];
}

/** Openings that stand side by side in one carcase, left to right. */
export interface Cabinet {
  /** Its name; "" where there is none. */
  name: string;
  openings: readonly AnyOpening[];
}
