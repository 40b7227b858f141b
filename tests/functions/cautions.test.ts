import { describe, expect, test } from "vitest";
import { functionFiles, functionReference } from "../../src/build";

const estimates = functionReference(functionFiles("src/functions")).find(
  ({ name }) => name === "Wood and loads",
)!.functions;

describe("what is estimated says so where the host shows it, and who decides", () => {
  test("they are these", () =>
    expect(estimates.map(({ name }) => name)).toEqual(["DRAWERLOAD", "EMC", "MOVEMENT", "SAG", "TIPPING"]));

  test.each(estimates)("$name", ({ description }) => {
    expect(description).toMatch(/^Estimates /);
    expect(description).toMatch(/local codes, the maker's data and licensed practice decide\)\.$/);
  });

  test.each(estimates.filter(({ name }) => /DRAWERLOAD|TIPPING/.test(name)))(
    "$name warns of a cabinet that tips",
    ({ description }) =>
      expect(description).toMatch(/anchor tall cabinets, open one drawer at a time, keep children off/),
  );
});
