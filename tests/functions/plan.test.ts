import { describe, expect, test } from "vitest";
import { PLAN } from "../../src/functions";
import { expectValueError, shown } from "../cell";
import { column, messageOf, openings } from "./tables";

const one = (...sizes: unknown[]) => openings(["A", ...sizes]);
const size = (heading: string, table: unknown[][], standards?: unknown[][]) =>
  column(PLAN(table, standards), heading)[0];

describe("PLAN(openings, standards): tables in", () => {
  test("headings match whatever the case, spaces, hyphens and punctuation, in any order; blank rows are skipped", () => {
    const table = [
      ["DRAWERS", "bottom-fit", "depth:", " Width ", "My note", "height", "opening"],
      [1, "under back", 23.25, 24, "by the door", 26.25, "B"],
      ["", "", "", null, "", undefined, ""],
      [1, "", 23.25, 18, "", 26.25, ""],
    ];
    expect(column(PLAN(table), "Drawer")).toEqual(["B1", "A1"]);
    expect(column(PLAN(table), "Box width")).toEqual([23, 17]);
  });

  test("a heading or a name may carry its unit", () => {
    const table = [
      ["Width (mm)", "Height (cm)", "Depth", "Drawers"],
      [609.6, 66.675, 23.25, 1],
    ];
    expect([size("Box width", table), size("Box height", table)]).toEqual([23, 25.5]);
    expect(size("Box width", one(24, 26, 23.25, 1), [["Side clearance (mm)", 25.4]])).toBe(22);
    expectValueError(
      () =>
        PLAN([
          ["Width (stone)", "Height", "Depth", "Drawers"],
          [1, 2, 3, 4],
        ]),
      'openings: "Width (stone)" has no unit in its bracket. It can be in, ft, mm, cm or m.',
    );
  });

  test("a size may hold several measurements, of which the least counts", () => {
    expect(size("Box width", one("18 1/16; 18;\n17 15/16", 10, 20.5, 1))).toBe(16.9375);
  });

  test("labels: a blank gets the next letter that nobody has, a number is read as text", () => {
    const table = openings(["", 18, 10, 20.5, 1], ["A", 18, 10, 20.5, 2], ["", 18, 10, 20.5, 1], [7, 18, 10, 20.5, 1]);
    expect(column(PLAN(table), "Drawer")).toEqual(["B1", "A1", "A2", "C1", "7-1"]);
  });

  test("a numeric 0 of an opening is a blank, none and 0 in are zero", () => {
    const table = (below: unknown) => [
      ["Width", "Height", "Depth", "Drawers", "Space below"],
      [18, 10, 20.5, 1, below],
    ];
    expect([0, "", "none", "0 in", "1/4"].map((below) => size("Box bottom", table(below)))).toEqual([
      0.5, 0.5, 0, 0, 0.25,
    ]);
    expect(size("Box bottom", table(""), [["space below", "0"]])).toBe(0);
  });

  test("a column of a standard's name holds for that row alone", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Side thickness"],
      [18, 10, 20.5, 1, "3/4"],
      [18, 10, 20.5, 1, ""],
    ];
    expect(column(PLAN(table, [["Side thickness", "15/32"]]), "Inside width")).toEqual([15.5, 16.0625]);
  });

  test("standards may have a title row, and blank values fall back to the defaults", () => {
    expect(
      size("Box height", one(18, 10, 20.5, 1), [
        ["Standard", "Value"],
        ["height step", ""],
        ["", ""],
        ["space above", 1],
      ]),
    ).toBe(8.5);
  });
});

