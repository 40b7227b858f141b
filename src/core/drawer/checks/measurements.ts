import { greaterOf, less, ratio, subtract, type Rational, type Unit } from "../../length";
import { isUnread, MEASURED, type AnyOpening, type Opening } from "../opening";
import { isMoreThan, doubtful, type Found } from "./finding";

/** Measurements that are doubtful in themselves. */
export function checkMeasurements(opening: AnyOpening): Found[] {
  // What cannot be measured is the plan's fault, and is reported there.
  if (isUnread(opening) && ["opening tolerance", ...MEASURED].some((name) => opening.faults.has(name))) return [];
  const { standards, measurements, least: leasts } = opening as Opening;
  const tolerance = standards["opening tolerance"];
  return MEASURED.flatMap((size): Found[] => {
    const all = measurements[size];
    const least = leasts[size];
    const most = all.reduce(greaterOf);
    return [
      ...(isMoreThan(subtract(most, least), tolerance)
        ? [doubtful("opening.outOfSquare", { size, least, most, tolerance })]
        : []),
      ...(isDoubtful(least, opening.unit) ? [doubtful("unit.doubtful", { size, received: least })] : []),
    ];
  });
}

/** Openings for drawers are inches to some feet wide, high and deep. */
const isDoubtful = (size: Rational, unit: Unit): boolean =>
  unit === "in" ? isMoreThan(size, LARGEST_INCHES) : less(size, SMALLEST_MM);

const LARGEST_INCHES = ratio(120);
const SMALLEST_MM = ratio(50);

/** A reveal of a side that has a neighbor says nothing: the front goes to the middle of the partition. */
export function checkInnerReveals(opening: Opening, left: boolean, right: boolean): Found[] {
  return (["left", "right"] as const)
    .filter((side) => (side === "left" ? left : right) && opening.own.has(`${side} reveal`))
    .map((side) => doubtful("reveal.inner", { side }));
}
