import { expect, test } from "vitest";
import { CUTS, LAYOUT, PARTS, SHEETS } from "../../src/functions";
import { jobs, python, standardOf, type Job } from "./independent/jobs";

/**
 * Where pieces lie, and how they are cut, no one can predict; independent/verify.py holds it against the cut list that was
 * worked out again in Python: every piece there once and in its size, inside the trimmed sheet, a kerf from the next, by
 * cuts from edge to edge; the cuts made one after another, offcuts and waste, counts, yields and costs.
 */
const answered = (job: Job, trim: string): Record<string, unknown> => {
  const [kerf, unit] = [standardOf(job, "kerf"), standardOf(job, "unit")];
  const args = [PARTS(job.openings, job.standards), job.stock, kerf, trim, "quick", unit] as never[];
  const of = (call: unknown): unknown => (call as (...a: never[]) => unknown)(...args);
  return { name: `${job.name}, trim ${trim}`, job, trim, SHEETS: of(SHEETS), LAYOUT: of(LAYOUT), CUTS: of(CUTS) };
};
const trims = (job: Job): string[] => ["none", standardOf(job, "unit") === "mm" ? "10 mm" : "3/8"];

interface Proof {
  checked: number;
  differences: string[];
}
const verified = (cases: unknown): Proof => JSON.parse(python("verify.py", JSON.stringify(plain(cases)))) as Proof;

/** Cells as a host shows them, without the formats that come with them. */
const plain = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(plain);
  if (value === null || typeof value !== "object") return value;
  return "basicValue" in value
    ? value.basicValue
    : Object.fromEntries(Object.entries(value).map(([key, one]) => [key, plain(one)]));
};

test("SHEETS, LAYOUT and CUTS of all eight jobs hold, figure by figure, with trimmed edges and without", () => {
  const { checked, differences } = verified(jobs.flatMap((job) => trims(job).map((trim) => answered(job, trim))));
  expect(differences).toEqual([]);
  expect(checked).toBeGreaterThan(7000);
});

test.each<[string, string, (rows: unknown[][]) => void, RegExp]>([
  ["a fence set a sixteenth wider", "CUTS", (rows) => (rows[3]![5] = Number(rows[3]![5]) + 0.0625), /size of/],
  ["a cut left out", "CUTS", (rows) => rows.splice(4, 1), /in hand/],
  ["a piece that lies too near", "LAYOUT", (rows) => (rows[2]![5] = Number(rows[2]![5]) + 0.0625), /edge to edge/],
  ["a piece left out", "LAYOUT", (rows) => rows.splice(5, 1), /0 where 1|\d+ where \d+/],
  ["a cent too much", "SHEETS", (rows) => (rows[1]![7] = Number(rows[1]![7]) + 0.01), /Cost/],
  ["a larger offcut", "SHEETS", (rows) => (rows[1]![8] = "45 × 48"), /Largest offcut/],
])("the verification finds %s", (_, name, spoil, difference) => {
  const spoiled = plain(answered(jobs[0]!, "none")) as Record<string, unknown[][]>;
  spoil(spoiled[name]!);
  expect(verified([spoiled]).differences.join("; ")).toMatch(difference);
});
