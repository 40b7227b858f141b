import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const files = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => readFileSync(join(folder, name), "utf8"));

const codes = (pattern: RegExp, folder: string): string[] =>
  [...new Set(files(folder).flatMap((text) => [...text.matchAll(pattern)].map(([, code]) => code!)))].sort();

const catalogue = (name: string): string => readFileSync(`src/functions/boundary/${name}.ts`, "utf8");

describe("every code has its wording", () => {
  const faults = [
    ...codes(/new Fault\(\s*"([a-zA-Z.]+)"/g, "src/core"),
    ...codes(/new Fault\(\s*"([a-zA-Z.]+)"/g, "src/functions"),
  ];
  const findings = codes(/(?:look|stop)\(\s*"([a-zA-Z.]+)"/g, "src/core/drawer/checks").filter(
    (code) => code !== "plan.fault",
  );

  test("there are codes to look for", () => expect([faults.length > 50, findings.length > 25]).toEqual([true, true]));
  test.each([...new Set(faults)])("fault %s", (code) => expect(catalogue("messages")).toContain(`"${code}":`));
  test.each(findings)("finding %s", (code) => expect(catalogue("findings")).toContain(`"${code}":`));
});
