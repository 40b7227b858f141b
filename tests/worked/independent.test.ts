import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import * as functions from "../../src/functions";
import { FIT, HARDWARE, MOUNTING, PARTS, PLAN, PRICE, QUOTE, SETUPS, SHEETS } from "../../src/functions";
import { columns, near, numbers, settings, sums, type Table } from "./independent/compare";

/**
 * Eight invented jobs, every figure of which was worked again in another language, with exact fractions and none of this
 * project's code: independent/recalculate.py, from the documentation alone. Every number must agree to 1e-9.
 */
interface Job {
  name: string;
  openings: Table;
  standards: Table;
  stock: Table;
  rates: Table;
}
const FOLDER = "tests/worked/independent";
const kept = (file: string): string => readFileSync(`${FOLDER}/${file}`, "utf8");
const jobs = JSON.parse(kept("jobs.json")) as Job[];
const expected = JSON.parse(kept("expected.json")) as Record<string, Table>[];

describe.each(jobs.map((job, i) => [job.name, job, expected[i]!] as const))("%s", (_, job, figures) => {
  const { openings, standards, stock, rates } = job;
  const standard = (name: string) => standards.find(([own]) => own === name)?.[1];

  test.each([
    ["PLAN", () => PLAN(openings, standards)],
    ["PARTS", () => PARTS(openings, standards, false)],
    ["MOUNTING", () => MOUNTING(openings, standards)],
    ["FIT", () => FIT(openings, standards)],
  ])("%s gives every figure", (name, call) => {
    const wanted = figures[name]!;
    expect(columns(call(), wanted[0]!)).toEqual(near(wanted));
  });

  test("SETUPS gives every setting with its pieces, and no other", () => {
    expect(settings(SETUPS(openings, standards))).toEqual(near(figures.SETUPS!.slice(1)));
  });

  test("HARDWARE gives every item's number, and the sizes that are written down", () => {
    const wanted = figures.HARDWARE!.slice(1);
    const sized = new Set(wanted.filter(([, size]) => size !== "").map(([item]) => item));
    const rows = columns(HARDWARE(openings, standards), ["Item", "Size", "Qty"]).slice(1);
    expect(sums(rows.map(([item, size, many]) => [item, sized.has(item) ? size : "", many]))).toEqual(near(wanted));
  });

  test("QUOTE gives every quantity, rate and amount, and PRICE its total", () => {
    const quote = columns(QUOTE(openings, standards, stock, rates), ["Section", "Item", "Qty", "Rate", "Amount"]);
    const own = quote
      .slice(1)
      .filter(([section, item, , , amount]) => section !== "Price" && item !== "Subtotal" && Number(amount) !== 0)
      .map(([section, , ...cells]) => [section, ...cells]);
    const last = own.pop()!;
    const ordered = own.sort(([a, , , x], [b, , , y]) =>
      a === b ? Number(x) - Number(y) : String(a) < String(b) ? -1 : 1,
    );
    expect([...ordered, last]).toEqual(near(figures.QUOTE!.slice(1)));
    expect(PRICE(openings, standards, stock, rates)).toBe(last.at(-1));
  });

  test("SHEETS lays out every part, and what its yield and cost say is so", () => {
    const parts = PARTS(openings, standards);
    const quick = [standard("kerf"), undefined, "quick", standard("unit")] as [never, never, never, never];
    const rows = SHEETS(parts, stock, ...quick).slice(1) as (string | number)[][];
    const laid = rows.filter(([, , sheet]) => !/foot/.test(String(sheet)));
    const wanted = figures.SHEETS!.slice(1);
    expect(laid.map(([material, thickness, , , , many]) => [material, thickness, many])).toEqual(
      near(wanted.map((row) => row.slice(0, 3))),
    );
    for (const [i, [material, thickness, , sheets, least, , yields, cost]] of laid.entries()) {
      const [header, ...kinds] = stock;
      const of = (row: unknown[], name: string) => row[header!.indexOf(name)];
      const sheet = kinds.find(
        (row) => (of(row, "Material") ?? "") === material && inches(of(row, "Thickness")) === thickness,
      )!;
      const area = Number(of(sheet, "Length")) * Number(of(sheet, "Width"));
      expect(yields).toBeCloseTo((numbers(wanted[i]![3]) as number) / area / Number(sheets), 9);
      expect(cost).toBeCloseTo(Number(of(sheet, "Price")) * Number(sheets), 9);
      expect(sheets).toBeGreaterThanOrEqual(Number(least));
    }
  });

  test.each(figures.SCALARS!)("%s of the same boxes", (name, ...cells) => {
    const call = functions[name as keyof typeof functions] as (...args: unknown[]) => unknown;
    const result = call(...(numbers(cells.slice(0, -1)) as unknown[]));
    expect(name === "GROOVEPASSES" ? (result as Table).slice(1) : result).toEqual(near(cells.at(-1)));
  });
});

test("the kept figures are what the recalculation prints", () => {
  const run = spawnSync("python3", ["-B", `${FOLDER}/recalculate.py`], { encoding: "utf8" });
  if (run.error) throw new Error("This test needs Python 3 (python3) on the PATH: install it (Debian: python3).");
  expect(run.stderr).toBe("");
  expect(run.stdout).toBe(kept("expected.json"));
});

const inches = (thickness: unknown): unknown => functions.LENGTH(thickness as never);
