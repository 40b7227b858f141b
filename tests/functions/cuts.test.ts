import { describe, expect, test } from "vitest";
import { CUTS } from "../../src/functions";
import { shown } from "../cell";

const cuts = (...args: unknown[]) => (CUTS as (...a: unknown[]) => unknown[][])(...args);

describe("CUTS(parts, stock, kerf, trim, effort, unit)", () => {
  const list = [
    ["Part", "Length", "Width", "Qty", "Grain"],
    ["Side", 22, 7.5, 8, "length"],
    ["Cleat", 5, 1.5, 2, "length"],
  ];
  const rows = cuts(list, [
    ["Length", "Width"],
    [96, 48],
  ]).slice(1);

  test("numbers sheets and steps, and rips before it crosscuts", () => {
    expect(rows.map(([sheet, step]) => [sheet, step])).toEqual(rows.map((_, i) => [1, i + 1]));
    expect([rows[0]![2], rows[0]![4]]).toEqual(["rip", "sheet 96 × 48"]);
    const stages = rows.filter(([, , , , from]) => !String(from).startsWith("piece"));
    expect(stages.every((row) => row[2] === "rip")).toBe(true);
    expect(rows.every(([, , kind]) => kind === "rip" || kind === "crosscut")).toBe(true);
  });

  test("gives every part once", () => {
    const given = rows.map((row) => String(row[5])).join("; ");
    expect([given.match(/Side 22 × 7 1\/2/g)!.length, given.match(/Cleat 5 × 1 1\/2/g)!.length]).toEqual([8, 2]);
  });

  test("warns where a piece in hand is too small to be guided safely", () => {
    const cautions = rows.filter((row) => String(row[5]).includes("Caution"));
    expect(cautions.length).toBeGreaterThan(0);
    expect(String(cautions[0]![5])).toContain("as the saw's manual says");
    expect(
      cuts(
        [
          ["Length", "Width", "Qty"],
          [40, 40, 1],
        ],
        [
          ["Length", "Width"],
          [96, 48],
        ],
      )
        .flat()
        .join(),
    ).not.toContain("Caution");
  });

  test("trims the edges first where a trim is given", () => {
    const trimmed = cuts(
      list,
      [
        ["Length", "Width"],
        [96, 48],
      ],
      0.125,
      0.25,
    ).slice(1, 5);
    expect(trimmed.map((row) => [row[2], row[3]])).toEqual([
      ["rip", 47.75],
      ["rip", 47.5],
      ["crosscut", 95.75],
      ["crosscut", 95.5],
    ]);
  });

  test("a mistake is named as in SHEETS", () => {
    expect(
      shown(() =>
        cuts(list, [
          ["Length", "Width"],
          [20, 20],
        ]),
      ),
    ).toMatch(/^#N\/A parts, row 2 \(Side\), 22 in × 7 1\/2 in, fits no sheet/);
  });
});
