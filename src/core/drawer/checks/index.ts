import { Fault } from "../../length";
import { failed, type Plan, type PlannedOpening } from "../plan/plan";
import type { Job } from "../tables/job";
import type { Opening, OpeningHeading } from "../tables/opening";
import type { Table } from "../tables/table";
import { checkBox, checkStock } from "./boxes";
import { stop, type Finding, type Found } from "./finding";
import { checkFronts } from "./fronts";
import { checkSolidBottom, checkThickness } from "./stock";
import { checkInnerReveals, checkMeasurements, checkTables } from "./tables";

export type { Finding, Level } from "./finding";

/**
 * Everything in a job that is wrong or doubtful, in the order of its tables. Findings that are the same for several
 * drawers or openings stand together.
 */
export function findingsOf(table: Table<OpeningHeading>, job: Job, plan: Plan): Finding[] {
  return together([
    ...checkTables(table, job),
    ...plan.flatMap((planned) => [
      ...at(
        planned.opening.label,
        faultless(() => checkMeasurements(planned.opening)),
      ),
      ...(failed(planned) ? at(planned.opening.label, [asFinding(planned.fault)]) : checkPlanned(planned)),
    ]),
  ]);
}

function checkPlanned(planned: PlannedOpening): Finding[] {
  const { opening, drawers } = planned;
  const ends = endsOf(planned);
  return [
    ...at(opening.label, checkInnerReveals(opening, !ends.left, !ends.right)),
    ...at(opening.label, checkFronts(planned, ends)),
    ...drawers.flatMap((drawer) => at(drawer.label, checkBox(drawer))),
    ...at(opening.label, checkStock(planned)),
    ...at(opening.label, checkThickness(planned)),
    ...at(opening.label, checkSolidBottom(planned)),
  ];
}

const at = (where: string, found: readonly Found[]): Finding[] => found.map((finding) => ({ where, ...finding }));

/** Whether an opening stands at an end of its cabinet. */
function endsOf({ opening, cabinet: { openings } }: { opening: Opening; cabinet: PlannedOpening["cabinet"] }) {
  return { left: openings[0] === opening, right: openings[openings.length - 1] === opening };
}

const asFinding = (fault: Fault): Found => stop("plan.fault", { fault });

/** What cannot be measured is the plan's fault, and is reported there. */
function faultless(check: () => Found[]): Found[] {
  try {
    return check();
  } catch (thrown) {
    if (thrown instanceof Fault) return [];
    throw thrown;
  }
}

/** One row for equal findings, with all their places. */
function together(findings: readonly Finding[]): Finding[] {
  const merged = new Map<string, Finding>();
  for (const finding of findings) {
    const key = `${finding.level} ${finding.code} ${Object.values(finding.data).map(keyOf).join("|")}`;
    const like = merged.get(key);
    if (like && finding.code !== "plan.fault") merged.set(key, { ...like, where: `${like.where}, ${finding.where}` });
    else merged.set(like ? `${key} ${finding.where}` : key, finding);
  }
  return [...merged.values()];
}

const keyOf = (value: unknown): string => (value instanceof Fault ? value.code : String(value));
