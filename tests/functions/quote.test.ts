import { describe, expect, test } from "vitest";
import { HARDWARE, PARTS, PRICE, QUOTE, SHEETS } from "../../src/functions";
import { expectValueError, shown } from "../cell";
import { PARTS_BENCH } from "../worked/plans";
import { amountOf, FREE, lines, ONE_DRAWER, ownAmounts, rates, sheetsAt, sum, totalOf } from "./money";
import { column } from "./tables";

/** An invented job, twice over: two drawers in a potter's glaze cabinet. */
const CABINET = [
  ["Opening", "Width", "Height", "Depth", "Drawers", "Quantity"],
  ["K", 18, 12, "23 1/4", 2, 2],
];
const STANDARDS = [
  ["front material", "Cherry"],
  ["edge band", "1/32"],
];
const STOCK = [
  ["Material", "Thickness", "Length", "Width", "Price", "Sold by", "Waste"],
  ["Plywood", "1/4", 96, 48, 32, "", ""],
  ["Plywood", "1/2", 96, 48, 58, "", ""],
  ["Cherry", "", "", "", 9.6, "board foot", 15],
];
const RATES = {
  "labor rate": 65,
  "box minutes": 45,
  "front minutes": 20,
  "fitting minutes": 25,
  "slide price": 18.4,
  "pull price": 6.25,
  "screw price": 0.06,
  "edge band price": 0.8,
  "box finish price": 0.85,
  "front finish price": 1.9,
  overhead: 12,
  markup: 30,
  tax: 7,
  "extra delivery": 60,
  "Extra: loyal client": -10,
};
const quote = (more: Record<string, unknown> = {}, stock = STOCK) =>
  QUOTE(CABINET, STANDARDS, stock, rates({ ...RATES, ...more }));
const simple = (more: Record<string, unknown>, stock = sheetsAt(40), standards: unknown[][] = []) =>
  QUOTE(ONE_DRAWER, standards, stock, rates({ ...FREE, ...more }));

