import { describe, expect, test } from "vitest";
import { airTemperature, equilibriumMoisture } from "../../src/core/wood";
import { origin, reference } from "./reference";

type Cell = [temperature: number, humidity: number, moisture: number];

describe(`equilibrium moisture content (${origin("emc.table")})`, () => {
  const { rule, cells } = reference("emc.table") as unknown as { rule: string; cells: Cell[] };

  test("is within 0.06 of every printed cell", () => {
    expect(rule).toMatch(/within 0\.06 of every printed cell/);
    expect(cells.length).toBe(162);
    const off = cells.map(([t, h, printed]) => Math.abs(equilibriumMoisture(airTemperature(t, "F"), h) - printed));
    expect(Math.max(...off)).toBeLessThanOrEqual(0.06);
  });

  test.each(Object.entries(reference("emc.equation").examples as Record<string, number>))(
    `at %s is %d to the last printed digit (${origin("emc.equation")})`,
    (at, printed) => {
      const [, t, h] = /^([\d.]+) °C ([\d.]+) %$/.exec(at)!;
      const digits = String(printed).split(".")[1]!.length;
      expect(equilibriumMoisture(Number(t), Number(h)).toFixed(digits)).toBe(printed.toFixed(digits));
    },
  );
});
