import { describe, expect, test } from "vitest";
import { CUTS, LAYOUT, PARTS, SETUPS, SHEETS } from "../../src/functions";
import { shown } from "../cell";
import { column, openings } from "./tables";

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

  test("names the sheet's stock at every cut", () => {
    const [header, ...own] = cuts(
      [
        ["Part", "Drawer", "Length", "Width", "Qty", "Thickness", "Grain"],
        ["Side", "C4", 22, 7.5, 2, "15/32", "length"],
      ],
      [
        ["Material", "Thickness", "Length", "Width"],
        ["Birch", 0.5, 96, 48],
      ],
    );
    expect(header).toEqual(["Sheet", "Material", "Thickness", "Step", "Cut", "Setting", "From", "Gives"]);
    expect(new Set(own.map((row) => row.slice(0, 3).join()))).toEqual(new Set(["1,Birch,0.5"]));
    expect(own.map((row) => row[7]).join("; ")).toMatch(/Side \(C4\) 22 × 7 1\/2/);
  });

  test("pieces that stand alone are called by their labels, one each", () => {
    const labels = ["C4 left side", "C4 right side"];
    const table = [
      ["Piece", "Drawer", "Part", "Length", "Width", "Grain"],
      ...labels.map((one) => [one, "C4", "Side", 22, 7.5, "length"]),
    ];
    const stock = [
      ["Length", "Width"],
      [96, 48],
    ];
    const given = cuts(table, stock)
      .map((row) => String(row[7]))
      .join("; ");
    for (const label of labels) expect(given.split(`${label} 22 × 7 1/2`)).toHaveLength(2);
    expect(column(LAYOUT(table, stock), "Part").sort()).toEqual(labels);
  });

  test("numbers sheets and steps, and rips before it crosscuts", () => {
    expect(rows.map((row) => [row[0], row[3]])).toEqual(rows.map((_, i) => [1, i + 1]));
    expect([rows[0]![4], rows[0]![6]]).toEqual(["rip", "sheet 96 × 48"]);
    const stages = rows.filter((row) => !String(row[6]).startsWith("piece"));
    expect(stages.every((row) => row[4] === "rip")).toBe(true);
    expect(rows.every((row) => row[4] === "rip" || row[4] === "crosscut")).toBe(true);
  });

  test("gives every part once", () => {
    const given = rows.map((row) => String(row[7])).join("; ");
    expect([given.match(/Side 22 × 7 1\/2/g)!.length, given.match(/Cleat 5 × 1 1\/2/g)!.length]).toEqual([8, 2]);
  });

  test("warns where a piece in hand is too small to be guided safely", () => {
    const cautions = rows.filter((row) => String(row[7]).includes("Caution"));
    expect(cautions.length).toBeGreaterThan(0);
    expect(String(cautions[0]![7])).toContain("as the saw's manual says");
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

  // Common practice: a blade that cuts on one side alone bends away.
  test("a cut that takes off less than the blade is wide says how much comes off", () => {
    const strip = [
      ["Part", "Drawer", "Length", "Width", "Qty", "Grain", "Grain group", "Grain gap"],
      ...["A1", "A2"].map((drawer) => ["Front", drawer, 8, 20, 1, "length", "A", "3/16"]),
    ];
    const shaving = "Caution: only 1/16 in comes off, less than the blade is wide: feed slowly, for it bends away.";
    const given = cuts(
      strip,
      [
        ["Length", "Width"],
        [16.1875, 20],
      ],
      "1/8",
    ).map((row) => row[7]);
    expect(given.slice(1)).toEqual([
      "Front (A1) 8 × 20; rest of the sheet 8 1/16 × 20",
      `Front (A2) 8 × 20. ${shaving}`,
    ]);
  });

  // Common practice: the fence measures one of them, yet both are kept.
  test("a piece that is left over and kept is minded like the one that stop or fence measures", () => {
    const caution = (length: number, width: number, size: [number, number]) =>
      String(
        cuts(
          [
            ["Part", "Length", "Width", "Qty", "Grain"],
            ["Long", 20, 20, 1, "length"],
            ["Small", length, width, 1, "length"],
          ],
          [["Length", "Width"], size],
        )[1]![7],
      );
    expect(caution(4, 20, [24.125, 20])).toMatch(/Small 4 × 20\. Caution: a short piece/);
    expect(caution(6, 20, [26.125, 20])).not.toMatch(/Caution/);
    expect(caution(20, 2, [20, 22.125])).toMatch(/Small 20 × 2\. Caution: a narrow rip/);
    expect(caution(20, 3, [20, 23.125])).not.toMatch(/Caution/);
  });

  // Common practice: crosscuts under 6 in (150 mm) and rips under 3 in (75 mm).
  test.each<[string, unknown, unknown, boolean, boolean]>([
    ["in", 6, 3, false, false],
    ["in", "5 63/64", 3, true, false],
    ["in", 6, "2 63/64", false, true],
    ["mm", 150, 75, false, false],
    ["mm", 149.5, 75, true, false],
    ["mm", 150, 74.5, false, true],
  ])("one limit holds in SETUPS and CUTS (%s): a pull %s long and %s wide", (unit, length, width, short, narrow) => {
    const scale = unit === "in" ? 1 : 25;
    const job = [
      openings(["A", 18 * scale, 12 * scale, 22 * scale, 1]),
      [
        ["unit", unit],
        ["pull kind", "shop-made"],
        ["pull length", length],
        ["pull width", width],
        ["pull standoff", 3 * scale],
      ],
    ] as const;
    const sheets = [
      ["Length", "Width"],
      [96 * scale, 48 * scale],
    ];
    const said = (table: unknown[][], words: RegExp) => table.some((row) => words.test(row.join(" ")));
    const setups = SETUPS(...(job as unknown as [never, never]));
    const sawn = cuts(PARTS(...(job as unknown as [never, never])), sheets, undefined, undefined, "quick", unit);
    expect([said(setups, /here on short pieces/), said(setups, /here on narrow rips/)]).toEqual([short, narrow]);
    expect([said(sawn, /Caution: a short piece/), said(sawn, /Caution: a narrow rip/)]).toEqual([short, narrow]);
  });

  // 48 − 47 3/4 leaves 1/4 in, of which a kerf of 1/8 in takes half: what is left is no wider than the kerf.
  test.each([
    ["no wider than the kerf", 47.75, "waste 96 × 1/8"],
    ["narrower than the kerf", 47.8125, "waste 96 × 1/16"],
    ["wider than the kerf", 47.6875, "offcut 96 × 3/16"],
  ])("what is left and %s is called so, and no offcut that SHEETS could name", (_, width, called) => {
    const tables = [
      [
        ["Part", "Length", "Width", "Qty"],
        ["Top", 96, width, 1],
      ],
      [
        ["Length", "Width"],
        [96, 48],
      ],
    ] as const;
    expect(String(cuts(...tables)[1]![7])).toMatch(new RegExp(`; ${called}$`));
    const largest = column((SHEETS as (...a: unknown[]) => unknown[][])(...tables), "Largest offcut")[0];
    expect(largest).toBe(called.startsWith("offcut") ? called.slice("offcut ".length) : "");
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
    expect(trimmed.map((row) => [row[4], row[5]])).toEqual([
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