describe("PLAN(openings, standards): what it works out", () => {
  test("overlay fronts meet over partitions and stay short of the carcase's ends", () => {
    const table = openings(["A", 18, 10, 20.5, 1], ["B", 24, 10, 20.5, 1]);
    expect(column(PLAN(table), "Front width")).toEqual([19, 25]);
    expect(
      column(
        PLAN(table, [
          ["partition thickness", 1.5],
          ["left reveal", "-1/2"],
        ]),
        "Front width",
      ),
    ).toEqual([19.9375, 25.375]);
  });

  test("openings of different cabinets do not share a partition", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Cabinet"],
      [18, 10, 20.5, 1, "K1"],
      [18, 10, 20.5, 1, "K2"],
    ];
    expect(column(PLAN(table), "Front width")).toEqual([19.375, 19.375]);
  });

  test("a rail above or below is shared with the front beyond it", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Rail above", "Rail below"],
      [18, 10, 20.5, 1, "3/4", ""],
      [18, 10, 20.5, 1, "", 1],
    ];
    expect(column(PLAN(table), "Front height")).toEqual([11.0625, 11.0625]);
    expect(column(PLAN(table), "Front bottom")).toEqual([-0.75, -0.4375]);
  });

  test("face frame: fronts overlay the frame's opening on all four sides", () => {
    const plan = PLAN(one(18, 10, 20.5, 1), [
      ["construction", "face frame"],
      ["frame overlay", "3/8"],
    ]);
    expect([column(plan, "Front width"), column(plan, "Front height"), column(plan, "Front bottom")]).toEqual([
      [18.75],
      [10.75],
      [-0.375],
    ]);
  });

  test("inset: the gap goes round the face, and the slide stands back by the front's thickness", () => {
    const plan = PLAN(one(18, 10, 20.5, 1), [["front style", "inset"]]);
    expect([column(plan, "Front width"), column(plan, "Front height"), column(plan, "Slide length")]).toEqual([
      [17.8125],
      [9.8125],
      [18],
    ]);
  });

  test("undermount: box width is the opening less the deduction and both sides, and the slide has no centerline", () => {
    const plan = PLAN(one(18, 10, 20.5, 1), [
      ["slide", "undermount"],
      ["undermount deduction", "1 5/8"],
      ["side thickness", "5/8"],
    ]);
    expect([column(plan, "Box width"), column(plan, "Slide centerline")]).toEqual([[17.625], [""]]);
  });

  test("the slide's centerline is the middle of the box, or as the standard says", () => {
    const at = (value: unknown) => size("Slide centerline", one(18, 10, 20.5, 1), [["slide centerline", value]]);
    expect([at("centre"), at("bottom"), at(2)]).toEqual([5.125, 1.375, 2.5]);
  });

  test("a box of its own depth takes the longest slide that fits opening and box", () => {
    const plan = PLAN(one(18, 10, 20.5, 1), [["box depth", "17 1/2"]]);
    expect([column(plan, "Box depth"), column(plan, "Slide length")]).toEqual([[17.5], [16]]);
  });

  test("box heights may be asked for, one for all or one a drawer", () => {
    const table = (heights: unknown) => [
      ["Width", "Height", "Depth", "Drawers", "Box heights"],
      [18, 20, 20.5, 2, heights],
    ];
    expect([column(PLAN(table(4)), "Box height"), column(PLAN(table("4; 6")), "Box height")]).toEqual([
      [4, 4],
      [4, 6],
    ]);
    expect(messageOf(size("Box height", table("4; 5; 6")))).toBe(
      "#VALUE! Opening A: box heights lists 3 heights for 2 drawers. Give one for all, or one a drawer.",
    );
    expect(messageOf(size("Box height", table(12)))).toMatch(
      /^#VALUE! Opening A: a box height of 12 in is asked for\. Its space has room for /,
    );
  });

  test("match heights: in the opening, the cabinet, the job, or not at all", () => {
    const table = openings(["A", 18, 20, 20.5, 2], ["B", 18, 20, 20.5, 2]);
    const heights = (match: string, rows = table) =>
      column(
        PLAN(rows, [
          ["match heights", match],
          ["top reveal", "3/8"],
        ]),
        "Box height",
      );
    expect(heights("none")[0]).not.toBe(heights("none")[1]);
    expect(new Set(heights("opening")).size).toBe(1);
    const lower = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Space above"],
      ["A", 18, 20, 20.5, 2, ""],
      ["B", 18, 20, 20.5, 2, 2],
    ];
    expect([new Set(heights("opening", lower)).size, new Set(heights("cabinet", lower)).size]).toEqual([2, 1]);
  });
});

