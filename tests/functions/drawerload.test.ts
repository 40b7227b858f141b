import { describe, expect, test } from "vitest";
import { DRAWERLOAD } from "../../src/functions";
import { expectValueError } from "../cell";

const mm = "mm" as never;

describe("DRAWERLOAD(inside_width, inside_depth, rate, unit)", () => {
  test("is 15 lb/ft² of the inside area, or 718 Pa (ANSI/KCMA A161.1, clause 7.1)", () => {
    expect(DRAWERLOAD(16, 20)).toBe(33.3333333333);
    expect(DRAWERLOAD("16", "20 in", 15)).toBe(33.3333333333);
    // 0.2 m² × 718 Pa over 9.80665 m/s² (NIST SP 330).
    expect(DRAWERLOAD(400, 500, null, mm)).toBeCloseTo((0.2 * 718) / 9.80665, 9);
    expect(DRAWERLOAD(400, 500, 718, mm)).toBe(DRAWERLOAD(400, 500, null, mm));
  });

  test("takes a rate of one's own, in whichever unit it is written", () => {
    expect(DRAWERLOAD(12, 12, 40)).toBe(40);
    expect(DRAWERLOAD(1000, 1000, "73 kg/m²", mm)).toBe(73);
    expect(DRAWERLOAD(1000, 1000, "73 kg / m2", mm)).toBe(73);
    expect(DRAWERLOAD(12, 12, "1 kPa")).toBeCloseTo(1000 / 47.88025898, 6);
    expect([DRAWERLOAD(12, 12, "40 psf"), DRAWERLOAD(12, 12, "40 lb/ft²")]).toEqual([40, 40]);
    expect([0, "", undefined].map((blank) => DRAWERLOAD(12, 12, blank))).toEqual([15, 15, 15]);
  });

  test("refuses kilograms to the square meter without their unit, and what no drawer bears", () => {
    expectValueError(
      () => DRAWERLOAD(400, 500, 73, mm),
      "rate is 73. It must be from 250 to 10,000 Pa. Another unit is written with the number, as 73 kg/m².",
    );
    expectValueError(() => DRAWERLOAD(16, 20, 718), "rate is 718. It must be from 1 to 200 lb/ft².");
    expectValueError(() => DRAWERLOAD(16, 20, "none"), `rate is "none". It must be from 1 to 200 lb/ft².`);
    expectValueError(() => DRAWERLOAD(16, 20, -15), "rate is -15. It must be from 1 to 200 lb/ft².");
    expectValueError(
      () => DRAWERLOAD(16, 20, "heavy"),
      `rate is "heavy". It takes a number, which is in lb/ft², or a text of a number and its unit.`,
    );
    expectValueError(
      () => DRAWERLOAD(16, 20, "1,500 Pa"),
      `rate is "1,500": its comma may mark decimals or thousands. Write a point, or no comma.`,
    );
  });

  test("refuses an inside that is none", () => {
    expectValueError(() => DRAWERLOAD("0", 20), "inside_width is 0 in. It must be more than 0.");
    expectValueError(
      () => DRAWERLOAD(16, null),
      `inside_depth is blank. It needs a length: a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm.`,
    );
  });
});
