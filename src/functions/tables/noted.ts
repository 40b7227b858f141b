import { doubtful, type Finding, type Job, type StandardName } from "../../core/drawer";
import { isRational, isZero } from "../../core/length";
import type { OpeningHeading } from "./opening";
import type { Table } from "./row";
import { takesZero } from "./standards";

/** What the tables hold that no plan shows. */
export function notedIn({ rows, unread, zeros }: Table<OpeningHeading>, job: Job): Finding[] {
  const labels = new Map(rows.map(({ number }, i) => [number, job.openings[i]!.label]));
  return [
    ...unread.map((heading) => ({ where: "openings", ...doubtful("heading.unread", { heading }) })),
    ...zeros
      .filter(({ heading }, i) => couldMeanZero(heading, job) && zeros.findIndex((z) => z.heading === heading) === i)
      .map(({ row, heading }) => ({ where: labels.get(row)!, ...doubtful("zero.blank", { heading }) })),
  ];
}

/** Whether a 0 under that heading would say something else than a blank, which takes what holds for the job. */
function couldMeanZero(heading: OpeningHeading, { unit, standards }: Job): boolean {
  if (!(heading in standards)) return heading === "quantity";
  const name = heading as StandardName;
  const held = standards[name];
  return takesZero(name, unit) && held !== 0 && !(isRational(held) && isZero(held));
}
