import { describe, expect, it } from "vitest";
import { PROVEN_FUNCTIONS } from "../../../src/workbook/engine/proven";
import { factFiles, factsOf, shown, type Fact } from "../support/facts";

/** Differences that are no fault here, each with its reason. */
const NAMED: Record<string, string> = {
  "financial_irr!FullRow!P2": "its formula names a column beside the one that its value came from",
  "financial_irr!FullRow!Q2": "the same",
  "financial_irr!FullRow!R2": "the same",
  "financial_irr!FullColumn!A23": "its formula names a row above the one that its value came from",
};

const facts: Fact[] = factFiles().flatMap(factsOf);

describe("formulas that the spreadsheet program worked out", () => {
  it("come out as it stored them, or keep what it stored", () => {
    const missed = facts.filter((fact) => !fact.kept && !fact.agrees && !(fact.place in NAMED));
    expect(
      missed.map((fact) => `${fact.place} =${fact.formula}: ${shown(fact.stored)}, not ${shown(fact.found)}`),
    ).toEqual([]);
    expect(facts.length).toBe(59_397);
  });

  it("differ for a reason that is named, and for no other", () => {
    for (const place of Object.keys(NAMED))
      expect(facts.find((fact) => fact.place === place)?.agrees, place).toBe(false);
  });

  it("are worked out but for what the functions that are not proven call", () => {
    const kept = facts.filter((fact) => fact.kept && fact.functions.every((name) => PROVEN_FUNCTIONS.has(name)));
    expect(kept.length).toBeLessThan(facts.length / 500);
  });
});
