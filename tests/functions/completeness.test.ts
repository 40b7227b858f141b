import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { functionFiles, functionReference } from "../../src/build";
import * as functions from "../../src/functions";
import { callOf } from "./literals";

const exported = Object.keys(functions).sort();
const entries = functionReference(functionFiles("src/functions")).flatMap((group) => group.functions);

describe("every cell function is complete", () => {
  test("files, exports and reference entries are the same functions, each once", () => {
    const files = functionFiles("src/functions").map((file) =>
      file.split("/").at(-1)!.replace(".ts", "").toUpperCase(),
    );
    expect(files.sort()).toEqual(exported);
    expect(entries.map(({ name }) => name).sort()).toEqual(exported);
  });

  test.each(exported)("%s has a test of its own that calls it, and an executed example", (name) => {
    const file = `tests/functions/${name.toLowerCase()}.test.ts`;
    expect(existsSync(file), file).toBe(true);
    const text = readFileSync(file, "utf8");
    expect(text).toContain(`${name}`);
    expect(text).toMatch(/expect\(/);
    const examples = entries.find((entry) => entry.name === name)!.examples;
    expect(examples.map(({ formula }) => callOf(formula).name)).toContain(name);
  });

  test.each(entries)(
    "$name names every heading of its table in @returns, in their order",
    ({ name, examples, returns }) => {
      const call = functions[name as keyof typeof functions] as (...args: unknown[]) => unknown;
      const [header] = [call(...callOf(examples[0]!.formula).args)].flat() as unknown[];
      if (!Array.isArray(header) || header.some((heading) => typeof heading !== "string")) return;
      const places = header.map((heading: string) => new RegExp(`\\b${heading}\\b`).exec(returns)?.index ?? -1);
      expect(places, returns).not.toContain(-1);
      expect(places).toEqual([...places].sort((a, b) => a - b));
    },
  );

  test.each(exported.filter((name) => name !== "VERSION"))("%s has arguments in the bench", (name) => {
    expect(readFileSync("tests/bench/functions.ts", "utf8")).toMatch(new RegExp(`^  ${name}: `, "m"));
  });
});
