import { describe, expect, test } from "vitest";
import { CHECKS, PARTS, PLAN, PRICE, WORKING } from "../../src/functions";
import { shown } from "../cell";
import { sheetsAt } from "./money";
import { column, messageOf, openings } from "./tables";

const H = ["Opening", "Width", "Height", "Depth", "Drawers"];
const drawersOf = (heading: string, value: unknown, standards?: unknown[][]) =>
  column(
    PLAN(
      [
        ["Width", "Height", "Depth", heading],
        [18, 26, 20.5, value],
      ],
      standards,
    ),
    "Front height",
  );

describe("what a cell of openings is read as", () => {
  test("a count of drawers has no unit, whatever the heading says; fixed heights have", () => {
    expect(drawersOf("Drawers (mm)", 3)).toHaveLength(3);
    expect(drawersOf("Drawers (cm)", "3")).toHaveLength(3);
    expect(drawersOf("Drawers (mm)", "139.7; 1 part")[0]).toBe(5.5);
    expect(drawersOf("Drawers (mm)", 139.7)).toEqual([5.5]);
  });

  test("a word with a sum behind it is no word", () => {
    const message = (name: string, value: string) =>
      shown(() => PLAN(openings(["A", 18, 26, 20.5, 1]), [[name, value]]));
    expect(message("box depth", "slide - 1/2")).toMatch(
      /^#VALUE! standards, box depth is "slide - 1\/2", which is no length/,
    );
    expect(message("slide centerline", "center + 1/2")).toMatch(
      /^#VALUE! standards, slide centerline is "center \+ 1\/2"/,
    );
    expect(message("slide", "undermount 2")).toMatch(/^#VALUE! standards, slide is "undermount 2"/);
  });

  test("a 0 that may be an empty cell is refused with a remedy of its kind: counts have no inches, and loads have pounds", () => {
    const message = (name: string, ...unit: string[]) =>
      shown(() => PLAN(openings(["A", 18, 26, 20.5, 1]), [[name, 0], ...unit.map((one) => ["unit", one])]));
    for (const [name, usual] of [
      ["slide screws", "3"],
      ["corner screws", "auto"],
      ["bottom screws", "auto"],
      ["front screws", "auto"],
      ["pulls per front", "auto"],
    ] as const)
      expect(message(name)).toBe(
        `#VALUE! standards, ${name} is 0, which an empty cell also gives: write none or 0 as text for zero, or leave it out for ${usual}.`,
      );
    expect(message("load")).toMatch(/write none or 0 lb for zero, or leave it out for even\.$/);
    expect(message("front gap")).toMatch(/write none or 0 in for zero, or leave it out for 1\/8 in\.$/);
    const decimals = (value: unknown) =>
      shown(() => PRICE(openings(["A", 18, 26, 20.5, 1]), [], sheetsAt(40), [["currency decimals", value]]));
    expect(decimals(0)).toBe(
      "#VALUE! rates, currency decimals is 0, which an empty cell also gives: write none or 0 as text for zero, or leave it out for 2.",
    );
    for (const written of ["none", "0"]) expect(decimals(written)).not.toMatch(/currency decimals/);
  });

  test("none is the default of what has none, and zero of a count", () => {
    const standards = [
      ["undermount deduction", "none"],
      ["joint depth", "None"],
      ["slide rating", "none"],
    ];
    expect(column(PLAN(openings(["A", 18, 26, 20.5, 1]), standards), "Box width")).toEqual([17]);
    const pulls = [
      [...H, "Pulls per front"],
      ["A", 18, 26, 20.5, 1, "none"],
    ];
    expect(column(PARTS(pulls, [["pull kind", "shop-made"]]), "Part")).not.toContain("Pull plate");
  });

  test("British headings are read, and near ones of fewer than five letters are the shop's own", () => {
    const british = [
      [...H, "Slide centreline"],
      ["A", 18, 26, 20.5, 1, 3],
    ];
    expect(column(PLAN(british), "Slide centerline")).toEqual([3.5]);
    const own = [
      [...H, "Kerg", "Slid"],
      ["A", 18, 26, 20.5, 1, "x", "y"],
    ];
    expect(column(PLAN(own), "Box width")).toEqual([17]);
    expect(
      shown(() =>
        PLAN([
          [...H, "Note", "note"],
          ["A", 18, 26, 20.5, 1, "", ""],
        ]),
      ),
    ).toBe("#VALUE! openings has the heading Note twice.");
  });

  test("rows of zeros are blank rows, above the header and among standards too", () => {
    expect(
      column(
        PLAN(
          [[0, 0, 0, 0, 0], H, ["A", 18, 26, 20.5, 1], [0, 0, 0, 0, 0]],
          [
            ["", ""],
            ["Standard", "Value"],
            [0, 0],
            ["edge band", 0],
          ],
        ),
        "Drawer",
      ),
    ).toEqual(["A1"]);
    const tall = [
      ["Width", "Height", "Depth", "Drawers"],
      [18, 26, 20.5, 1],
      ...Array.from({ length: 150_000 }, () => [0, 0, 0, 0]),
    ];
    expect(PLAN(tall)).toHaveLength(2);
  });

  test("every cell is read, also one that the plan has no use for", () => {
    const bad = (heading: string, value: unknown) => [
      [...H, heading],
      ["A", 18, 26, 20.5, 1, value],
      ["B", 18, 26, 9, 1, ""],
    ];
    for (const [heading, value] of [
      ["Quantity", 2.5],
      ["Opening tolerance", "abc"],
      ["Kerf", "abc"],
      ["Pull length", "abc"],
      ["Slide rating", "strong"],
    ] as const) {
      const checks = CHECKS(bad(heading, value));
      expect(
        checks.map((row) => row.slice(0, 2)),
        heading,
      ).toContainEqual(["A", "wrong"]);
      expect(checks.map((row) => row[2]).join(), heading).toContain(`openings, row 2, ${heading} is`);
      expect(checks.map((row) => row[2]).join(), heading).toContain("Opening B: No slide fits");
      expect(messageOf(PLAN(bad(heading, value))[1]![2]), heading).toContain(`openings, row 2, ${heading} is`);
    }
  });
});

describe("which fault is named", () => {
  test("arguments from left to right, rows before geometry", () => {
    const impossible = openings(["A", 0.5, 26, 20.5, 1], ["B", "wide", 26, 20.5, 1]);
    expect(shown(() => PARTS(impossible))).toMatch(/^#VALUE! openings, row 3, Width is "wide"/);
    expect(shown(() => PARTS(impossible, undefined, "maybe"))).toBe(
      `#VALUE! grouped is "maybe". It can be TRUE or FALSE.`,
    );
    expect(shown(() => WORKING(openings(["A", 18, 26, 20.5, 1]), 71, [["foo", 1]]))).toMatch(
      /^#VALUE! drawer is the number 71/,
    );
    expect(shown(() => PLAN(openings(["A", 18, 26, 20.5, 1], ["A", 18, 26, 20.5, 1]), [["kerf", "x"]]))).toMatch(
      /two openings "A"/,
    );
  });

  test("a cell that several openings want is one finding, with all its places", () => {
    const rows = CHECKS([
      [...H, "Front gap"],
      ["A", 18, 26, 20.5, 1, ""],
      ["B", 18, 26, 20.5, 1, "abc"],
      ["C", 18, 26, 20.5, 1, ""],
    ]).slice(1);
    expect(rows.filter(([, level]) => level === "wrong").map(([where]) => where)).toEqual(["A, B, C"]);
  });

  test("messages are in the job's own unit", () => {
    expect(
      CHECKS(openings(["A", 500, 700, 525, 1]), [
        ["unit", "mm"],
        ["groove depth", -5],
      ])[1]![2],
    ).toBe("standards, groove depth is -5 mm. It must be more than 0.");
  });

  test("WORKING of a good drawer does not fail for a neighbor's cell", () => {
    const sizes = WORKING(openings(["A", "abc", 26, 20.5, 1], ["B", 18, 26, 20.5, 1]), "B1").map(([size]) => size);
    expect(sizes).toContain("Box width");
    expect(sizes).not.toContain("Cabinet outside width");
  });
});

describe("openings that fail, and orders that count", () => {
  test("a box that fails lowers no other in its circle", () => {
    const table = (offset: unknown) => [
      [...H, "Space above", "Groove offset"],
      ["A", 18, 10, 20.5, 1, 4, offset],
      ["B", 18, 10, 20.5, 1, "", ""],
    ];
    const height = (offset: unknown) => column(PLAN(table(offset), [["match heights", "job"]]), "Box height")[1];
    expect([height(7), height("")]).toEqual([9.25, 5.5]);
  });

  test("fronts in one grain stay in their order, each in a row of its own", () => {
    const parts = PARTS(openings(["A", 18, 26.25, 23.25, "5; 1 part; 5"]), [["front match", "opening"]]);
    expect(parts.filter(([part]) => part === "Front").map((row) => row[1])).toEqual(["A1", "A2", "A3"]);
  });

  test("a wood runner of which none is sold so short is as long as its box", () => {
    const plan = (depth: unknown) =>
      PLAN(openings(["A", 18, 20, 9, 1]), [
        ["slide", "wood runner"],
        ["box depth", depth],
      ]);
    expect([column(plan(8), "Box depth"), column(plan(8), "Slide length")]).toEqual([[8], [8]]);
    expect(messageOf(column(plan(9.5), "Box depth")[0])).toBe(
      "#VALUE! Opening A: box depth is 9 1/2 in. The opening has room for 9 in.",
    );
  });

  test("an inset front takes its thickness from the room for a box of its own depth", () => {
    const plan = PLAN(openings(["A", 18, 20, 20, 1]), [
      ["front style", "inset"],
      ["box depth", 19.5],
    ]);
    expect(messageOf(column(plan, "Box depth")[0])).toBe(
      "#VALUE! Opening A: box depth is 19 1/2 in. The opening has room for 19 1/4 in.",
    );
  });
});

describe("sizes that few jobs show", () => {
  const plan = (standards: unknown[][], row: unknown[] = ["A", 18, 20, 20.5, 1]) => PLAN(openings(row), standards);

  test("a bottom reveal shortens the face from below, a negative one lengthens it", () => {
    expect(column(plan([["bottom reveal", "1/4"]]), "Front bottom")).toEqual([-0.5]);
    expect(column(plan([["bottom reveal", "-1/4"]]), "Front bottom")).toEqual([-1]);
  });

  test("an applied bottom takes nothing but its thickness from the inside", () => {
    expect(column(plan([["bottom fit", "applied"]]), "Inside height")).toEqual([19]);
  });

  test("two pulls begin at the standard's width, not above it", () => {
    const pulls = (from: unknown) =>
      column(
        PARTS(openings(["A", 18, 20, 20.5, 1]), [
          ["pull kind", "shop-made"],
          ["two pulls from", from],
        ]),
        "Qty",
      ).slice(5);
    expect([pulls("19 3/8"), pulls("19 7/16")]).toEqual([
      [2, 2],
      [1, 1],
    ]);
  });

  test("cabinets are circles of their own for matching, and cannot differ in thickness within", () => {
    const table = [
      [...H, "Cabinet", "Space above"],
      ["A", 18, 20, 20.5, 2, "K1", ""],
      ["B", 18, 20, 20.5, 2, "K2", 2],
    ];
    const heights = column(PLAN(table, [["match heights", "cabinet"]]), "Box height") as number[];
    expect(heights[0]).toBeGreaterThan(heights[2]!);
    const thick = [
      [...H, "Cabinet thickness"],
      ["A", 18, 20, 20.5, 1, 1],
      ["B", 18, 20, 20.5, 1, ""],
    ];
    expect(messageOf(PLAN(thick)[1]![2])).toMatch(/differ in cabinet thickness/);
  });

  test("WORKING writes half of a rail or partition as the sum that it is", () => {
    const how = (table: unknown[][], size: string) => WORKING(table, "A1").find(([name]) => name === size)![2];
    expect(
      how(
        [
          [...H, "Rail below"],
          ["A", 18, 20, 20.5, 1, 1],
        ],
        "Face lower edge",
      ),
    ).toBe("− (rail 1 − front gap 1/8) / 2");
    expect(how(openings(["A", 18, 20, 20.5, 1], ["B", 18, 20, 20.5, 1]), "Front width")).toBe(
      "opening width 18 + cabinet thickness 3/4 − left reveal 1/16 + (partition 3/4 − front gap 1/8) / 2",
    );
    expect(
      WORKING(openings(["A", 18, 20, 20.5, 1]), "A1", [["bottom fit", "under back"]])
        .find(([name]) => name === "Box back height")!
        .slice(1),
    ).toEqual([18.625, "inside height 18 5/8"]);
  });
});
