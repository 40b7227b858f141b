import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import type { Table } from "./compare";

/** An invented job: its four tables. */
export interface Job {
  name: string;
  openings: Table;
  standards: Table;
  stock: Table;
  rates: Table;
}

const FOLDER = "tests/worked/independent";
export const kept = (file: string): string => readFileSync(`${FOLDER}/${file}`, "utf8");

export const jobs = JSON.parse(kept("jobs.json")) as Job[];

/** What the recalculation printed: a table a function for each job, and last what belongs to none. */
export const expected = JSON.parse(kept("expected.json")) as Record<string, Table>[];

/** A program of the recalculation, and what it prints. */
export function python(program: string, input = ""): string {
  const run = spawnSync("python3", ["-B", `${FOLDER}/${program}`], { encoding: "utf8", input, maxBuffer: 1 << 28 });
  if (run.error) throw new Error("This test needs Python 3 (python3) on the PATH: install it (Debian: python3).");
  if (run.stderr !== "") throw new Error(run.stderr);
  return run.stdout;
}

export const standardOf = ({ standards }: Job, name: string): unknown => standards.find(([own]) => own === name)?.[1];
