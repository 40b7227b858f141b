import { describe, expect, test } from "vitest";
import { functionFiles } from "../../src/build/function-files";
import { functionReference } from "../../src/build/function-reference";
import * as functions from "../../src/functions";
import type { Table } from "./independent/compare";
import { jobs, standardOf, type Job } from "./independent/jobs";

/**
 * Every table of the invented jobs, as it was read row by row. Whatever changes in them is to be read again before it is
 * committed: `npx vitest run --config tests/vitest.config.ts tests/worked/approved.test.ts -u` writes them anew.
 */
describe.each(jobs.map((job) => [job.name, job] as const))("%s", (name, job) => {
  const file = `approved/${name.split(":")[0]!.replace(/[^a-z]+/gi, "-")}.txt`;

  test("gives the tables that were approved", async () => {
    await expect(tablesOf(job).map(written).join("\n")).toMatchFileSnapshot(file);
  });
});

test("every function that gives a table of a job is among the approved ones", () => {
  const shown = new Set(jobs.flatMap((job) => tablesOf(job).map(([name]) => name)));
  const all = functionReference(functionFiles("src/functions")).flatMap((group) => group.functions);
  const ofJobs = all.filter(({ parameters }) => parameters.some(({ name }) => /^(?:openings|parts)$/.test(name)));
  // A price is no table, and alternates are of several jobs.
  expect([...shown, "ALTERNATES", "PRICE"].sort()).toEqual(ofJobs.map(({ name }) => name).sort());
});

function tablesOf(job: Job): [name: string, table: Table][] {
  const { openings, standards, stock, rates } = job;
  const plan = functions.PLAN(openings, standards);
  const parts = functions.PARTS(openings, standards);
  const cutting = [standardOf(job, "kerf"), standardOf(job, "trim"), undefined, standardOf(job, "unit")] as never[];
  return [
    ["PLAN", plan],
    ["CHECKS", functions.CHECKS(openings, standards, stock, rates)],
    ["PARTS", parts],
    ["PIECES", functions.PIECES(openings, standards)],
    ["SETUPS", functions.SETUPS(openings, standards)],
    ["MOUNTING", functions.MOUNTING(openings, standards)],
    ["FIT", functions.FIT(openings, standards)],
    ["HARDWARE", functions.HARDWARE(openings, standards)],
    ["SHEETS", functions.SHEETS(parts, stock, ...cutting)],
    ["LAYOUT", functions.LAYOUT(parts, stock, ...cutting)],
    ["CUTS", functions.CUTS(parts, stock, ...cutting)],
    ["QUOTE", functions.QUOTE(openings, standards, stock, rates)],
    ["WORKING", functions.WORKING(openings, plan[1]![0], standards)],
  ];
}

const written = ([name, rows]: [string, Table]): string =>
  `${name}\n${rows
    .map((row) =>
      row
        .map((cell) => String(cell ?? ""))
        .join(" | ")
        .trimEnd(),
    )
    .join("\n")}\n`;
