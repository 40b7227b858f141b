import { describe, expect, test } from "vitest";
import { SAG } from "../../src/functions";
import { expectValueError } from "../cell";

const mm = "mm" as never;
const clamped = "clamped" as never;

describe("SAG(inside_width, inside_depth, thickness, load, stiffness, edges, unit)", () => {
  // Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., Tables 8 and 35: a square of side a under
  // the pressure q sags by 0.00406 and by 0.00126 q a⁴ / D.
  test("is that of the handbooks' plates: a square one, resting and clamped", () => {
    const pressure = 40 / 400;
    const rigidity = (1e6 * 0.5 ** 3) / (12 * 0.91);
    const by = (coefficient: number) => (coefficient * pressure * 20 ** 4) / rigidity;
    expect(Math.abs(SAG(20, 20, 0.5, 40, 1e6) / by(0.00406) - 1)).toBeLessThan(0.004);
    expect(Math.abs(SAG(20, 20, 0.5, 40, 1e6, clamped) / by(0.00126) - 1)).toBeLessThan(0.005);
  });

  test("kilograms and megapascals go with millimeters; texts bring their own units", () => {
    const inches = SAG(18, 20, 0.25, 30, 1_200_000);
    const millimeters = SAG(457.2, 508, 6.35, 13.6077711, 8273.7087504, null as never, mm);
    expect(Math.abs(millimeters / 25.4 / inches - 1)).toBeLessThan(1e-9);
    expect(SAG("457.2 mm", "508 mm", "1/4", "13.6077711 kg", 1_200_000)).toBeCloseTo(inches, 12);
    expect(SAG(18, 20, 0.25, "30 lbs", "8.2737087504 GPa")).toBeCloseTo(inches, 9);
    expect(SAG(18, 20, 0.25, 30, "8273.7087504 N/mm²")).toBeCloseTo(inches, 9);
  });

  test("knows panels by name, with the lowest modulus that is published for each", () => {
    const at = (stiffness: unknown) => SAG(450, 500, 6, 15, stiffness, undefined, mm);
    expect(at("plywood")).toBe(at(6960));
    expect(at("MDF")).toBe(at(3590));
    expect(at("particle board")).toBe(at("chipboard"));
    expect(SAG(18, 20, 0.25, 30, "Plywood")).toBeCloseTo(SAG(18, 20, 0.25, 30, "6960 MPa"), 12);
    expectValueError(
      () => at("oak"),
      `stiffness is "oak". It can be "plywood", "OSB", "MDF", "particleboard", "hardboard", or a modulus of elasticity.`,
    );
  });

  test("no load, no sag", () => {
    expect(SAG(18, 20, 0.25, "none", 1_200_000)).toBe(0);
    expectValueError(
      () => SAG(18, 20, 0.25, 0, 1_200_000),
      "load is 0, which an empty cell also gives: write none or 0 lb for zero.",
    );
    expectValueError(() => SAG(18, 20, 0.25, null, 1_200_000), "load is blank. It needs a load in lb.");
    expectValueError(() => SAG(18, 20, 0.25, -3, 1_200_000), "load is -3. It must be from 0 to 1,000,000 lb.");
  });

  test("refuses a thickness that is none, and one that is no bottom's", () => {
    expectValueError(() => SAG(18, 20, "0", 30, 1_200_000), "thickness is 0 in. It must be more than 0.");
    expectValueError(
      () => SAG(18, 20, 0, 30, 1_200_000),
      `thickness is 0. It needs a length: a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
    expectValueError(
      () => SAG(18, 20, 18, 30, 1_200_000),
      "thickness is 18 in. It must be less than the shorter side, 18 in.",
    );
  });

  test("refuses a stiffness in another unit than it says, for a number of the one is none of the other", () => {
    expectValueError(() => SAG(18, 20, 0.25, 30, 8000), "stiffness is 8000. It must be from 50,000 to 30,000,000 psi.");
    expectValueError(() => SAG(18, 20, 0.25, 30, 1.2), "stiffness is 1.2. It must be from 50,000 to 30,000,000 psi.");
    expectValueError(
      () => SAG(450, 500, 6, 15, 1_200_000, undefined, mm),
      "stiffness is 1200000. It must be from 300 to 210,000 MPa.",
    );
    expectValueError(
      () => SAG(18, 20, 0.25, 30, 0),
      "stiffness is 0. It needs a modulus of elasticity in psi, or a panel such as plywood.",
    );
    expectValueError(
      () => SAG(18, 20, 0.25, 30, "1200000 ppi"),
      `stiffness is "1200000 ppi". It takes a number, which is in psi, or a text of a number and its unit.`,
    );
  });

  test("refuses a bottom that would long have broken", () => {
    const broken = "Under this load the bottom would bend by more than its shorter side, 18 in: it would break.";
    expectValueError(() => SAG(18, 20, "1/64", 300, 50_000), broken);
    expectValueError(
      () => SAG(18, 20, "1e-9", 300, 50_000),
      `thickness is "1e-9", which is no length. Write a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
    expectValueError(() => SAG(18, 20, `.${"0".repeat(50)}1`, 300, 50_000), broken);
  });

  test("refuses other edges", () =>
    expectValueError(
      () => SAG(18, 20, 0.25, 30, 1_200_000, "free" as never),
      `edges is "free". It can be "held", "clamped".`,
    ));
});