describe("PLAN(openings, standards): an opening that cannot be planned", () => {
  test("gives one row, its label and error cells, and the others are right", () => {
    const plan = PLAN(
      openings(["A", 18, 10, 9, 1], ["B", 24, 10, 20.5, 1], ["C", 1, 10, 20.5, 1], ["D", "wide", 10, 20.5, 1]),
    );
    expect(plan.map((row) => row.length)).toEqual([14, 14, 14, 14, 14]);
    expect(plan.map((row) => row.slice(0, 2))).toEqual([
      ["Drawer", "Opening"],
      ["A", "A"],
      ["B1", "B"],
      ["C", "C"],
      ["D", "D"],
    ]);
    expect(plan[2]![5]).toBe(23);
    expect(messageOf(plan[1]![2])).toBe(
      "#N/A Opening A: No slide fits: an inside depth of 9 in leaves 8 1/2 in, and the shortest slide is 10 in.",
    );
    expect(messageOf(plan[3]![13])).toBe(
      "#VALUE! Opening C: opening width is 1 in. With 1/2 in for the slide on each side it must be more than 1 in.",
    );
    expect(messageOf(plan[4]![2])).toMatch(/^#VALUE! openings, row 5, Width is "wide", which is no length/);
  });

  const message = (row: unknown[], standards?: unknown[][]) => messageOf(PLAN(openings(row), standards)[1]![2]);

  test.each([
    [
      ["A", 18, 10, 20.5, "5; tall"],
      `openings, row 2, Drawers, item 2 is "tall". It can be a length, as 5 1/2, or parts of what is left, as 2 parts; a count stands alone.`,
    ],
    [
      ["A", 18, 10, 20.5, "30; 1 part"],
      "Opening A: drawers asks for fixed fronts that add up to 30 in. The face has room for 11 1/4 in.",
    ],
    [
      ["A", 18, 10, 20.5, 1000],
      `openings, row 2, Drawers is 1000. A lone whole number is a count of fronts, from 1 to 100; one front of a fixed height has its mark, as 3" or 80 mm.`,
    ],
    [
      ["A", 18, 10, 20.5, 0],
      "openings, row 2, Drawers is blank. It needs a count of drawers, or a list such as 5 1/2; 1 part; 2 parts.",
    ],
    [
      ["A", 18, 10, 20.5, 40],
      "Opening A: front 1 lies wholly before the carcase: there is no opening behind it for a box.",
    ],
    [["A", "", 10, 20.5, 1], "openings, row 2, Width is blank. It needs a length"],
    [["A", 46219, 10, 20.5, 1], "openings, row 2, Width is 46219, more than 30000 in"],
    [["A", -18, 10, 20.5, 1], "openings, row 2, Width is -18 in. It must be more than 0."],
    [["A", true, 10, 20.5, 1], "openings, row 2, Width is TRUE, which is no length."],
    [["A", "18; wide", 10, 20.5, 1], `openings, row 2, Width, item 2 is "wide", which is no length.`],
    [["A", 18, 2, 20.5, 3], "Opening A: behind front 1 there are "],
  ])("%j says why", (row, expected) => expect(message(row)).toContain(expected));

  test.each<[string, unknown[][], string]>([
    [
      "a reveal higher than the opening",
      [["top reveal", 14]],
      "#VALUE! Opening A: reveals and gaps leave no height for the fronts: it would be -1/2 in.",
    ],
    [
      "an inset gap of half the opening",
      [
        ["front style", "inset"],
        ["inset gap", 9],
      ],
      "#VALUE! Opening A: reveals and gaps leave no width for the fronts: it would be 0 in.",
    ],
    [
      "an edge band thicker than half a front",
      [["edge band", 8]],
      "#VALUE! Opening A: an edge band of 8 in all round leaves nothing of a front of 13 3/8 in.",
    ],
    [
      "an undermount deduction wider than opening and sides",
      [
        ["slide", "undermount"],
        ["undermount deduction", 19],
      ],
      "#VALUE! Opening A: opening width is 18 in. An undermount deduction of 19 in leaves no box.",
    ],
    [
      "a box shorter than any slide",
      [["box depth", 9]],
      "#N/A Opening A: No slide on sale is as short as the box is deep, 9 in.",
    ],
  ])("%s says why", (_, standards, expected) => {
    const opening = expected.includes("width for") ? ["A", 18, 20, 20.5, 1] : ["A", 18, 12, 20.5, 1];
    expect(message(opening, standards)).toBe(expected);
  });

  test("standards of a cabinet that disagree fail its openings, and name both", () => {
    const table = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Construction", "Quantity", "Cabinet"],
      ["A", 18, 10, 20.5, 1, "frameless", 1, "K1"],
      ["B", 18, 10, 20.5, 1, "face frame", 1, "K1"],
      ["C", 18, 10, 20.5, 1, "", 1, "K2"],
      ["D", 18, 10, 20.5, 1, "", 2, "K2"],
      ["E", 18, 10, 20.5, 1, "", 2, "K3"],
    ];
    const firsts = PLAN(table)
      .slice(1)
      .map((row) => row[2]);
    expect(messageOf(firsts[1])).toBe(
      "#VALUE! Opening B: A and B stand in one cabinet and differ in construction, which is the cabinet's.",
    );
    expect(messageOf(firsts[2])).toBe(
      "#VALUE! Opening C: C and D stand in one cabinet and differ in quantity, which is the cabinet's.",
    );
    expect(firsts[4]).toBe(19.375);
  });

  test("undermount slides without their deduction are refused", () => {
    expect(message(["A", 18, 10, 20.5, 1], [["slide", "undermount"]])).toBe(
      "#VALUE! Opening A: undermount slides need the undermount deduction of their data sheet.",
    );
  });
});

