import { failed, frontsIn, planJob, type Job } from "../../core/drawer";
import { Fault, safeSizes } from "../../core/length";
import { placements, sawCuts, stockUses, type Solution } from "../../core/sheets";
import { crossSection, elevation, section, sheetLayout, type CutGroup, type Drawing } from "../../drawing/index";
import { begun, laidOut, openings, readAll, SHEET_ARGUMENTS, standards } from "../../functions/calls/index";
import { IncomingError } from "../../functions/cells/index";
import { message } from "../../functions/words/index";
import { MESSAGES } from "../messages";

/** Drawings of what a row of a table tells, or why there are none. */
export type Picture = { drawings: readonly Drawing[] } | { why: string };

/** The functions that give a row an opening's drawer, and those that give one a sheet's piece or cut, or the sheets of a size. */
const OF_DRAWERS = ["PLAN", "MOUNTING", "FIT"];
const OF_SHEETS = ["SHEETS", "LAYOUT", "CUTS"];

export const isOfDrawers = (name: string): boolean => OF_DRAWERS.includes(name);
export const isDrawn = (name: string): boolean => isOfDrawers(name) || OF_SHEETS.includes(name);

/**
 * What a row of a function's table tells.
 * @param raw the arguments as the spreadsheet hands them to the function
 * @param row its header being 0, which stands for the first
 */
export const pictureOf = (name: string, raw: readonly unknown[], row: number): Picture =>
  isOfDrawers(name) ? ofDrawer(name, raw, row) : ofSheet(name, raw, row);

/** The opening in a row of the table `openings`, its header being 0. */
export function pictureOfOpening(raw: readonly unknown[], row: number): Picture {
  return read([openings, standards] as const, raw, ([{ rows }, { job }]) => {
    const place = rows.findIndex(({ number }) => number > row);
    return ofOpening(job, place < 0 ? rows.length - 1 : place);
  });
}

const ofDrawer = (name: string, raw: readonly unknown[], row: number): Picture =>
  read([openings, standards] as const, raw, ([, { job }]) => {
    // One row a front, of FIT a drawer, and one for an opening that fails.
    const rows = planJob(job).flatMap((planned, place) =>
      failed(planned)
        ? [{ place, number: 0 }]
        : (name === "FIT" ? planned.drawers : frontsIn(planned)).map(({ place: number }) => ({ place, number })),
    );
    const { place, number } = rows[Math.max(0, row - 1)] ?? rows[0]!;
    return ofOpening(job, place, number);
  });

/** @param number of a drawer from the top, from 0, that is to be cut through */
function ofOpening(job: Job, place: number, number?: number): Picture {
  const planned = planJob(job)[place]!;
  if (failed(planned)) return { why: message(planned.fault, job.unit) };
  const drawer = number === undefined ? undefined : planned.drawers.find((one) => one.place === number);
  const sections = drawer ? [section(drawer, planned), crossSection(drawer, planned)] : [];
  return { drawings: [elevation([planned]), ...sections] };
}

function ofSheet(name: string, raw: readonly unknown[], row: number): Picture {
  return read(SHEET_ARGUMENTS, raw, (values) => {
    const { groups, unit } = laidOut(values);
    const safe = safeSizes(unit);
    let before = 0;
    const rows = groups.flatMap((group: CutGroup) => {
      const { solution } = group;
      const first = before;
      before += solution.sheets.length;
      const each =
        name === "CUTS" ? sawCuts(solution, safe) : name === "LAYOUT" ? placements(solution) : firstOfEach(solution);
      return each.map(({ sheet }) => ({ group, sheet, number: first + sheet }));
    });
    const asked = rows[Math.max(0, row - 1)];
    if (!asked) return { why: MESSAGES.nothingDrawn };
    return { drawings: [sheetLayout(asked.group, asked.sheet, asked.number, unit, safe)] };
  });
}

/** The first sheet of every size that is used. */
const firstOfEach = (solution: Solution): { sheet: number }[] =>
  stockUses(solution).map(({ stock }) => ({ sheet: 1 + solution.sheets.findIndex((sheet) => sheet.stock === stock) }));

type Arguments = Parameters<typeof readAll>[0];

/** What cannot be read or planned is said as the cell says it. */
function read<const A extends Arguments>(
  args: A,
  raw: readonly unknown[],
  draw: (values: ReturnType<typeof readAll<A>>) => Picture,
): Picture {
  const call = begun(args, raw);
  try {
    return draw(readAll(args, call));
  } catch (thrown) {
    if (thrown instanceof Fault) return { why: message(thrown, call.unit) };
    if (thrown instanceof IncomingError) return { why: MESSAGES.errorInside };
    throw thrown;
  }
}
