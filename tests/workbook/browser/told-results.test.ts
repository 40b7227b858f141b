import fc from "fast-check";
import { expect, test } from "vitest";
import type { Content } from "../../../src/workbook/edit/index";
import { Bookkeeper } from "../../../src/workbook/browser/worker/bookkeeper";
import { apply } from "../../../src/workbook/browser/worker/difference";
import type { Placed } from "../../../src/workbook/browser/worker/messages";
import { oneSheet } from "../support/handmade";

const SHEET =
  '<row r="1"><c r="A1"><v>3</v></c><c r="B1"><f>A1+1</f><v>4</v></c></row>' +
  '<row r="2"><c r="A2"><f>B1*2</f><v>8</v></c><c r="D2"><f t="array" ref="D2:D3">A1:A2*2</f><v>70</v></c></row>' +
  '<row r="3"><c r="A3"><v>10</v></c><c r="D3"><v>71</v></c></row>';

/** Sums, ranges that spill or are blocked, lengths with their formats, errors with sentences, and what is not worked out. */
const content = fc.constantFrom<Content>(
  null,
  1,
  3,
  "three",
  ...[
    "=A1+1",
    "=SUM(A1:C2)",
    "=SEQUENCE(A1)",
    "=SEQUENCE(2,A1)",
    '=DRAWER.LENGTH("7/16")',
    '=DRAWER.GROOVEPASSES(A1/8,"1/8",1/4,A1/8)',
    "=DRAWER.BOXWIDTH(A1)",
    "=DRAWER.BOXWIDTH(B2)",
    "=B2",
    "=NOBODY.KNOWS(A1)",
  ].map((formula) => ({ formula })),
);
const edit = fc.record({
  sheet: fc.constant("sheet-0"),
  row: fc.integer({ min: 0, max: 3 }),
  column: fc.integer({ min: 0, max: 3 }),
  content,
});

const opened = (edits: readonly Placed[]) => {
  const keeper = new Bookkeeper();
  const { results } = keeper.answer("open", { bytes: oneSheet(SHEET), edits });
  return { keeper, results: structuredClone(results) };
};

test("what is told of edits one by one comes to all that is told where they were made before", () => {
  fc.assert(
    fc.property(fc.array(fc.array(edit, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 8 }), (steps) => {
      const { keeper, results } = opened([]);
      for (const [i, edits] of steps.entries()) {
        const { changed, difference } = keeper.answer("put", { edits });
        for (const kind of ["values", "spills", "messages", "formats"] as const)
          for (const [at, one] of difference[kind].set) expect(one).not.toEqual(results[kind].get(at));
        apply(results, structuredClone(difference));
        expect(results).toEqual(opened(steps.slice(0, i + 1).flat()).results);
        if (!changed) for (const { set, gone } of Object.values(difference)) expect([set.size, gone]).toEqual([0, []]);
      }
    }),
    { numRuns: 80 },
  );
});

test("an edit that nothing hangs on tells nothing", () => {
  const { keeper } = opened([]);
  const { difference } = keeper.answer("put", { edits: [{ sheet: "sheet-0", row: 20, column: 5, content: 1 }] });
  for (const { set, gone } of Object.values(difference)) expect([set.size, gone]).toEqual([0, []]);
});
