import { equal, Fault, orElse } from "../../length";
import type { AnyOpening, Job } from "../opening";
import { ableOf, failed, within, type Plan, type PlannedOpening } from "../plan/plan";
import { checkBalance } from "./balance";
import { checkBox, checkLayout, checkStock } from "./boxes";
import { checkCutout } from "./cutout";
import { checkDividers } from "./dividers";
import { doubtful, wrong, type Finding, type Found } from "./finding";
import { checkFiles } from "./files";
import { checkStile } from "./frame";
import { checkFit } from "./fit";
import { checkFronts, checkMatches } from "./fronts";
import { checkPull, checkScrews } from "./hardware";
import { checkBottomGrain, checkBoxGrain } from "./grain";
import { checkLoads } from "./loads";
import { checkMoving } from "./moving";
import { checkEnds, checkExtension, checkHinges, checkRacking } from "./room";
import { checkRunner, checkRunners } from "./runners";
import { checkSolidBottom } from "./solid-bottom";
import { checkThickness } from "./stock";
import { checkInnerReveals, checkMeasurements } from "./measurements";
import { checkUndermount, checkUndermountBox } from "./undermount";
import { checkUnused } from "./unused";

export type * from "./findings";
export { doubtful, wrong, type Finding } from "./finding";

/**
 * Everything in a job that is wrong or doubtful, in the order of its openings. Findings that are the same for several
 * drawers or openings stand together.
 * @param noted what was found while the job was read
 */
export function findingsOf(job: Job, plan: Plan, noted: readonly Finding[] = []): Finding[] {
  const able = ableOf(plan);
  const planned: Planned = new Map(able.map((one) => [one.opening, one]));
  return together([
    ...noted,
    ...checkUnused(job),
    ...checkCabinets(job, planned),
    ...checkStiles(job, planned),
    ...checkBalances(job, planned),
    ...checkMatches(able),
    ...plan.flatMap((planned) => [
      ...at(planned.opening.label, checkMeasurements(planned.opening)),
      ...(failed(planned) ? at(planned.opening.label, [asFinding(planned.fault)]) : checkReadable(planned)),
    ]),
  ]);
}

/** The openings that could be planned. */
type Planned = ReadonlyMap<AnyOpening, PlannedOpening>;

/** A cell that the plan has no use for may still be wrong: it is found, and hides no other opening. */
const checkReadable = (planned: PlannedOpening): Finding[] =>
  orElse(
    () => within(planned.opening, () => checkPlanned(planned)),
    (fault) => at(planned.opening.label, [asFinding(fault)]),
  );

/** What two openings side by side do to the stile between them. */
function checkStiles({ cabinets }: Job, planned: Planned): Finding[] {
  return cabinets.flatMap(({ openings }) =>
    openings.flatMap((one, i) => {
      const [left, right] = [planned.get(one)?.opening, planned.get(openings[i + 1]!)?.opening];
      return left && right ? at(`${left.label}, ${right.label}`, checkStile(left, right)) : [];
    }),
  );
}

/** Whether cabinets stand with their drawers open; what cannot be planned, or carries nobody knows what, is found there. */
function checkBalances({ cabinets }: Job, planned: Planned): Finding[] {
  return cabinets.flatMap(({ openings }) => {
    const able = openings.flatMap((opening) => planned.get(opening) ?? []);
    if (able.length < openings.length) return [];
    const where = able.map(({ opening }) => opening.label).join(", ");
    return orElse(
      () => at(where, checkBalance(able)),
      () => [],
    );
  });
}

/** Openings side by side under one top and over one bottom are equally high, unless rails say otherwise. */
function checkCabinets({ cabinets }: Job, planned: Planned): Finding[] {
  return cabinets.flatMap(({ openings }) => {
    const able = openings.flatMap((opening) => planned.get(opening)?.opening ?? []);
    const first = able[0];
    if (!first || first.standards.construction === "face frame") return [];
    const bare = able.filter(({ standards: s }) => s["rail above"] === "none" && s["rail below"] === "none");
    const odd = bare.find((opening) => !equal(opening.least.height, bare[0]!.least.height));
    if (!odd) return [];
    const heights = { a: bare[0]!.least.height, b: odd.least.height };
    return at(`${bare[0]!.label}, ${odd.label}`, [doubtful("cabinet.heights", heights)]);
  });
}

function checkPlanned(planned: PlannedOpening): Finding[] {
  const { opening, drawers } = planned;
  const ends = endsOf(planned);
  const fronts = [
    ...at(opening.label, checkInnerReveals(opening, !ends.left, !ends.right)),
    ...at(opening.label, [...checkFronts(planned, ends), ...checkEnds(planned, ends)]),
  ];
  if (drawers.length === 0) return fronts;
  return [
    ...fronts,
    ...drawers.flatMap((drawer) =>
      at(drawer.label, [
        ...checkBox(drawer),
        ...checkLayout(drawer),
        ...checkBoxGrain(drawer),
        ...checkFiles(drawer),
        ...checkDividers(drawer),
        ...checkCutout(drawer),
        ...checkRacking(drawer),
        ...checkHinges(drawer),
        ...checkRunner(drawer),
        ...checkUndermountBox(drawer),
      ]),
    ),
    ...at(opening.label, [
      ...checkStock(planned),
      ...checkBottomGrain(planned),
      ...checkRunners(planned),
      ...checkUndermount(planned),
    ]),
    ...at(opening.label, [...checkExtension(planned), ...checkFit(planned)]),
    ...drawers.flatMap((drawer) => at(drawer.label, [...checkLoads(drawer), ...checkMoving(drawer, ends)])),
    ...drawers.flatMap((drawer) => at(drawer.label, [...checkScrews(drawer), ...checkPull(drawer)])),
    ...at(opening.label, checkThickness(planned)),
    ...at(opening.label, checkSolidBottom(planned)),
  ];
}

const at = (where: string, found: readonly Found[]): Finding[] => found.map((finding) => ({ where, ...finding }));

/** Whether an opening stands at an end of its cabinet. */
function endsOf({ opening, cabinet: { openings } }: { opening: AnyOpening; cabinet: PlannedOpening["cabinet"] }) {
  return { left: openings[0] === opening, right: openings[openings.length - 1] === opening };
}

const asFinding = (fault: Fault): Found => wrong("plan.fault", { fault });

/** One row for equal findings, with all their places. */
function together(findings: readonly Finding[]): Finding[] {
  const merged = new Map<string, Finding>();
  for (const finding of findings) {
    const key = `${finding.level} ${finding.code} ${Object.values(finding.data).map(keyOf).join("|")}`;
    const like = merged.get(key);
    if (like && isOfCell(finding)) merged.set(key, { ...like, where: `${like.where}, ${finding.where}` });
    else merged.set(like ? `${key} ${finding.where}` : key, finding);
  }
  return [...merged.values()];
}

/** A cell that cannot be read is one finding, however many openings want it. */
const keyOf = (value: unknown): string =>
  value instanceof Fault ? `${value.code} ${String(value.data.argument)}` : String(value);

/** Whether a finding is of one cell, and not of each opening that it stands in. */
const isOfCell = (finding: Finding): boolean =>
  finding.code !== "plan.fault" || finding.data.fault.data.argument !== undefined;
