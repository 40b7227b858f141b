import { describe, expect, test } from "vitest";
import { CUTS, LAYOUT, SHEETS } from "../../src/functions";
import { shown } from "../cell";

type Call = (...args: unknown[]) => unknown;
const SIDE = ["Side", 22, 8, 4];
const SHEET = [96, 48];

const parts = (...rows: unknown[][]): unknown[][] => [
  ["Part", "Length", "Width", "Qty", "Grain", "Thickness", "Material", "Grain group"],
  ...rows,
];
const stock = (...rows: unknown[][]): unknown[][] => [
  ["Length", "Width", "Price", "Available", "Material", "Thickness"],
  ...rows,
];

/** Each fault of a row or an argument, with its whole message. */
const FAULTS: [string, unknown[], string][] = [
  [
    "no stock of that material",
    [parts(SIDE, ["Top", 20, 10, 1, "", "", "Oak"]), stock([96, 48, "", "", "Birch"])],
    "#N/A parts, row 3 (Top) finds no stock of Oak.",
  ],
  [
    "no stock of that thickness: 1/16 in is too far off, 1/32 in is not",
    [parts(["Side", 22, 8, 4, "", "23/32"], ["Top", 20, 10, 1, "", "3/4"]), stock([96, 48, "", "", "", "11/16"])],
    "#N/A parts, row 3 (Top) finds no stock 3/4 in thick.",
  ],
  [
    "no stock of that material as thick",
    [parts(["Top", 20, 10, 1, "", "3/4", "Oak"]), stock([96, 48, "", "", "Oak", "1/2"])],
    "#N/A parts, row 2 (Top) finds no stock of Oak 3/4 in thick.",
  ],
  [
    "no stock of that thickness, in millimeters: 1 mm is too far off",
    [parts(["Top", 300, 200, 1, "", 18]), stock([2440, 1220, "", "", "", 19]), "", "", "", "mm"],
    "#N/A parts, row 2 (Top) finds no stock 18 mm thick.",
  ],
  [
    "a part whose grain may not turn, wider than the sheet",
    [parts(SIDE, ["Door", 20, 60, 1, "length"]), stock(SHEET)],
    "#N/A parts, row 3 (Door), 20 in × 60 in, fits no sheet of its stock, the way its grain allows.",
  ],
  [
    "a part whose grain lies across, longer than the sheet is wide",
    [parts(["Door", 60, 20, 1, "width"]), stock(SHEET)],
    "#N/A parts, row 2 (Door), 60 in × 20 in, fits no sheet of its stock, the way its grain allows.",
  ],
  [
    "a part that fits neither way",
    [parts(["Door", "96 1/8", 20, 1]), stock(SHEET)],
    "#N/A parts, row 2 (Door), 96 1/8 in × 20 in, fits no sheet of its stock.",
  ],
  [
    "a part that fits the sheet, but not once it is trimmed",
    [parts(["Door", 95, 20, 1]), stock(SHEET), "1/8", 1],
    "#N/A parts, row 2 (Door), 95 in × 20 in, fits no sheet of its stock once that is trimmed.",
  ],
  [
    "a grain group longer than the sheet",
    [parts(...[1, 2, 3].map((n) => [`F${n}`, 40, 20, 1, "length", "", "", "G"])), stock(SHEET)],
    '#N/A The parts of grain group "G" in one piece fit no sheet of their stock.',
  ],
  ["a negative kerf", [parts(SIDE), stock(SHEET), -0.125], "#VALUE! kerf is -1/8 in. It must be 0 or more."],
  ["a negative kerf as a text", [parts(SIDE), stock(SHEET), "-1/8"], "#VALUE! kerf is -1/8 in. It must be 0 or more."],
  [
    "a kerf that is no length",
    [parts(SIDE), stock(SHEET), "thin"],
    '#VALUE! kerf is "thin", which is no length. Write a number, or a text such as 23 7/16, 1\' 11 7/16" or 595 mm.',
  ],
  ["a negative trim", [parts(SIDE), stock(SHEET), "", -1], "#VALUE! trim is -1 in. It must be 0 or more."],
  ...(
    [
      [1.5, "1.5"],
      ["two", '"two"'],
      [-1, "-1"],
      ["0", '"0"'],
      [10_001, "10001"],
    ] as const
  ).map(([quantity, received]): [string, unknown[], string] => [
    `a quantity of ${quantity}`,
    [parts(SIDE, ["Top", 20, 10, quantity]), stock(SHEET)],
    `#VALUE! parts, row 3, Qty is ${received}. It must be a whole number from 1 to 10000.`,
  ]),
  [
    "a quantity that is blank, or 0, which is read as a blank",
    [parts(["Top", 20, 10, 0]), stock(SHEET)],
    "#VALUE! parts, row 2, Qty is blank. It needs a whole number from 1 to 10000.",
  ],
  [
    "a part without a length",
    [parts(["Top", "", 10, 1]), stock(SHEET)],
    "#VALUE! parts, row 2, Length is blank. It needs a length: a number, or a text such as 23 7/16, 1' 11 7/16\" or 595 mm.",
  ],
  [
    "a length that is none",
    [parts(["Top", "long", 10, 1]), stock(SHEET)],
    '#VALUE! parts, row 2, Length is "long", which is no length. Write a number, or a text such as 23 7/16, 1\' 11 7/16" or 595 mm.',
  ],
  [
    "a width of nothing",
    [parts(["Top", 20, "0 in", 1]), stock(SHEET)],
    "#VALUE! parts, row 2, Width is 0 in. It must be more than 0.",
  ],
  [
    "a grain that is none",
    [parts(["Top", 20, 10, 1, "wild"]), stock(SHEET)],
    '#VALUE! parts, row 2, Grain is "wild". It can be "any", "length", "width".',
  ],
  [
    "a price missing beside others",
    [parts(SIDE), stock([96, 48, 60], [48, 48, ""])],
    "#VALUE! stock, row 3 has no price, and others have. Give it one, or Available where it is an offcut of yours.",
  ],
  ["a negative price", [parts(SIDE), stock([96, 48, -5])], "#VALUE! stock, row 2, Price is -5. It must be 0 or more."],
  [
    "a price that is none",
    [parts(SIDE), stock([96, 48, "cheap"])],
    '#VALUE! stock, row 2, Price is "cheap". It must be a plain number, such as 12.5.',
  ],
  [
    "none available",
    [parts(SIDE), stock([96, 48, "", "none"])],
    "#N/A parts, row 2 (Side) fits only stock of which none is available.",
  ],
  [
    "too few available",
    [parts(["Side", 90, 40, 2]), stock([96, 48, "", 1])],
    "#N/A No way was found to cut all parts from the stock that is available.",
  ],
  [
    "an available number that is not whole",
    [parts(SIDE), stock([96, 48, "", 1.5])],
    "#VALUE! stock, row 2, Available is 1.5. It must be a whole number from 0 to 10000.",
  ],
  [
    "a sheet without a length",
    [parts(SIDE), stock(["", 48])],
    "#VALUE! stock, row 2, Length is blank. It needs a length: a number, or a text such as 23 7/16, 1' 11 7/16\" or 595 mm.",
  ],
  [
    "a sheet that is not as wide as anything",
    [parts(SIDE), stock([96, -48])],
    "#VALUE! stock, row 2, Width is -48 in. It must be more than 0.",
  ],
  [
    "a grain of stock that is none",
    [
      parts(SIDE),
      [
        ["Length", "Width", "Grain"],
        [96, 48, "width"],
      ],
    ],
    '#VALUE! stock, row 2, Grain is "width". It can be "length", "none".',
  ],
  [
    "no table of parts",
    [[[""]], stock(SHEET)],
    "#VALUE! parts is blank. It needs a header row with Length, Width, Qty.",
  ],
  ["parts without rows", [parts(), stock(SHEET)], "#VALUE! parts has a header row and nothing below it."],
  ["no table of stock", [parts(SIDE), [[""]]], "#VALUE! stock is blank. It needs a header row with Length, Width."],
  [
    "a heading of parts that is missing",
    [
      [
        ["Length", "Width"],
        [20, 10],
      ],
      stock(SHEET),
    ],
    "#VALUE! parts lacks the heading Qty.",
  ],
  [
    "a heading within two edits of one of ours",
    [
      [
        ["Lenght", "Width", "Qty"],
        [20, 10, 1],
      ],
      stock(SHEET),
    ],
    '#VALUE! parts has the heading "Lenght". Is it Length? A column of your own needs a name less like it.',
  ],
  [
    "a heading of stock that stands twice",
    [
      parts(SIDE),
      [
        ["Length", "Width", "length"],
        [96, 48, 96],
      ],
    ],
    "#VALUE! stock has the heading Length twice.",
  ],
  [
    "an effort that is none",
    [parts(SIDE), stock(SHEET), "", "", "mighty"],
    '#VALUE! effort is "mighty". It can be "standard", "quick", "thorough".',
  ],
  ["a unit that is none", [parts(SIDE), stock(SHEET), "", "", "", "cm"], '#VALUE! unit is "cm". It can be "in", "mm".'],
  [
    "sizes too fine to be counted together",
    [parts(["Side", "22.000000001", 8, 1]), stock([96, "48.0000001"])],
    "#VALUE! The sizes of parts and stock are too fine to be laid out together: round them to what a saw can cut.",
  ],
  ["an error that came in", [parts(["Side", "#N/A", 8, 1.5]), stock(SHEET), -1], "#N/A"],
  [
    "several faults: the first argument, and in it the first row",
    [parts(SIDE, ["Top", 20, 10, 1.5], ["Door", "long", 10, 1]), stock([96, "wide"]), -1],
    "#VALUE! parts, row 3, Qty is 1.5. It must be a whole number from 1 to 10000.",
  ],
];

