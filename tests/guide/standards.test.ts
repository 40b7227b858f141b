import { describe, expect, test } from "vitest";
import { STANDARD_NAMES } from "../../src/core/drawer";
import { SETUPS } from "../../src/functions/index";
import { STANDARD_GROUPS, STANDARDS_HELP, usualInWords } from "../../src/guide/index";

const OPENING = [
  ["Width", "Height", "Depth", "Drawers"],
  [18, 28, 22.75, 4],
];
const refusal = (name: string, value: string): string => {
  try {
    SETUPS(OPENING, [[name, value]]);
  } catch (error) {
    return (error as Error).message;
  }
  return "";
};

describe("the help of every standard", () => {
  test.each(STANDARD_NAMES)("%s: a sentence, a group, and the words that its cell takes", (name) => {
    const { meaning, group, choices } = STANDARDS_HELP[name];
    expect(meaning).toMatch(/\S.*\.$/);
    expect(STANDARD_GROUPS).toContain(group);
    const allowed = /It can be (.*)\.$/.exec(refusal(name, "no such word"))?.[1];
    if (allowed) expect(choices?.map((word) => `"${word}"`).join(", ")).toBe(allowed);
    else expect(choices).toBeUndefined();
  });

  test.each(["in", "mm"] as const)("says in %s what holds where a cell is left empty", (unit) => {
    expect(usualInWords("front gap", unit)).toBe({ in: "1/8", mm: "3" }[unit]);
    for (const name of STANDARD_NAMES) expect(usualInWords(name, unit)).not.toBe("");
  });
});
