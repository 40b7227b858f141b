import { describe, expect, test } from "vitest";
import { ratio, toDouble } from "../../src/core/length";
import { findSpecies, movement, SPECIES } from "../../src/core/wood";
import { origin, reference } from "./reference";

describe(`movement of wood (${origin("movement.coefficients")})`, () => {
  const printed = reference("movement.coefficients").values as Record<string, { CR: number; CT: number }>;

  test.each(Object.entries(printed))("%s moves by the printed coefficients", (name, { CR, CT }) => {
    const species = findSpecies(name);
    expect(species.name).toBe(name);
    const one = (cut: "flat" | "quarter") => toDouble(movement(ratio(1), species, ratio(8), ratio(9), cut));
    expect([one("quarter"), one("flat")]).toEqual([CR, CT]);
  });

  test(`a printed example: white fir, flat sawn (${origin("movement.example")})`, () => {
    const { width, from, to, coefficient, change, ...rest } = reference("movement.example").example as Record<
      string,
      number
    >;
    const fir = findSpecies("white fir");
    expect(fir.tangential / 100_000).toBe(coefficient);
    const moved = toDouble(movement(ratio(width!), fir, ratio(from!), ratio(to!), "flat"));
    expect(moved.toFixed(1)).toBe(String(change));
    expect((width! + moved).toFixed(1)).toBe(String(rest["new width"]));
  });
});

describe("coefficients follow from total shrinkage (Wood Handbook, FPL-GTR-190 (2010), Eq. 13-3, at 10 % moisture)", () => {
  /** Eq. 13-3 for one percent, in hundred thousandths. */
  const coefficient = (shrinkage: number, saturation: number): number =>
    100_000 / ((saturation * 100) / shrinkage - saturation + 10);

  test("every printed coefficient is that of a shrinkage in tenths of a percent, to the last digit but one unit", () => {
    const tenths = Array.from({ length: 140 }, (_, i) => (i + 5) / 10);
    for (const { CR, CT } of Object.values(
      reference("movement.coefficients").values as Record<string, { CR: number; CT: number }>,
    ))
      for (const printed of [CR, CT]) {
        const off = tenths.map((shrinkage) => Math.abs(coefficient(shrinkage, 30) - printed * 100_000));
        expect(Math.min(...off)).toBeLessThan(1);
      }
  });

  // Wood Handbook, FPL-GTR-190 (2010), Table 4-3, radial and tangential shrinkage in %, from memory.
  const SHRINKAGE: [name: string, radial: number, tangential: number, saturation?: number][] = [
    ["Yellow-poplar", 4.6, 8.2],
    ["Willow, black", 3.3, 8.7],
    ["Baldcypress", 3.8, 6.2],
    ["Cedar, Alaska", 2.8, 6.0],
    ["Cedar, Atlantic white", 2.9, 5.4],
    ["Cedar, eastern red", 3.1, 4.7],
    ["Cedar, incense", 3.3, 5.2],
    ["Cedar, northern white", 2.2, 4.9, 22],
    ["Cedar, Port-Orford", 4.6, 6.9],
    ["Cedar, western red", 2.4, 5.0, 22],
    ["Douglas-fir, coast", 4.8, 7.6],
    ["Douglas-fir, interior north", 3.8, 6.9],
    ["Douglas-fir, interior west", 4.8, 7.5],
    ["Fir, balsam", 2.9, 6.9],
    ["Fir, California red", 4.5, 7.9],
    ["Fir, noble", 4.3, 8.3],
    ["Fir, Pacific silver", 4.4, 9.2],
    ["Fir, subalpine", 2.6, 7.4],
    ["Fir, white", 3.3, 7.0],
    ["Hemlock, eastern", 3.0, 6.8],
    ["Hemlock, western", 4.2, 7.8],
    ["Larch, western", 4.5, 9.1],
    ["Pine, eastern white", 2.1, 6.1],
    ["Pine, jack", 3.7, 6.6],
    ["Pine, loblolly", 4.8, 7.4],
    ["Pine, lodgepole", 4.3, 6.7],
    ["Pine, longleaf", 5.1, 7.5],
    ["Pine, ponderosa", 3.9, 6.2],
    ["Pine, red", 3.8, 7.2],
    ["Pine, shortleaf", 4.6, 7.7],
    ["Pine, slash", 5.4, 7.6],
    ["Pine, sugar", 2.9, 5.6],
    ["Pine, Virginia", 4.2, 7.2],
    ["Pine, western white", 4.1, 7.4],
    ["Redwood, old-growth", 2.6, 4.4, 22],
    ["Redwood, second-growth", 2.2, 4.9, 22],
    ["Spruce, black", 4.1, 6.8],
    ["Spruce, Engelmann", 3.8, 7.1],
    ["Spruce, red", 3.8, 7.8],
    ["Spruce, Sitka", 4.3, 7.5],
    ["Tamarack", 3.7, 7.4],
  ];

  test.each(SHRINKAGE)("%s, whose line is from memory", (name, radial, tangential, saturation = 30) => {
    const species = findSpecies(name);
    expect(Math.abs(coefficient(radial, saturation) - species.radial)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(coefficient(tangential, saturation) - species.tangential)).toBeLessThanOrEqual(0.5);
  });

  test("every species is either printed in the reference values or checked here", () => {
    const known = [...Object.keys(reference("movement.coefficients").values!), ...SHRINKAGE.map(([name]) => name)];
    expect(SPECIES.map(({ name }) => name).sort()).toEqual(known.sort());
  });
});