describe.each<[string, Call]>([
  ["SHEETS", SHEETS as Call],
  ["LAYOUT", LAYOUT as Call],
  ["CUTS", CUTS as Call],
])("%s(parts, stock, kerf, trim, effort, unit) refuses", (_, call) => {
  test.each(FAULTS)("%s", (_case, args, message) => expect(shown(() => call(...args))).toBe(message));
});

describe("SHEETS(parts, stock, …) takes", () => {
  const sheets = (...args: unknown[]): unknown => (shown(() => (SHEETS as Call)(...args)) as unknown[][])[1]![3];

  test("a thickness 1/32 in off, and no farther", () => {
    const thick = (thickness: string) => [parts(["Side", 22, 8, 4, "", "3/4"]), stock([96, 48, "", "", "", thickness])];
    expect(sheets(...thick("23/32"))).toBe(1);
    expect(shown(() => (SHEETS as Call)(...thick("45/64")))).toBe(
      "#N/A parts, row 2 (Side) finds no stock 3/4 in thick.",
    );
  });

  test("a numeric 0 of Available as a blank: as many as needed", () =>
    expect(sheets(parts(["Side", 90, 40, 3]), stock([96, 48, "", 0]))).toBe(3));

  test("columns of one's own, blank rows, and a quantity typed as text", () => {
    const list = [
      ["Part", "Note", "Length", "Width", "Qty"],
      ["Side", "left", 22, 8, "2"],
      ["", "", "", "", ""],
    ];
    expect(
      sheets(list, [
        ["Supplier", "Length", "Width"],
        ["", "", ""],
        ["yard", 96, 48],
      ]),
    ).toBe(1);
  });
});
