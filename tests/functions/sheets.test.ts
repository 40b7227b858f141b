import { describe, expect, test } from "vitest";
import { CUTS, LAYOUT, PARTS, SHEETS } from "../../src/functions";
import { expectValueError, shown } from "../cell";
import { PARTS_BENCH } from "../worked/plans";
import { column } from "./tables";

const SHEET = [
  ["Length", "Width"],
  [96, 48],
];
const parts = (...rows: unknown[][]) => [["Part", "Length", "Width", "Qty", "Grain"], ...rows];
const sheets = (list: unknown[][], stock: unknown[][] = SHEET, ...rest: unknown[]) =>
  (SHEETS as (...a: unknown[]) => unknown[][])(list, stock, ...rest);

describe("SHEETS(parts, stock, kerf, trim, effort, unit)", () => {
  test("counts sheets, with a proven bound, the yield and the largest offcut", () => {
    expect(sheets(parts(["Shelf", 48, 24, 9, ""]), SHEET, "none")).toEqual([
      ["Material", "Thickness", "Sheet", "Sheets", "Least possible", "Parts", "Yield", "Cost", "Largest offcut"],
      ["", "", "96 × 48", 3, 3, 9, 0.75, "", "48 × 48"],
    ]);
  });

  test("the kerf lies between neighbors and at no edge, and trim is taken off first", () => {
    const count = (size: unknown, ...rest: unknown[]) =>
      column(sheets(parts(["Half", size, 48, 2, ""]), SHEET, ...rest), "Sheets")[0];
    expect([count("47 15/16"), count(48), count(48, "none")]).toEqual([1, 2, 1]);
    expect(column(sheets(parts(["Whole", "95 1/2", "47 1/2", 1, ""]), SHEET, 0.125, "1/4"), "Sheets")).toEqual([1]);
    expect(shown(() => sheets(parts(["Whole", "95 33/64", "47 1/2", 1, ""]), SHEET, 0.125, "1/4"))).toMatch(
      /^#N\/A parts, row 2 \(Whole\), 95 33\/64 in × 47 1\/2 in, fits no sheet/,
    );
  });

  test("where the stock names no material, that of its parts stands, as in LAYOUT and CUTS", () => {
    const list = (...materials: string[]) => [
      ["Part", "Length", "Width", "Qty", "Material"],
      ...materials.map((material) => ["Shelf", 20, 10, 1, material]),
    ];
    const named = (table: unknown[][]) => [
      ...new Set([SHEETS, CUTS].flatMap((of) => column(of(table as never, SHEET as never), "Material"))),
    ];
    expect(named(list("Birch plywood", "Birch plywood"))).toEqual(["Birch plywood"]);
    expect(named(list("Birch plywood", "Oak plywood", ""))).toEqual(["Birch plywood, Oak plywood"]);
    expect(named(list(""))).toEqual([""]);
    expect(new Set(column(LAYOUT(list("Birch", "Oak") as never, SHEET as never), "Material"))).toEqual(
      new Set(["Birch", "Oak"]),
    );
  });

  test("grain keeps a part from turning; none in the stock frees it", () => {
    const tall = parts(["Door", 60, 20, 1, "width"]);
    expect(shown(() => sheets(tall))).toMatch(
      /^#N\/A parts, row 2 \(Door\), 60 in × 20 in, fits no sheet of its stock, the way its grain allows\./,
    );
    expect(
      column(
        sheets(tall, [
          ["Length", "Width", "Grain"],
          [96, 48, "none"],
        ]),
        "Sheets",
      ),
    ).toEqual([1]);
    expect(column(sheets(parts(["Door", 60, 20, 1, ""])), "Sheets")).toEqual([1]);
  });

  test("material and the nearest thickness choose the stock; each has its own rows", () => {
    const list = [
      ["Part", "Length", "Width", "Qty", "Thickness", "Material"],
      ["Side", 22, 8, 10, 0.5, "Birch"],
      ["Bottom", 22, 16, 4, "7/32", "birch"],
      ["Front", 20, 10, 4, 0.75, "Oak"],
    ];
    const stock = [
      ["Material", "Thickness", "Length", "Width", "Price"],
      ["Birch", "15/32", 96, 48, 60],
      ["Birch", "1/4", 96, 48, 35],
      ["Oak", "23/32", 96, 48, 110],
    ];
    expect(
      sheets(list, stock)
        .slice(1)
        .map((row) => [row[0], row[1], row[3], row[5], row[7]]),
    ).toEqual([
      ["Birch", 0.46875, 1, 10, 60],
      ["Birch", 0.25, 1, 4, 35],
      ["Oak", 0.71875, 1, 4, 110],
    ]);
    expect(shown(() => sheets([...list, ["Top", 20, 10, 1, 1, "Oak"]], stock))).toBe(
      "#N/A parts, row 5 (Top) finds no stock of Oak 1 in thick.",
    );
  });

  test("the cheaper way is taken, and an offcut of one's own is free", () => {
    const list = parts(["Panel", 40, 20, 1, ""]);
    const stock = [
      ["Length", "Width", "Price", "Available"],
      [96, 48, 80, ""],
      [48, 48, 45, ""],
    ];
    expect(
      sheets(list, stock)
        .slice(1)
        .map((row) => [row[2], row[3], row[7]]),
    ).toEqual([["48 × 48", 1, 45]]);
    expect(
      sheets(list, [...stock, [42, 22, "", 1]])
        .slice(1)
        .map((row) => [row[2], row[7]]),
    ).toEqual([["42 × 22", 0]]);
    expectValueError(
      () => sheets(list, [...stock, [42, 22, "", ""]]),
      "stock, row 4 has no price, and others have. Give it one, or Available where it is an offcut of yours.",
    );
  });

  test("the cut list of PARTS goes straight in: the whole bench, never fewer sheets than the bound", () => {
    const rows = sheets(
      PARTS(PARTS_BENCH.openings, PARTS_BENCH.standards),
      [
        ["Thickness", "Length", "Width"],
        ["1/4", 96, 48],
        ["1/2", 96, 48],
        ["3/4", 96, 48],
      ],
      undefined,
      undefined,
      "quick",
    ).slice(1);
    expect(rows.map((row) => row[1])).toEqual([0.25, 0.5, 0.75]);
    expect(rows.reduce((sum, row) => sum + (row[5] as number), 0)).toBe(48);
    for (const row of rows) expect(row[3]).toBeGreaterThanOrEqual(row[4] as number);
  });
});
