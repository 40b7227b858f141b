import { expect, test } from "vitest";
import { ratio } from "../../src/core/length";
import { DESIGN_RATE, evenLoad } from "../../src/core/wood";
import { origin, reference } from "./reference";

test(`a drawer 16 × 20 in inside carries 33.333 lb at the design rate (${origin("drawer.load")})`, () => {
  const { value, example } = reference("drawer.load") as unknown as {
    value: number;
    example: { inside: [number, number]; "load lb": number };
  };
  expect(DESIGN_RATE.in).toBe(value);
  const [width, depth] = example.inside;
  expect(evenLoad(ratio(width), ratio(depth), DESIGN_RATE.in, "in").toFixed(3)).toBe(String(example["load lb"]));
});

test("the design rate in pascals is that of pounds to within what is printed: 718", () => {
  // 1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m, exact by definition (NIST SP 811).
  expect(Math.round((DESIGN_RATE.in * 4.4482216152605) / 0.3048 ** 2)).toBe(DESIGN_RATE.mm);
});
