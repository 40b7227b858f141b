import fc from "fast-check";
import { expect, test } from "vitest";
import { Meter, searched } from "../../src/core/sheets";
import { kerf, many, problem, sheet } from "./sheet-problems";

const stock = fc.constantFrom(
  [sheet()],
  [sheet({ available: 2 }), sheet({ length: sheet().width, available: 30 })],
  [sheet(), sheet({ grain: "none" })],
);

test("a quick search that was not cut short comes to the same, however many more steps it may take", () => {
  const counts = { whole: 0, short: 0 };
  fc.assert(
    fc.property(
      many,
      kerf,
      stock,
      fc.integer({ min: 1, max: 6 }),
      fc.integer({ min: 0, max: 5 }),
      fc.integer({ min: 6, max: 14 }),
      (parts, k, sheets, times, more, few) => {
        const asked = problem(parts, k, { stock: sheets });
        const job = { ...asked, parts: asked.parts.map((part) => ({ ...part, quantity: times })) };
        const [one, other] = [few, more].map((halvings) => attempted(job, halvings));
        counts[one?.isWhole ? "whole" : "short"]++;
        if (!one?.isWhole) return;
        for (const look of ["neat", "any"] as const) expect(one.cut(look)).toEqual(other!.cut(look));
      },
    ),
    { numRuns: 200 },
  );
  expect(Math.min(counts.whole, counts.short)).toBeGreaterThan(10);
});

/** None where limited stock does not suffice. */
function attempted(...[job, halvings]: [Parameters<typeof searched>[0], number]) {
  try {
    return searched(job, "quick", Meter.halved(halvings));
  } catch {
    return undefined;
  }
}
