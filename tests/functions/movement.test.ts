import { describe, expect, test } from "vitest";
import { MOVEMENT } from "../../src/functions";
import { expectValueError } from "../cell";

const quarter = "quarter" as never;

describe("MOVEMENT(width, species, from_moisture, to_moisture, cut)", () => {
  test("is width times coefficient times change of moisture (Wood Handbook, FPL-GTR-190 (2010), Eq. 13-2, Table 13-5)", () => {
    expect(MOVEMENT(12, "cherry", 8, 12)).toBe(0.11904);
    expect(MOVEMENT(12, "Cherry, black", 8, 12, quarter)).toBe(0.06048);
    expect(MOVEMENT(10, "Hard maple", 6, 12)).toBe(0.2118);
    expect(MOVEMENT(10, "hard maple", 12, 6)).toBe(-0.2118);
    expect(MOVEMENT(10, "walnut", 8, 8)).toBe(0);
  });

  test("gives the change in the unit that the width was typed in", () => {
    expect(MOVEMENT(232, "white fir", 8, 11)).toBe(1.7052);
    expect(MOVEMENT("232 mm", "white fir", 8, 11)).toBe(1.7052);
    expect(MOVEMENT("23,2 cm", "white fir", 8, 11)).toBe(1.7052);
    expect(MOVEMENT("12 in", "cherry", 8, 12)).toBe(0.11904);
    expect(MOVEMENT("1 ft", "cherry", 8, 12)).toBe(0.11904);
    expect(MOVEMENT("11 1/2", "cherry", 8, 12)).toBe(MOVEMENT(11.5, "cherry", 8, 12));
  });

  test("reads the cut in the trade's words", () => {
    const flat = MOVEMENT(12, "cherry", 8, 12);
    for (const cut of ["flat", "Flat-sawn", "flatsawn", "plain sawn", null, "", 0])
      expect(MOVEMENT(12, "cherry", 8, 12, cut as never)).toBe(flat);
    for (const cut of ["quarter", "quarter-sawn", "Quartersawn"])
      expect(MOVEMENT(12, "cherry", 8, 12, cut as never)).toBe(0.06048);
    expectValueError(
      () => MOVEMENT(12, "cherry", 8, 12, "rift" as never),
      `cut is "rift". It can be "flat", "quarter".`,
    );
  });

  test("refuses a wood that it does not know, with the nearest names", () => {
    expectValueError(
      () => MOVEMENT(12, "chery", 8, 12),
      `species is "chery", a wood without a published coefficient here. The nearest: "Cherry, black".`,
    );
    expectValueError(
      () => MOVEMENT(12, "white pine", 8, 12),
      `species is "white pine", and several woods are called so: "Pine, eastern white", "Pine, western white".`,
    );
    expectValueError(
      () => MOVEMENT(12, "birch plywood", 8, 12),
      `species is "birch plywood". A panel has no such coefficient. Name a solid wood.`,
    );
    expectValueError(
      () => MOVEMENT(12, null, 8, 12),
      "species is blank. It needs a species, such as cherry or white oak.",
    );
    expectValueError(() => MOVEMENT(12, 7, 8, 12), "species is 7. It must be a text.");
  });

  test("refuses moisture above fiber saturation, and what is no moisture", () => {
    const free = "Above its fiber saturation, about 30 %, wood neither shrinks nor swells: for wetter wood write 30.";
    expectValueError(() => MOVEMENT(12, "cherry", 8, 31), `to_moisture is 31. ${free}`);
    expectValueError(() => MOVEMENT(12, "cherry", "85 %", 8), `from_moisture is "85 %". ${free}`);
    expect(MOVEMENT(12, "cherry", 30, 8)).toBe(-0.65472);
    expectValueError(() => MOVEMENT(12, "cherry", -1, 8), "from_moisture is -1. It must be 0 or more.");
    expectValueError(
      () => MOVEMENT(12, "cherry", 0, 8),
      "from_moisture is 0, which an empty cell also gives: write none or 0 % for zero.",
    );
    expect(MOVEMENT(12, "cherry", "none", 8)).toBe(0.23808);
    expectValueError(
      () => MOVEMENT(12, "cherry", 8, undefined),
      "to_moisture is blank. It needs a moisture content in %, such as 8.",
    );
  });

  test("refuses a width that is none", () => {
    expectValueError(() => MOVEMENT("0 in", "cherry", 8, 12), `width is "0 in". It must be more than 0.`);
    expectValueError(() => MOVEMENT(-3, "cherry", 8, 12), "width is -3. It must be more than 0.");
    expectValueError(
      () => MOVEMENT(0, "cherry", 8, 12),
      `width is 0. It needs a length: a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
    expectValueError(
      () => MOVEMENT("wide", "cherry", 8, 12),
      `width is "wide", which is no length. Write a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
  });
});
