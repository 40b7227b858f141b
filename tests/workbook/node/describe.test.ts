import { describe as suite, expect, it } from "vitest";
import { describe } from "../../../src/workbook/node/describe";
import type { Report } from "../../../src/workbook/edit/recalculate";

function reportOf(more: Partial<Report>): Report {
  return { recalculated: 0, changed: 0, mended: 0, rounds: 1, kept: [], errors: [], ...more };
}

suite("what recalculate prints", () => {
  it("lists a thousand formulas that kept their values, and counts the rest", () => {
    const kept = Array.from({ length: 20_000 }, (_, i) => ({
      sheet: "Bench",
      cell: `A${i + 1}`,
      reason: "calls CUBEVALUE, which is not known here",
      functions: ["CUBEVALUE"],
    }));
    const printed = describe(reportOf({ kept }));
    expect(printed.kept).toHaveLength(1001);
    expect(printed.kept.at(-1)).toBe("… and 19000 more formulas that kept their values.");
    expect(printed.summary).toContain("20000 formulas kept as stored");
  });

  it("lists a thousand errors, cuts what they say, and counts the rest", () => {
    const errors = Array.from({ length: 20_000 }, (_, i) => ({
      sheet: "Bench",
      cell: `A${i + 1}`,
      error: "#VALUE!",
      message: `“${"x".repeat(100_000)}” is no length.`,
    }));
    const printed = describe(reportOf({ errors }));
    expect(printed.errors).toHaveLength(1001);
    expect(printed.errors.join("").length).toBeLessThan(600_000);
    expect(printed.errors.at(-1)).toBe("… and 19000 more cells with an error.");
  });
});
