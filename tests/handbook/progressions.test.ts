import { expect, test } from "vitest";
import { GRADUATED, LENGTH } from "../../src/functions";
import { origin, reference } from "./reference";

const heights = (...args: unknown[]): number[] =>
  (GRADUATED as (...a: unknown[]) => number[][])(...args).map(([height]) => height!);

test(`a geometric progression from a furniture trade article (${origin("progression.geometric")})`, () => {
  const {
    top,
    ratio,
    heights: printed,
  } = reference("progression.geometric").example as {
    top: number;
    ratio: number;
    heights: number[];
  };
  const face = printed.reduce((a, b) => a + b);
  expect(heights(face, printed.length, "geometric", ratio, "none")).toEqual(printed);
  expect(printed[0]).toBe(top);
});

test("a printed arithmetic example does not add up (5, 4 1/3, 4, 3 2/3 in 18 in); ours fills the face", () => {
  const { opening, largest, n, correct } = reference("progression.sum.must.close").example as {
    opening: number;
    largest: number;
    n: number;
    correct: string[];
  };
  const printed = [5, 4 + 1 / 3, 4, 3 + 2 / 3];
  expect(printed.reduce((a, b) => a + b)).not.toBeCloseTo(opening, 1);
  const ours = heights(opening, n, "arithmetic", "1/3", "none");
  expect(ours).toEqual(correct.map((text) => LENGTH(text)).reverse());
  expect(ours.at(-1)).toBe(largest);
  expect(ours.reduce((a, b) => a + b)).toBeCloseTo(opening, 12);
});
