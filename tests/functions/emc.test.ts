import { describe, expect, test } from "vitest";
import { EMC } from "../../src/functions";
import { expectValueError } from "../cell";
import { reference } from "../handbook/reference";

const C = "C" as never;

describe("EMC(temperature, humidity, scale)", () => {
  test("is within 0.06 of every cell that the Wood Handbook prints (FPL-GTR-190 (2010), Table 4-2)", () => {
    const { cells } = reference("emc.table") as unknown as { cells: [number, number, number][] };
    for (const [t, h, printed] of cells) expect(Math.abs(EMC(t, h) - printed)).toBeLessThanOrEqual(0.06);
  });

  test("takes Celsius, and texts that name their own scale or their percent", () => {
    expect(EMC(21, 45, C)).toBeCloseTo(EMC(69.8, 45), 9);
    expect(EMC("21 C", 45)).toBe(EMC(21, 45, C));
    expect(EMC("21 °C", "45 %")).toBe(EMC(21, 45, C));
    expect(EMC("70 °F", 45, C)).toBe(EMC(70, 45));
    expect(EMC(70, { type: "Double", basicValue: 0.45, numberFormat: "0%" })).toBe(EMC(70, 45));
    expect(EMC(21, 45, "celsius" as never)).toBe(EMC(21, 45, C));
  });

  test("dry air dries wood out; air that is full takes it to about its fiber saturation", () => {
    expect([EMC(70, "none"), EMC(70, "0 %")]).toEqual([0, 0]);
    expect(EMC(70, 100)).toBeGreaterThan(27);
    expect(EMC(70, 100)).toBeLessThan(31);
  });

  test("refuses what is no relative humidity", () => {
    expectValueError(() => EMC(70, 101), "humidity is 101. It must be from 0 to 100.");
    expectValueError(() => EMC(70, -5), "humidity is -5. It must be 0 or more.");
    expectValueError(() => EMC(70, "damp"), `humidity is "damp". It must be a plain number, such as 12.5.`);
    expectValueError(() => EMC(70, null), "humidity is blank. It needs a relative humidity in %, such as 45.");
    expectValueError(() => EMC(70, 0), "humidity is 0, which an empty cell also gives: write none or 0 % for zero.");
    expectValueError(
      () => EMC(70, 0.45),
      "humidity is 0.45: is that 0.45 % or 45 %? Write a plain number, such as 7, or a text with its sign, such as '0.5 %. (A cell formatted as a percentage holds 0.07 for 7 %.)",
    );
  });

  test("refuses a temperature that nobody has published, and says in which scale", () => {
    expectValueError(() => EMC(300, 45), "temperature is 300 °F. It must be from 30 to 270 °F.");
    expectValueError(() => EMC(-10, 45, C), "temperature is -10 °C. It must be from -1.1 to 132.2 °C.");
    expectValueError(
      () => EMC(0, 45, C),
      "temperature is 0, which an empty cell also gives: write none or 0 C for zero.",
    );
    expect(EMC("0 C", 45)).toBe(EMC(32, 45));
    expectValueError(() => EMC("", 45), "temperature is blank. It needs a temperature in °F.");
    expectValueError(
      () => EMC("21 K", 45),
      `temperature is "21 K". It takes a number, which is in °F, or a text of a number and its unit.`,
    );
    expectValueError(() => EMC(70, 45, "K" as never), `scale is "K". It can be "F", "C".`);
  });

  test("tells the first fault from left to right, whatever the scale says", () => {
    expectValueError(() => EMC(300, 101, "K" as never), "temperature is 300 °F. It must be from 30 to 270 °F.");
    expectValueError(() => EMC(300, 101, C), "temperature is 300 °C. It must be from -1.1 to 132.2 °C.");
  });
});
