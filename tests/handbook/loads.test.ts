import { expect, test } from "vitest";
import { ratio } from "../../src/core/length";
import { densityOf, DESIGN_RATE, evenLoad, MPA_PER_PSI, stiffnessByName } from "../../src/core/wood";
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

const woods = Object.entries(reference("species.stiffness").values as Record<string, [gravity: number, mpsi: number]>);

test.each(woods)(
  `%s weighs its printed specific gravity and 12 %% of water, within a twentieth (${origin("species.stiffness")})`,
  (name, [gravity]) => {
    const [kind, which] = name.split(", ");
    for (const written of [name, which ? `${which} ${kind!.toLowerCase()}` : name]) {
      expect(densityOf(written) / (gravity * 1.12 * 1000)).toBeGreaterThan(0.95);
      expect(densityOf(written) / (gravity * 1.12 * 1000)).toBeLessThan(1.05);
    }
  },
);

test("no printed wood is less stiff along its grain than what a bottom of solid wood is reckoned with", () => {
  const reckoned = stiffnessByName("plywood", "mm")!;
  for (const [, [, mpsi]] of woods) expect(mpsi * 1e6 * MPA_PER_PSI).toBeGreaterThan(reckoned);
});

const sheets = Object.entries(reference("birch.sheet.mass").values as Record<string, [density: number, sheet: number]>);

test.each(sheets)(
  `birch plywood of %s mm is as heavy as printed, within a twentieth (${origin("birch.sheet.mass")})`,
  (thickness, [density, sheet]) => {
    for (const name of ["Birch plywood", "Baltic birch", "baltic birch ply"]) {
      expect(Math.abs(densityOf(name) / density - 1)).toBeLessThan(0.05);
      const mass = densityOf(name) * 1.22 * 2.44 * (Number(thickness) / 1000);
      expect(Math.abs(mass / sheet - 1)).toBeLessThan(0.05);
    }
  },
);
