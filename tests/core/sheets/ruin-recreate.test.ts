import { expect, test } from "vitest";
import { ratio } from "../../../src/core/length";
import { flaws, Meter, type Problem, type Solution } from "../../../src/core/sheets";
import { constructive } from "../../../src/core/sheets/algorithms/constructive";
import { ruinAndRecreate } from "../../../src/core/sheets/algorithms/ruin-recreate";
import { leastWeight } from "../../../src/core/sheets/bounds";
import { build } from "../../../src/core/sheets/build";
import { exact } from "../../../src/core/sheets/exact";
import type { Draft } from "../../../src/core/sheets/model";
import { reduce } from "../../../src/core/sheets/reduce";
import { loosened, tightened } from "../../../src/core/sheets/tighten";

/** Seven parts, in sixteenths of an inch, for two sheets: a long search nests blocks in blocks until it begins again. */
const PARTS = [
  [520, 685],
  [188, 488],
  [425, 641],
  [310, 493],
  [122, 511],
  [318, 187],
  [406, 160],
] as const;
const problem: Problem = {
  parts: PARTS.map(([length, width], i) => ({
    name: `${i}`,
    quantity: 1,
    length: ratio(length, 16),
    width: ratio(width, 16),
    grain: "length",
  })),
  stock: [{ name: "sheet", length: ratio(96), width: ratio(48) }],
  kerf: ratio(1, 8),
  trim: ratio(0),
};
const sizes = exact(problem);
const reduced = reduce(problem, sizes);
const model = tightened(reduced.model);
const cut = (draft: Draft): Solution => ({
  problem,
  exact: sizes,
  sheets: build(loosened(draft, reduced.model.sizes), reduced, sizes),
  least: { measure: "sheets", value: ratio(0) },
  proven: false,
  isShort: false,
});

test("a search that runs out of room goes on from the best answer, and gives none that is worse or cannot be cut", () => {
  const start = constructive(model, { steps: 100, least: 0, seed: 1 });
  const meter = new Meter();
  const found = ruinAndRecreate(model, start, { steps: 500_000, least: 0, seed: 7, meter });
  expect(flaws(cut(found))).toEqual([]);
  expect(found.weight).toBeLessThanOrEqual(start.weight);
  expect(found.weight).toBeGreaterThanOrEqual(leastWeight(model));
  expect(meter.isShort).toBe(false);
});

test("a search stops where the meter has no more steps for its rounds, says so, and keeps what it has", () => {
  const start = constructive(model, { steps: 100, least: 0, seed: 1 });
  const meter = new Meter(5_000);
  const found = ruinAndRecreate(model, start, { steps: 5_000, least: 0, seed: 7, meter });
  expect(flaws(cut(found))).toEqual([]);
  expect(found.weight).toBeLessThanOrEqual(start.weight);
  expect([meter.isShort, meter.left]).toEqual([true, 0]);
});