describe("QUOTE(openings, standards, stock, rates)", () => {
  // Worked by hand. Boxes 17 × 5 1/8 × 22, fronts cut 6 9/16 × 19 5/16; four drawers in all.
  test("goes from materials and labor to the total, section by section", () => {
    expect(quote()).toEqual([
      ["Section", "Item", "Qty", "Unit", "Rate", "Amount"],
      ["Sheets", "Plywood, 1/4 in, 96 × 48 in", 1, "sheet", 32, 32],
      ["Sheets", "Plywood, 1/2 in, 96 × 48 in", 1, "sheet", 58, 58],
      ["Sheets", "Subtotal", "", "", "", 90],
      // 4 × 6 9/16 × 19 5/16 × 3/4 / 144, and 15 % waste.
      ["Solid stock", "Cherry", 3.03643798828125, "board foot", 9.6, 29.15],
      ["Solid stock", "Subtotal", "", "", "", 29.15],
      ["Hardware", "Side-mount slide, 22 in", 4, "pair", 18.4, 73.6],
      ["Hardware", "Pull", 4, "each", 6.25, 25],
      // 4 × 2 × (6 5/8 + 19 3/8) is 17 1/3 feet, up to the next tenth as in HARDWARE.
      ["Hardware", "Edge band, 1/32 in", 17.4, "foot", 0.8, 13.92],
      ["Hardware", "Screws and nails", 96, "each", 0.06, 5.76],
      ["Hardware", "Glue (no rate of its own)", 6.9, "foot", "", ""],
      ["Hardware", "Subtotal", "", "", "", 118.28],
      // (8 × 22 × 5 1/8 + 8 × 16 × 5 1/8 + 4 × 16 7/16 × 21 7/16) / 144
      ["Finish", "Boxes", expect.closeTo(20.6077473958, 9), "square foot", 0.85, 17.52],
      ["Finish", "Fronts", 3.5205078125, "square foot", 1.9, 6.69],
      ["Finish", "Subtotal", "", "", "", 24.21],
      ["Labor", "Boxes", 3, "hour", 65, 195],
      ["Labor", "Fronts", 4 / 3, "hour", 65, 86.67],
      ["Labor", "Fitting", 5 / 3, "hour", 65, 108.33],
      ["Labor", "Subtotal", "", "", "", 390],
      ["Overhead", "On materials and labor", 12, "%", 651.64, 78.2],
      ["Markup", "On cost", 30, "%", 729.84, 218.95],
      ["Extras", "Delivery", 1, "", 60, 60],
      ["Extras", "Loyal client", 1, "", -10, -10],
      ["Extras", "Subtotal", "", "", "", 50],
      ["Price", "Before tax", "", "", "", 998.79],
      ["Tax", "On price", 7, "%", 998.79, 69.92],
      ["Total", "", "", "", "", 1068.71],
    ]);
  });

  test("adds up to its total, and is what PRICE gives", () => {
    expect(sum(ownAmounts(quote()))).toBe(1068.71);
    expect(PRICE(CABINET, STANDARDS, STOCK, rates(RATES))).toBe(1068.71);
  });

  test("a margin is of the price, and stands beside the price that it is of", () => {
    expect(simple({ margin: 40 }).slice(-3)).toEqual([
      ["Margin", "Of price", 40, "%", 66.67, 26.67],
      ["Price", "Before tax", "", "", "", 66.67],
      ["Total", "", "", "", "", 66.67],
    ]);
  });

  test("an offcut without a price is free beside sheets that have one, of whatever material", () => {
    const stock = [
      ["Material", "Length", "Width", "Price", "Available"],
      ["Plywood", 96, 48, 40, ""],
      ["Hardboard", 30, 24, "", 1],
    ];
    expect(lines(simple({}, stock, [["bottom material", "Hardboard"]]), "Sheets")).toEqual([
      ["Plywood, 96 × 48 in", 1, "sheet", 40, 40],
      ["Hardboard, 30 × 24 in", 1, "sheet", 0, 0],
    ]);
  });

  test("stock that names no material is named by that of its parts", () => {
    const boards = [
      ["Price", "Sold by"],
      [10, "board foot"],
    ];
    expect(lines(simple({}, boards), "Solid stock")[0]![0]).toBe("Plywood");
    const item = (standards: unknown[][]) => lines(simple({}, sheetsAt(40), standards), "Sheets")[0]![0];
    expect(item([])).toBe("Plywood, 96 × 48 in");
    expect(item([["front material", "Oak"]])).toBe("Plywood, Oak, 96 × 48 in");
  });

  test.each(["board feet", "board ft", "bd ft", "BF"])("%s is the board foot", (soldBy) => {
    const boards = [
      ["Price", "Sold by"],
      [10, soldBy],
    ];
    expect(lines(simple({}, boards), "Solid stock")[0]![2]).toBe("board foot");
  });

  test("a bracket behind a price or a rate is a remark, for money has no length", () => {
    const remarked = [
      ["Length", "Width", "Price (EUR)"],
      [96, 48, 40],
    ];
    const plain = simple({ "labor rate": 60, "box minutes": 30, markup: 10 });
    expect(simple({ "labor rate (an hour)": 60, "box minutes (each)": 30, "markup (%)": 10 }, remarked)).toEqual(plain);
  });

  test.each([
    ["Rates", "Value"],
    ["rate", "Price"],
    ["Name", "Amount"],
  ])("titles over the rates may read %s and %s", (name, value) => {
    const table = rates({ ...FREE, markup: 10 });
    expect(QUOTE(ONE_DRAWER, [], sheetsAt(40), [[name, value], ...table])).toEqual(simple({ markup: 10 }));
  });

  test.each([
    [".5", 0.5],
    [",5", 0.5],
    ["12,50", 12.5],
    ["1.234", 1.23],
  ])("a price typed as the text %s is %f", (typed, read) => {
    expect(
      lines(simple({ "pull price": typed }), "Hardware")
        .find(([item]) => item === "Pull")!
        .at(-1),
    ).toBe(read);
  });

  test("a markup of 0 beside a margin says nothing, and the other way round", () => {
    expect(simple({ markup: 0, margin: 40 })).toEqual(simple({ margin: 40 }));
    expect(simple({ markup: 50, margin: 0 })).toEqual(simple({ markup: 50 }));
    expect(lines(simple({ markup: "none" }), "Markup")).toEqual([["On cost", 0, "%", 40, 0]]);
  });

  test("the sheets are those that SHEETS shows of the same cut list", () => {
    const stock = [
      ["Thickness", "Length", "Width", "Price"],
      ["1/4", 96, 48, 32],
      ["1/2", 96, 48, 58],
      ["3/4", 96, 48, 84],
      ["3/4", 60, 60, 66],
    ];
    const { openings, standards } = PARTS_BENCH;
    const shown = SHEETS(PARTS(openings, standards), stock, "1/8", 0, "quick" as never).slice(1);
    const own = QUOTE(openings, standards, stock, rates({ ...FREE }));
    expect(lines(own, "Sheets").map(([, quantity, , , amount]) => [quantity, amount])).toEqual(
      shown.map((row) => [row[3], row[7]]),
    );
    expect(shown.length).toBeGreaterThanOrEqual(3);
  });

  test("the hardware is what HARDWARE lists: its slides, pulls, screws and edge band", () => {
    const listed = HARDWARE(CABINET, STANDARDS);
    const quantity = (item: RegExp): number =>
      sum(listed.filter(([name]) => item.test(String(name))).map((row) => row[2]));
    const own = lines(quote(), "Hardware");
    expect(own.map(([, of]) => of)).toEqual(
      [/slide$/, /^Pull$/, /band/, /screw|nail/, /Glue/].map((item) => quantity(item)),
    );
    expect(own.map(([, , unit]) => unit)).toEqual(["pair", "each", "foot", "each", "foot"]);
  });

  test("what no rate is for stands there with its quantity and no amount", () => {
    const framed = QUOTE(
      [
        [...ONE_DRAWER[0]!, "Case width"],
        [...ONE_DRAWER[1]!, 20],
      ],
      [["construction", "face frame"]],
      sheetsAt(40),
      rates(FREE),
    );
    expect(lines(framed, "Hardware").slice(-2)).toEqual([
      ["Blocking, 1 in (no rate of its own)", 2, "each", "", ""],
      ["Glue (no rate of its own)", expect.any(Number), "foot", "", ""],
    ]);
    expect(totalOf(framed)).toBe(40);
  });

  test("shop-made pulls cost their stock and no pull price; a center-mount slide costs a slide price, wood runners none", () => {
    const { "pull price": _, ...noPull } = FREE;
    const made = QUOTE(ONE_DRAWER, [["pull kind", "shop-made"]], sheetsAt(40), rates(noPull));
    expect(column(made, "Item")).not.toContain("Pull");
    const center = simple({ "slide price": 9 }, sheetsAt(40), [["slide", "center-mount"]]);
    expect(lines(center, "Hardware")[0]).toEqual(["Center-mount slide, 22 in", 1, "each", 9, 9]);
    const runners = simple({ "slide price": 9 }, sheetsAt(40), [["slide", "wood runner"]]);
    expect(lines(runners, "Hardware").map(([item]) => item)).not.toContainEqual(expect.stringMatching(/slide|runner/i));
  });

  test("a job without screws has no line of them, and needs no price for them", () => {
    const none = [
      ["corner joint", "dovetail"],
      ...["slide screws", "front screws", "pulls per front"].map((name) => [name, "none"]),
    ];
    const job = (standards: unknown[][]) =>
      QUOTE(ONE_DRAWER, standards, sheetsAt(40), rates({ "slide price": 18.4, "pull price": 6 }));
    expect(lines(job(none), "Hardware").map(([item]) => item)).not.toContain("Screws and nails");
    expect(() => job(none.slice(0, 2))).toThrow(/screw price/);
  });

  test("used charges the part of a sheet that becomes pieces, whole the sheets", () => {
    const used = lines(simple({ "charge sheets": "used" }, sheetsAt(46.08)), "Sheets")[0]!;
    const area = PARTS(ONE_DRAWER)
      .slice(1)
      .reduce((sum, row) => sum + (row[2] as number) * (row[3] as number) * (row[4] as number), 0);
    expect(used[1]).toBeCloseTo(area / (96 * 48), 12);
    // 46.08 for 4608 square inches is a cent each.
    expect(used[4]).toBe(Math.round(area) / 100);
    expect(lines(simple({ "charge sheets": "whole" }, sheetsAt(46.08)), "Sheets")[0]!.slice(1)).toEqual([
      1,
      "sheet",
      46.08,
      46.08,
    ]);
  });

  test("tax is on the price with its extras, on materials at cost, or on nothing", () => {
    const more = { tax: 10, markup: 50, "labor rate": 60, "box minutes": 30, "extra delivery": 15 };
    const tax = (on: string) => lines(simple({ ...more, "tax on": on }), "Tax")[0];
    // Sheet 40, labor 30, markup 35, delivery 15.
    expect(tax("all")).toEqual(["On price", 10, "%", 120, 12]);
    expect(tax("materials")).toEqual(["On materials at cost", 10, "%", 40, 4]);
    expect(tax("none")).toBeUndefined();
  });

  test.each([
    ["none", 41, 3, 44],
    [2, 40.5, 2.84, 43.34],
    [3, 40.5, 2.835, 43.335],
    [4, 40.5, 2.835, 43.335],
  ])("currencies with %s decimals: every amount has as many", (decimals, price, tax, total) => {
    const own = simple({ "currency decimals": decimals, tax: 7 }, sheetsAt(40.5));
    expect([amountOf(own, "Price"), amountOf(own, "Tax"), totalOf(own)]).toEqual([price, tax, total]);
  });

  test("what costs nothing stands there with 0; finish, labor, overhead and tax that are not given do not", () => {
    expect(simple({}).map(([section]) => section)).toEqual([
      "Section",
      ...["Sheets", "Sheets"],
      ...["Hardware", "Hardware", "Hardware", "Hardware", "Hardware"],
      "Price",
      "Total",
    ]);
    expect(lines(simple({}), "Hardware")[0]).toEqual(["Side-mount slide, 22 in", 1, "pair", 0, 0]);
  });

  test("wood runners are waxed, and take no finish: boxes and fronts are finished as with any slide", () => {
    const finish = { "box finish price": 1, "front finish price": 1 };
    const areas = (runner: string) =>
      lines(
        simple(finish, sheetsAt(40), [
          ["slide", "wood runner"],
          ["box depth", 20],
          ["runner", runner],
        ]),
        "Finish",
      ).map((row) => row[1]);
    const [boxes, fronts] = areas("under");
    // Behind 18 × 8 the front is 19 3/8 × 9 3/8, and the box 17 7/8 × 7 1/4 × 20.
    expect(fronts).toBe((19.375 * 9.375) / 144);
    expect(boxes).toBeCloseTo((2 * 7.25 * (20 + 16.875) + 17.3125 * 19.4375) / 144, 9);
    expect(areas("side groove")).toEqual([boxes, fronts]);
  });

  test("metric jobs: meters of edge band, square meters of finish, cubic meters of wood", () => {
    const own = QUOTE(
      [
        ["Width", "Height", "Depth", "Drawers"],
        [450, 300, 600, 2],
      ],
      [
        ["unit", "mm"],
        ["edge band", 1],
        ["front material", "Oak"],
      ],
      [
        ["Material", "Length", "Width", "Price", "Sold by", "Waste"],
        ["Plywood", 2440, 1220, 50, "sheet", ""],
        ["Oak", "", "", 1200, "cubic meter", 20],
      ],
      rates({ ...FREE, "edge band price": 1, "front finish price": 10 }),
    );
    expect(lines(own, "Sheets")[0]![0]).toBe("Plywood, 2440 × 1220 mm");
    const fronts = PARTS(
      [
        ["Width", "Height", "Depth", "Drawers"],
        [450, 300, 600, 2],
      ],
      [
        ["unit", "mm"],
        ["edge band", 1],
      ],
    ).filter(([part]) => part === "Front");
    const square = fronts.reduce((sum, row) => sum + (row[2] as number) * (row[3] as number) * (row[4] as number), 0);
    expect(lines(own, "Finish")[0]!.slice(1, 3)).toEqual([expect.closeTo(square / 1e6, 12), "square meter"]);
    expect(lines(own, "Solid stock")[0]!.slice(1, 3)).toEqual([
      expect.closeTo((square * 19 * 1.2) / 1e9, 12),
      "cubic meter",
    ]);
    expect(
      lines(own, "Hardware")
        .find(([item]) => String(item).startsWith("Edge band"))!
        .slice(2, 3),
    ).toEqual(["meter"]);
  });

  test("names are read in either spelling, under a row of titles, and blank values are left out", () => {
    const own = QUOTE(ONE_DRAWER, [], sheetsAt(40), [
      ["Rate", "Value"],
      ...rates({ ...FREE, "Labor rate": 60, "Box minutes": 30, "Front minutes": "", "extra trip": "" }),
    ]);
    expect(lines(own, "Labor")).toEqual([["Boxes", 0.5, "hour", 60, 30]]);
    expect(lines(own, "Extras")).toEqual([]);
  });

  test("no openings under a header row cost nothing, whatever the rates", () => {
    const none = QUOTE([CABINET[0]!, ["", "", "", "", "", ""]], [], STOCK, rates(RATES));
    expect(none.slice(1)).toEqual([["Total", "", "", "", "", 0]]);
  });

  test("an offcut without a price is free beside sheets that have one", () => {
    const stock = [
      ["Length", "Width", "Price", "Available"],
      [96, 48, 40, ""],
      [48, 48, "", 1],
    ];
    expect(totalOf(simple({}, stock))).toBe(0);
  });
});

