import { describe, expect, test } from "vitest";
import { Fault } from "../../../src/core/length";
import { findSpecies, SPECIES } from "../../../src/core/wood";

function fault(typed: string): Fault {
  try {
    findSpecies(typed);
  } catch (thrown) {
    if (thrown instanceof Fault) return thrown;
  }
  throw new Error(`${typed} is no fault`);
}

describe("findSpecies(text)", () => {
  test.each(SPECIES.map(({ name }) => name))("%s is found by its own name, in any order of words", (name) => {
    expect(findSpecies(name).name).toBe(name);
    expect(findSpecies(` ${name.split(/\W+/).reverse().join(" ").toUpperCase()}`).name).toBe(name);
  });

  test.each([
    ["cherry", "Cherry, black"],
    ["walnut", "Walnut, black"],
    ["Black walnut", "Walnut, black"],
    ["red oak", "Red oak, commercial"],
    ["white oak", "White oak, commercial"],
    ["hard maple", "Maple, sugar"],
    ["poplar", "Yellow-poplar"],
    ["yellow poplar", "Yellow-poplar"],
    ["eastern white pine", "Pine, eastern white"],
    ["ponderosa", "Pine, ponderosa"],
  ])("%s is %s", (typed, name) => expect(findSpecies(typed).name).toBe(name));

  test("a name that several share is refused with all of them", () => {
    expect(fault("ash")).toMatchObject({
      code: "species.several",
      data: { species: ["Ash, black", "Ash, green", "Ash, Oregon", "Ash, pumpkin", "Ash, white"] },
    });
    expect(fault("white pine")).toMatchObject({ data: { species: ["Pine, eastern white", "Pine, western white"] } });
  });

  test("an unknown name is refused with the nearest", () => {
    for (const [typed, near] of [
      ["chery", "Cherry, black"],
      ["blak wallnut", "Walnut, black"],
      ["sicamore", "Sycamore"],
      ["bass wood", "Basswood, American"],
    ] as const) {
      const found = fault(typed);
      if (!found.is("species.unknown")) throw found;
      expect(found.data.nearest, typed).toContain(near);
      expect(found.data.nearest.length).toBeLessThanOrEqual(3);
    }
  });

  test.each(["plywood", "Birch plywood", "MDF", "osb", "particleboard"])(
    "%s is a panel, which has no coefficient",
    (typed) => expect(fault(typed).code).toBe("species.panel"),
  );

  test.each(["", "-", "commercial", "x".repeat(10_000)])("what is no name at all is unknown", (typed) =>
    expect(fault(typed).code).toBe("species.unknown"),
  );
});
