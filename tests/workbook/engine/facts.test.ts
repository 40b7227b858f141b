import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { beforeAll, describe, expect, it } from "vitest";
import { PROVEN_FUNCTIONS } from "../../../src/workbook/engine/proven";
import { withPart } from "../../../src/build/generated";
import { functionsOf, type Fact } from "../support/facts";
import { factsTable } from "../support/facts-table";

/** Differences that are no fault here, each with its reason. */
const NAMED: Record<string, string> = {
  "financial_irr!FullRow!P2": "its formula names a column beside the one that its value came from",
  "financial_irr!FullRow!Q2": "its formula names a column beside the one that its value came from",
  "financial_irr!FullRow!R2": "its formula names a column beside the one that its value came from",
  "financial_irr!FullColumn!A23": "its formula names a row above the one that its value came from",
};

/** A fact as the child tells it, its values in words. */
type Told = Omit<Fact, "stored" | "found"> & Record<"stored" | "found", string>;

let facts: Told[];
beforeAll(async () => {
  facts = await workedOut();
}, 600_000);

/** In a process of its own, bundled: ten times as quick as under the test's runner. */
async function workedOut(): Promise<Told[]> {
  const folder = mkdtempSync(join(tmpdir(), "facts-"));
  try {
    const script = join(folder, "child.mjs");
    await build({
      entryPoints: [new URL("facts-child.ts", import.meta.url).pathname],
      outfile: script,
      bundle: true,
      platform: "node",
      format: "esm",
      logLevel: "warning",
    });
    const FORMULA_VALUES = new URL("../../workbooks/formula-values/", import.meta.url).pathname;
    const said = execFileSync(process.execPath, ["--max-old-space-size=1024", script], {
      env: { ...process.env, FORMULA_VALUES },
      encoding: "utf8",
      maxBuffer: 100_000_000,
    });
    return said
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as Told);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe("formulas that the spreadsheet program worked out", () => {
  it("come out as it stored them, or keep what it stored", () => {
    const missed = facts.filter((fact) => !fact.kept && !fact.agrees && !(fact.place in NAMED));
    expect(missed.map((fact) => `${fact.place} =${fact.formula}: ${fact.stored}, not ${fact.found}`)).toEqual([]);
    expect(facts.length).toBe(59_397);
  });

  it("differ for a reason that is named, and for no other", () => {
    for (const place of Object.keys(NAMED))
      expect(facts.find((fact) => fact.place === place)?.agrees, place).toBe(false);
  });

  it("are counted by function in the guide, what is kept with its reason (APPROVE=1 writes the table)", () => {
    const counted = facts.map(({ functions, kept, agrees, place }) => ({
      functions,
      ...(kept !== undefined && { kept }),
      ...(!agrees && { differs: NAMED[place]! }),
    }));
    const confirmed = ["native-formulas.txt", "native-combinations.txt"].flatMap((name) =>
      readFileSync(new URL(`../../workbooks/${name}`, import.meta.url), "utf8")
        .trimEnd()
        .split("\n")
        .map(functionsOf),
    );
    const page = new URL("../../../src/guide/pages/native-functions.md", import.meta.url);
    const now = readFileSync(page, "utf8");
    const wanted = withPart(now, "facts", factsTable(counted, confirmed));
    if (process.env["APPROVE"]) writeFileSync(page, wanted);
    else expect(now).toBe(wanted);
  });

  it("are worked out but for what the functions that are not proven call", () => {
    const kept = facts.filter((fact) => fact.kept && fact.functions.every((name) => PROVEN_FUNCTIONS.has(name)));
    expect(kept.length).toBeLessThan(facts.length / 500);
  });
});
