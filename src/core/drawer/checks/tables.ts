import { isRational, isZero, less, ratio, type Rational, type Unit } from "../../length";
import type { Job } from "../tables/job";
import { MEASURED, type Opening, type OpeningHeading } from "../tables/opening";
import { takesZero, type StandardName } from "../tables/standards";
import type { Table } from "../tables/table";
import { isMoreThan, look, type Finding, type Found } from "./finding";

/** What the tables hold that no plan shows. */
export function checkTables({ rows, unread, zeros }: Table<OpeningHeading>, job: Job): Finding[] {
  const labels = new Map(rows.map(({ number }, i) => [number, job.openings[i]!.label]));
  return [
    ...unread.map((heading) => ({ where: "openings", ...look("heading.unread", { heading }) })),
    ...zeros
      .filter(({ heading }, i) => couldMeanZero(heading, job) && zeros.findIndex((z) => z.heading === heading) === i)
      .map(({ row, heading }) => ({ where: labels.get(row)!, ...look("zero.blank", { heading }) })),
  ];
}

/** Whether a 0 under that heading would say something else than a blank, which takes what holds for the job. */
function couldMeanZero(heading: OpeningHeading, { unit, standards }: Job): boolean {
  if (!(heading in standards)) return heading === "quantity";
  const name = heading as StandardName;
  const held = standards[name];
  return takesZero(name, unit) && held !== 0 && !(isRational(held) && isZero(held));
}

/** Measurements that are doubtful in themselves. */
export function checkMeasurements(opening: Opening): Found[] {
  const tolerance = opening.standards["opening tolerance"];
  return MEASURED.flatMap((size): Found[] => {
    const all = opening.measurements(size);
    const least = opening.least(size);
    const most = all.reduce((a, b) => (less(a, b) ? b : a));
    return [
      ...(isMoreThan(most.sub(least), tolerance)
        ? [look("opening.outOfSquare", { size, least, most, tolerance })]
        : []),
      ...(isDoubtful(least, opening.unit) ? [look("unit.doubtful", { size, received: least })] : []),
    ];
  });
}

/** Openings for drawers are inches to some feet wide, high and deep. */
const isDoubtful = (size: Rational, unit: Unit): boolean =>
  unit === "in" ? isMoreThan(size, LARGEST_INCHES) : less(size, SMALLEST_MM);

const LARGEST_INCHES = ratio(120);
const SMALLEST_MM = ratio(50);

/** A reveal of a side that has a neighbour says nothing: the front goes to the middle of the partition. */
export function checkInnerReveals(opening: Opening, left: boolean, right: boolean): Found[] {
  return (["left", "right"] as const)
    .filter((side) => (side === "left" ? left : right) && opening.row.cells.has(`${side} reveal`))
    .map((side) => look("reveal.inner", { side }));
}
