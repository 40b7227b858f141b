import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CellError, type Scalar } from "../../../src/workbook/engine";
import { value } from "../support/sheet";

/** What is alike for some and not for others: a number and its text, a truth value and its word, letters' case, blanks. */
const VALUES: Scalar[] = [1, "1", 0, "", null, true, "TRUE", false, "a", "A", "b", "#N/A", new CellError("#N/A")];
const ROWS = 10;

describe("UNIQUE", () => {
  it("tells the values of one column apart as it does those of two", () => {
    const columns = fc.array(fc.constantFrom(...VALUES), { minLength: ROWS, maxLength: ROWS });
    fc.assert(
      fc.property(columns, fc.boolean(), (column, once) => {
        const cells = Object.fromEntries(
          column.flatMap((item, i) => [[`A${i + 1}`, item] as const, [`B${i + 1}`, 7] as const]),
        );
        const unique = (range: string) => `_xlfn.UNIQUE(${range},FALSE,${once ? "TRUE" : "FALSE"})`;
        const alone = value(`{=${unique(`A1:A${ROWS}`)}`, cells);
        const beside = value(`{=_xlfn.TAKE(${unique(`A1:B${ROWS}`)},,1)`, cells);
        expect(alone).toEqual(beside);
      }),
      { seed: 19, numRuns: 300 },
    );
  });
});