describe("PLAN(openings, standards): tables that cannot be read", () => {
  const rows = openings(["A", 18, 10, 20.5, 1]);
  test.each<[unknown, string]>([
    ["", "openings is blank. It needs a header row with Width, Height, Depth, Drawers."],
    [[[""], [null]], "openings is blank. It needs a header row with Width, Height, Depth, Drawers."],
    [
      [[18, 10, 20.5, 1]],
      "openings has no header row: its first row holds 18, 10, 20.5, 1. It needs Width, Height, Depth, Drawers.",
    ],
    [[["Width", "Height", "Depth", "Drawers"]], "openings has a header row and nothing below it."],
    [
      [
        ["Width", "Height", "Depth"],
        [18, 10, 20],
      ],
      "openings lacks the heading Drawers.",
    ],
    [
      [
        ["Width", "Height", "Depth", "Drawers", "width"],
        [18, 10, 20, 1, 18],
      ],
      "openings has the heading Width twice.",
    ],
    [
      [
        ["Width", "Hieght", "Depth", "Drawers"],
        [18, 10, 20, 1],
      ],
      `openings has the heading "Hieght". Is it Height? A column of your own needs a name less like it.`,
    ],
    [openings(["A", 18, 10, 20.5, 1], ["a", 18, 10, 20.5, 1]), `openings has two openings "a", in rows 2 and 3.`],
    [openings(["A", 18, 10, 20.5, "#N/A"]), "#N/A"],
    [openings(["A", 18, 10, "#REF!", 1]), "A cell that this formula reads holds the error #REF!."],
  ])("%j is refused", (table, message) => {
    expect(shown(() => PLAN(table as unknown[][]))).toBe(message === "#N/A" ? message : `#VALUE! ${message}`);
  });

  test("a ragged range is read as far as it goes", () => {
    expect(
      PLAN([
        ["Width", "Height", "Depth", "Drawers", "Space below"],
        [18, 10, 20.5, 1],
      ])[1]![5],
    ).toBe(17);
    expect(
      messageOf(
        PLAN([
          ["Width", "Height", "Depth", "Drawers"],
          [18, 10],
        ])[1]![2],
      ),
    ).toMatch(/^#VALUE! openings, row 2, Depth is blank/);
  });

  test.each<[unknown[][], string]>([
    [
      [["side thicknes", 0.5]],
      `standards, row 1 has the name "side thicknes", which is none. The nearest is "side thickness".`,
    ],
    [
      [
        ["Standard", "Value"],
        ["color", "red"],
      ],
      `standards, row 2 has the name "color", which is none.`,
    ],
    [
      [[0.5, "side thickness"]],
      `standards, row 1 has the name "side thickness" in its second column. Names stand first, values second.`,
    ],
    [
      [
        ["kerf", 0.1],
        ["Kerf", 0.1],
      ],
      `standards has "kerf" twice, in rows 1 and 2.`,
    ],
    [[["kerf", 0.1, "thin"]], "standards has 3 columns. It takes two, name and value."],
    [[["", 0.1]], "standards, row 1 has a value and no name."],
    [[["kerf", "thin"]], `standards, kerf is "thin", which is no length.`],
    [[["kerf", -1]], "standards, kerf is -1 in. It must be 0 or more."],
    [[["bottom fit", "glued"]], `standards, bottom fit is "glued". It can be "grooved", "under back", "applied".`],
    [[["unit", "cm"]], `standards, unit is "cm". It can be "in", "mm".`],
    [[["pulls per front", 3]], "standards, pulls per front is 3. It must be a whole number from 0 to 2."],
  ])("the standards %j are refused", (standards, message) => {
    expect(shown(() => PLAN(rows, standards))).toContain(`#VALUE! ${message}`);
  });
});