describe("QUOTE names what is missing or wrong", () => {
  const without = (name: string) => {
    const { [name]: _, ...rest } = RATES as Record<string, unknown>;
    return () => QUOTE(CABINET, STANDARDS, STOCK, rates(rest));
  };

  test.each(["slide price", "pull price", "screw price", "edge band price", "labor rate"])(
    "no %s where the job needs one",
    (name) =>
      expectValueError(
        without(name),
        `rates lacks "${name}", which this job needs, or has it as 0, which an empty cell also gives. Give it, or write none where nothing is charged.`,
      ),
  );

  const stockRow = (row: Record<string, unknown>) => [Object.keys(row), Object.values(row)];
  test.each<[string, () => unknown, string]>([
    [
      "sheets without a price",
      () => simple({}, sheetsAt("")),
      'stock, row 2 has no price, which a quote needs. Give it one, or the word "none" where it costs nothing (a 0 counts as blank).',
    ],
    [
      "boards without a price",
      () => simple({}, stockRow({ "Sold by": "board foot" })),
      'stock, row 2 has no price, which a quote needs. Give it one, or the word "none" where it costs nothing (a 0 counts as blank).',
    ],
    [
      "waste of sheets",
      () => simple({}, stockRow({ Length: 96, Width: 48, Price: 40, Waste: 10 })),
      "stock, row 2, Waste says nothing of stock sold by the sheet. Leave it blank, or change Sold by.",
    ],
    [
      "a count of boards",
      () => simple({}, stockRow({ "Sold by": "board foot", Price: 9, Available: 4 })),
      "stock, row 2, Available says nothing of stock sold by the board foot. Leave it blank, or change Sold by.",
    ],
    [
      "a part that is found in sheets and in boards",
      () =>
        simple({}, [
          ["Length", "Width", "Price", "Sold by"],
          [96, 48, 40, ""],
          ["", "", 9, "board feet"],
        ]),
      "Side finds both rows 2 and 3 of stock, not all of them sheets. Tell them apart by Material or Thickness.",
    ],
    [
      "an offcut without a price where nothing has one",
      () =>
        simple({}, [
          ["Length", "Width", "Price", "Available"],
          [96, 48, "", 1],
        ]),
      'stock, row 2 has no price, which a quote needs. Give it one, or the word "none" where it costs nothing (a 0 counts as blank).',
    ],
    [
      "sheets without a price, the only ones of their material, beside others",
      () =>
        simple(
          {},
          [
            ["Material", "Length", "Width", "Price"],
            ["Plywood", 96, 48, 40],
            ["Hardboard", 96, 48, ""],
          ],
          [["bottom material", "Hardboard"]],
        ),
      'stock, row 3 has no price, which a quote needs. Give it one, or the word "none" where it costs nothing (a 0 counts as blank).',
    ],
    [
      "markup and margin",
      () => simple({ markup: 10, margin: 10 }),
      'rates has both "markup" and "margin". Give one: on the cost, or of the price.',
    ],
    ["a margin of everything", () => simple({ margin: 100 }), "rates, margin is 100. It must be less than 100 %."],
    ["a negative markup", () => simple({ markup: -5 }), "rates, markup is -5. It must be 0 or more."],
    [
      "a price beyond all reason",
      () => simple({ "pull price": 2e9 }),
      "rates, pull price is 2000000000. It must be from 0 to 1000000000.",
    ],
    ["a negative price", () => simple({ "pull price": -1 }), "rates, pull price is -1. It must be 0 or more."],
    [
      "a price that is a word",
      () => simple({ "pull price": "cheap" }),
      'rates, pull price is "cheap". It must be a plain number, such as 12.5.',
    ],
    [
      "a currency with half a decimal",
      () => simple({ "currency decimals": 1.5 }),
      "rates, currency decimals is 1.5. It must be a whole number from 0 to 4.",
    ],
    [
      "a charge that is none",
      () => simple({ "charge sheets": "half" }),
      'rates, charge sheets is "half". It can be "whole", "used".',
    ],
    [
      "a labor rate without minutes",
      () => simple({ "labor rate": 60 }),
      'rates has a "labor rate" and no minutes. Give "box minutes", "front minutes" or "fitting minutes", a drawer.',
    ],
    [
      "a misspelled name",
      () => simple({ overhed: 5 }),
      'rates, row 4 has the name "overhed", which is none. The nearest is "overhead". A charge of your own begins with "extra".',
    ],
    [
      "one extra twice",
      () => simple({ "extra delivery": 5, "Extra: Delivery": 6 }),
      'rates has "extra delivery" twice, in rows 4 and 5.',
    ],
    [
      "a discount beyond the price",
      () => simple({ "extra discount": -40.01 }),
      "rates: the extras take the price to -0.01, below 0.",
    ],
  ])("%s", (_, call, message) => expectValueError(call, message));

  test("a percentage between 0 and 1 may be either and is refused; with its sign it is clear", () => {
    expectValueError(
      () => simple({ tax: 0.07 }),
      "rates, tax is 0.07: is that 0.07 % or 7 %? Write a plain number, such as 7, or a text with its sign, such as '0.5 %. (A cell formatted as a percentage holds 0.07 for 7 %.)",
    );
    const tax = (value: unknown) => amountOf(simple({ tax: value }), "Tax");
    expect(["7 %", "7%", "7", 7, { type: "Double", basicValue: 0.07, numberFormat: "0%" }].map(tax)).toEqual(
      Array.from({ length: 5 }, () => 2.8),
    );
    expect([tax("0.5 %"), tax("0,5%"), tax("none")]).toEqual([0.2, 0.2, 0]);
  });

  test("faults come from left to right: openings, stock, rates, then what cannot be built or bought", () => {
    const bad = (width: unknown, price: unknown, tax: unknown) =>
      shown(() => QUOTE([ONE_DRAWER[0]!, [width, 8, 23.25, 1]], [], sheetsAt(price), rates({ tax })));
    expect(bad("wide", "dear", "much")).toMatch(/^#VALUE! openings, row 2, Width is "wide"/);
    expect(bad(18, "dear", "much")).toMatch(/^#VALUE! stock, row 2, Price is "dear"/);
    expect(bad(0.5, 40, "much")).toMatch(/^#VALUE! rates, tax is "much"/);
    expect(bad(0.5, 40, 7)).toMatch(/^#VALUE! Opening A: opening width is 1\/2 in/);
    expect(bad(18, 40, 7)).toMatch(/^#VALUE! rates lacks "slide price"/);
    expect(bad(18, "#N/A", 7)).toBe("#N/A");
  });

  test("a part that fits no stock is #N/A, as in SHEETS", () => {
    const small = [
      ["Length", "Width", "Price"],
      [20, 10, 5],
    ];
    expect(shown(() => simple({}, small))).toMatch(/^#N\/A Side of A1, .* fits no sheet/);
  });
});
