import { describe, expect, test } from "vitest";
import { functionFiles } from "../../src/build/function-files";
import { docProblems } from "../../src/build/functions-json-plugin";
import { readFunctionDocs } from "../../src/build/function-doc";
import { validateDoc } from "../../src/build/validate-doc";
import { changed, completeSource } from "./sources";

const problems = (source: string) => readFunctionDocs(source, "double.ts").flatMap(validateDoc);

describe("validateDoc", () => {
  test("finds nothing wrong with a complete doc comment", () => {
    expect(readFunctionDocs(completeSource(), "double.ts")).toHaveLength(1);
    expect(problems(completeSource())).toEqual([]);
  });

  const faults: [what: string, part: string, line: string | undefined, message: string][] = [
    ["no sentence", "Gives twice", undefined, "has no sentence"],
    ["two sentences", "Gives twice", " * Gives twice the width. It is exact.", "several sentences"],
    ["a sentence without an end", "Gives twice", " * Gives twice the width", "without an end"],
    ["a sentence on two lines", "Gives twice", " * Gives twice\n * the width.", "on several lines"],
    ["no group", "@group", undefined, "has 0 @group tags"],
    ["an unknown group", "@group", " * @group Hinges", "is none of Lengths, Boxes"],
    [
      "a parameter that is not described",
      "@param {any}",
      undefined,
      "takes (width, unit), but its @param tags describe (unit)",
    ],
    [
      "a parameter that is described under another name",
      "@param {any}",
      " * @param {any} height The width",
      "describe (height, unit)",
    ],
    ["a parameter without text", "@param {any}", " * @param {any} width", "does not describe width"],
    [
      "an optional parameter described as one that must be given",
      "@param {Unit}",
      " * @param {Unit} unit in",
      "marks unit as optional in one place only",
    ],
    [
      "a parameter that must be given, described as optional",
      "@param {any}",
      " * @param {any} [width] The width",
      "marks width as optional in one place only",
    ],
    ["no @returns", "@returns", undefined, "needs one @returns"],
    ["@returns without text", "@returns", " * @returns {any}", "needs one @returns"],
    ["no @throws", "@throws", undefined, "needs a @throws"],
    ["@throws without text", "@throws", " * @throws", "needs a @throws"],
    ["no @source", "@source", undefined, "needs a @source"],
    ["no example", "@example", undefined, "has no example"],
    ["an example without a result", "@example", " * @example =DRAWER.DOUBLE(2)", "has an example that is not"],
    [
      "an example of another function",
      "@example",
      " * @example =DRAWER.TRIPLE(2) // => 6",
      "has an example that is not",
    ],
    ["an example that is no formula", "@example", " * @example DRAWER.DOUBLE(2) // => 4", "has an example that is not"],
  ];
  test.each(faults)("refuses %s", (_, part, line, message) => {
    expect(problems(changed(part, line))).toEqual([expect.stringContaining(message)]);
    expect(problems(changed(part, line))[0]).toMatch(/^double\.ts: DOUBLE /);
  });

  test("refuses a parameter that must be given after one that need not", () => {
    const source = changed("@param {any}", " * @param {any} [width] The width")
      .replace("[unit]", "unit")
      .replace("width: any, unit?: Unit", "width?: any, unit: Unit");
    expect(problems(source)).toEqual([
      expect.stringContaining("takes unit, which must be given, after an optional one"),
    ]);
  });

  test("finds nothing wrong with any function of the project", () => {
    const files = functionFiles("src/functions");
    expect(files.length).toBeGreaterThan(0);
    expect(docProblems(files)).toEqual([]);
  });
});
