import { describe, expect, test } from "vitest";
import { CHECKS, EMC, HARDWARE, MOVEMENT, OPENINGS, QUOTE, SAG, WORKING } from "../../src/functions";
import { expectValueError } from "../cell";
import { FREE, lines, rates, sheetsAt } from "./money";
import { column, openings } from "./tables";

/** One drawer of that inside: the sides take an inch, the slides another, the ends an inch of the box. */
const inside = (width: number, depth: number, more: Record<string, unknown> = {}): [unknown[][], unknown[][]] => [
  [
    ["Opening", "Width", "Height", "Depth", "Drawers", ...Object.keys(more)],
    ["A", width + 2, 12, depth + 1.5, 1, ...Object.values(more)],
  ],
  [["slide lengths", `${depth + 1}`]],
];
const found = (job: [unknown[][], unknown[][]], about: RegExp, standards: unknown[][] = []) =>
  CHECKS(job[0], [...job[1], ...standards])
    .slice(1)
    .filter(([, , finding]) => about.test(String(finding)));
const slides = ([table, standards]: [unknown[][], unknown[][]], more: unknown[][] = []) =>
  HARDWARE(table, [...standards, ...more]).filter(([item]) => /slide$/.test(String(item)));
const working = ([table, standards]: [unknown[][], unknown[][]], name: RegExp, more: unknown[][] = []) =>
  WORKING(table, "A1", [...standards, ...more]).find(([size]) => name.test(String(size)))!;

describe("what a drawer carries, and what its slides must", () => {
  test("is the even design rate over its inside, 15 lb/ft² (ANSI/KCMA A161.1, clause 7.1), and its own weight", () => {
    const job = inside(16, 20);
    expect(working(job, /^Load/).slice(0, 2)).toEqual(["Load, lb", 33.3333333333]);
    expect(working(job, /^Load/)[2]).toBe("inside 16 × 20, at an even 15 lb/ft² (an estimate)");
    // Sides 21 × 11, ends 16 × 11, all 1/2; bottom 16 7/16 × 20 7/16 × 1/4; front 13 3/8 × 19 3/8 × 3/4: plywood at 600 kg/m³.
    const volume = 2 * 21 * 11.25 * 0.5 + 2 * 16 * 11.25 * 0.5 + 16.4375 * 20.4375 * 0.25 + 13.375 * 19.375 * 0.75;
    const own = working(job, /own weight/);
    expect(own[1]).toBeCloseTo((volume * 0.0254 ** 3 * 600) / 0.45359237, 8);
    expect(working(job, /rating needed/)[1]).toBe(75);
  });

  test("a file drawer 13 × 27 inside on slides rated 45 is wrong: 2 lb an inch a row are 54 lb", () => {
    const rated = [["slide rating", 45]];
    const [finding] = found(inside(13, 27, { Load: "files" }), /slides carry/, rated);
    expect(finding![1]).toBe("wrong");
    expect(finding![2]).toMatch(
      /^The slides carry 45 lb; an estimated 54 lb and the drawer's own [\d.]+ make [\d.]+\.$/,
    );
    expect(finding![3]).toMatch(/^Take slides rated for 75 lb or more/);
    // The even rate alone is found as well: 36.6 lb and the drawer.
    expect(found(inside(13, 27), /slides carry/, rated).length).toBe(1);
    // Two rows stand side by side in 25.
    expect(working(inside(25, 27, { Load: "files" }), /^Load/).slice(1)).toEqual([
      108,
      "files: 2 rows of inside depth 27, at 2 lb an inch",
    ]);
  });

  test("a drawer 40 × 29 with nothing typed names the rating that it needs", () => {
    const [row] = slides(inside(40, 29));
    // 120.8 lb and the drawer.
    expect(row![4]).toBe("rated for 200 lb or more, box included (an estimate)");
    expect(found(inside(40, 29), /slides/)).toEqual([]);
  });

  test("a rating within a tenth of what is needed is doubtful, one that is more is not found", () => {
    const rated = (rating: number) => found(inside(16, 20, { Load: 60 }), /slides carry/, [["slide rating", rating]]);
    const total = 60 + (working(inside(16, 20), /own weight/)[1] as number);
    expect(rated(Math.floor(total)).map((row) => row[1])).toEqual(["wrong"]);
    expect(rated(Math.ceil(total)).map((row) => row[1])).toEqual(["doubtful"]);
    expect(rated(Math.ceil(total / 0.9) + 1)).toEqual([]);
  });

  test("more than slides are commonly sold for is doubtful where no rating is typed, and stands in the order", () => {
    const job = inside(16, 20, { Load: 300 });
    expect(found(job, /commonly sold/).map((row) => row[1])).toEqual(["doubtful"]);
    expect(slides(job)[0]![4]).toMatch(/^rated for 3\d\d lb or more/);
    expect(found(job, /commonly sold/, [["slide rating", 500]])).toEqual([]);
    expect(slides(job, [["slide rating", 500]])[0]![4]).toMatch(/^rated for 500 lb or more/);
  });

  test("slides are ordered by length and rating; in a quote by length alone, for they have one price", () => {
    const table = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Load"],
      ["A", 20, 30, 23.25, 3, "20; 20; 120"],
    ];
    expect(
      HARDWARE(table)
        .filter(([item]) => item === "Side-mount slide")
        .map((row) => row.slice(1)),
    ).toEqual([
      [22, 2, "pair", "rated for 75 lb or more, box included (an estimate)"],
      [22, 1, "pair", "rated for 150 lb or more, box included (an estimate)"],
    ]);
    const quote = QUOTE(table, [], sheetsAt(1), rates({ ...FREE, "slide price": 10 }));
    expect(
      lines(quote, "Hardware")
        .filter(([item]) => /slide/i.test(String(item)))
        .map((row) => row[1]),
    ).toEqual([3]);
  });

  test("loads are read from top to bottom, with their units, for all drawers or each", () => {
    const table = (load: unknown) => [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Load"],
      ["A", 20, 30, 23.25, 2, load],
    ];
    const load = (typed: unknown, drawer: string) =>
      WORKING(table(typed), drawer).find(([size]) => size === "Load, lb")![1] as number;
    expect([load("10; files", "A1"), load("10; files", "A2")]).toEqual([10, 42]);
    expect([load("10 kg", "A1"), load("none", "A2")]).toEqual([22.0462262185, 0]);
    expectValueError(
      () => HARDWARE(table("10; 20; 30")),
      "Opening A: load lists 3 loads for 2 drawers. Give one for all, or one a drawer.",
    );
    expectValueError(
      () => HARDWARE(table("10; heavy")),
      'openings, row 2, Load, item 2 is "heavy". It takes even, files or a weight, in lb or with its unit.',
    );
    expectValueError(() => HARDWARE(table(-5)), "openings, row 2, Load is -5. It must be from 0 to 10,000 lb.");
  });

  test("wood runners are made in the shop and have no rating", () => {
    const runners = [
      ["slide", "wood runner"],
      ["slide rating", 1],
    ];
    expect(found(inside(16, 20, { Load: 300 }), /slides carry/, runners)).toEqual([]);
    expect(working(inside(16, 20), /rating needed/, runners)).toBeUndefined();
  });

  test("the drawer's own weight follows the densities, by material or for all", () => {
    const own = (density: unknown, material = "Plywood") =>
      working(inside(16, 20), /own weight/, [
        ["density", density],
        ["side material", material],
        ["bottom material", material],
        ["front material", material],
      ])[1] as number;
    expect(own(40) / own(20)).toBeCloseTo(2, 9);
    expect(own("plywood 40; Maple 10")).toBe(own(40));
    expect(own("600 kg/m³")).toBeCloseTo(own("by material"), 6);
    expect(own("by material", "Steel")).toBeGreaterThan(10 * own("by material"));
  });
});

describe("how far bottoms sag", () => {
  test("is what SAG says of the load, held all round", () => {
    const sag = working(inside(16, 20), /sags/);
    expect(sag[1]).toBe(SAG(16, 20, 0.25, 100 / 3, "plywood"));
    expect(sag[2]).toBe(
      "bottom 1/4 thick, held in grooves all round, under the load (an estimate); 1/240 of the span 16 is 0.067",
    );
    expect(working(inside(16, 20), /sags/, [["stiffness", "MDF"]])[1]).toBe(SAG(16, 20, 0.25, 100 / 3, "MDF"));
  });

  test.each([
    ["under back", "held in grooves on three sides and screwed to the back, reckoned as held all round"],
    ["applied", "fastened all round"],
  ])("a bottom that is %s says how it is held", (fit, held) => {
    const [, , how] = working(inside(16, 20), /sags/, [["bottom fit", fit]]);
    expect(how).toBe(`bottom 1/4 thick, ${held}, under the load (an estimate); 1/240 of the span 16 is 0.067`);
  });

  test("more than the limit is doubtful, with the thickness that would do and what a muntin leaves", () => {
    const [finding] = found(inside(32, 21), /sags/);
    expect(finding![1]).toBe("doubtful");
    expect(finding![2]).toMatch(
      /^The bottom, 1\/4 in thick, sags by an estimated 0\.1\d* in under 70 lb, more than 1\/240 of its span, 21 in\.$/,
    );
    expect(finding![3]).toMatch(/^Take one 3\/8 in thick, or put a muntin under its middle, which leaves 0\.0\d+ in\./);
    expect(found(inside(32, 21), /sags/, [["bottom thickness", "3/8"]])).toEqual([]);
    expect(found(inside(32, 21), /sags/, [["sag limit", "1/60"]])).toEqual([]);
  });

  test("in millimeters the sag is told to a tenth", () => {
    // Sides of 12 and side spaces of 12.7, ends of 12, 12 behind the box; 73 kg/m² on 800 × 500.
    const table = openings(["A", 800 + 49.4, 300, 500 + 36, 1]);
    const [row] = CHECKS(table, [
      ["unit", "mm"],
      ["slide lengths", 524],
    ]).filter(([, , finding]) => /sags/.test(String(finding)));
    const by = SAG(800, 500, 6, 29.2, "plywood", undefined, "mm" as never).toFixed(1);
    expect(row![2]).toBe(
      `The bottom, 6 mm thick, sags by an estimated ${by} mm under 29.2 kg, more than 1/240 of its span, 500 mm.`,
    );
  });

  test("Baltic birch is plywood by another name", () => {
    const birch = working(inside(16, 20), /sags/, [["bottom material", "Baltic birch"]]);
    expect(birch).toEqual(working(inside(16, 20), /sags/));
    expect(working(inside(16, 20), /sags/, [["bottom material", "Steel"]])).toBeUndefined();
  });

  test("a bottom that would break is wrong, and one whose stiffness nobody knows is not judged", () => {
    expect(found(inside(40, 28, { Load: 9000 }), /would break/, [["bottom thickness", "1/8"]])[0]![1]).toBe("wrong");
    expect(found(inside(40, 28), /sags/, [["bottom material", "Glass"]])).toEqual([]);
    expect(
      found(inside(40, 28), /sags/, [
        ["bottom material", "Glass"],
        ["stiffness", 2_000_000],
      ]).length,
    ).toBe(1);
  });

  test("a share of the span is read as the trade writes it", () => {
    expectValueError(
      () => HARDWARE(openings(["A", 20, 12, 23.25, 1]), [["sag limit", "a hair"]]),
      'standards, sag limit is "a hair". It takes a share of the span from 1/2000 to 1/20, such as 1/240.',
    );
    expect(found(inside(32, 21), /sags/, [["sag limit", 60]])).toEqual(
      found(inside(32, 21), /sags/, [["sag limit", "1/60"]]),
    );
  });
});

describe("how solid wood moves with the seasons", () => {
  const cherry = (width: number, standards: unknown[][], height = 12) =>
    CHECKS(openings(["A", width, height, 21.5, 1]), [["front material", "Cherry"], ...standards])
      .slice(1)
      .filter(([, , finding]) => /swells|moves|solid/.test(String(finding)));
  const inset = [
    ["front style", "inset"],
    ["inset gap", "1/32"],
  ];

  test("an inset front that swells by more than the gaps round it is doubtful, by how much is told", () => {
    // Black cherry, flat: 0.00248 a percent (Wood Handbook, Table 13-5); 45 to 60 % humidity at 70 °F: 8.5 to 10.9 %.
    const [finding] = cherry(18, inset, 20).filter(([, , words]) => /swells/.test(String(words)));
    expect(finding!.slice(0, 2)).toEqual(["A1", "doubtful"]);
    const [from, to] = [EMC(70, 45), EMC(70, 60)];
    const by = MOVEMENT(18 - 1 / 16, "cherry", from, to).toFixed(3);
    expect(finding![2]).toBe(
      `The front of Cherry, black, 17 15/16 in across its grain, swells by an estimated ${Number(by)} in as the air goes from 45 to 60 % humidity, and has 1/16 in of room.`,
    );
    expect(cherry(18, [["front style", "inset"]], 20).filter(([, , words]) => /swells/.test(String(words)))).toEqual(
      [],
    );
  });

  test("the species counts where the material does not name it, and sheets do not move", () => {
    const swells = (standards: unknown[][]) =>
      cherry(
        18,
        [...inset, ...standards].filter(([name]) => name !== "front material"),
        20,
      ).some(([, , words]) => /swells/.test(String(words)));
    const of = (material: string, species?: string) =>
      CHECKS(openings(["A", 18, 20, 21.5, 1]), [
        ...inset,
        ["front material", material],
        ...(species ? [["species", species]] : []),
      ]).some(([, , words]) => /swells/.test(String(words)));
    expect(swells([])).toBe(true);
    expect([of("Shop stock"), of("Shop stock", "beech"), of("Birch plywood", "beech")]).toEqual([false, true, false]);
  });

  test("what moves little stays in its gaps: the same front in steady air, or its grain along the gap", () => {
    const swells = (standards: unknown[][], height = 20) =>
      cherry(18, [...inset, ...standards], height).some(([, , words]) => /swells/.test(String(words)));
    expect(
      swells([
        ["humidity low", 44],
        ["humidity high", 46],
      ]),
    ).toBe(false);
    expect(swells([["front grain", "horizontal"]], 5)).toBe(false);
  });

  test("a solid bottom's movement stands in its finding", () => {
    const bottom = (fit: string) =>
      CHECKS(openings(["A", 18, 12, 21.5, 1]), [
        ["bottom material", "Cherry"],
        ["bottom fit", fit],
      ]).find(([, , words]) => /bottom is of Cherry/.test(String(words)))![2];
    const by = MOVEMENT(19.4375, "cherry", EMC(70, 30), EMC(70, 60));
    expect(bottom("grooved")).toContain(
      `it cannot move with the seasons, by an estimated ${Number(by.toFixed(3))} in between 30 and 60 % humidity.`,
    );
    expect(bottom("under back")).toMatch(
      /reads as solid wood\. It moves by an estimated 0\.2\d* in between 30 and 60 % humidity\.$/,
    );
    // An applied one is as deep as its box.
    const applied = MOVEMENT(20, "cherry", EMC(70, 30), EMC(70, 60));
    expect(bottom("applied")).toContain(
      `is held all round (applied): it cannot move with the seasons, by an estimated ${Number(applied.toFixed(3))} in`,
    );
  });

  test.each([
    ["humidity high", 120, "standards, humidity high is 120. It must be from 0 to 100."],
    [
      "species",
      "chery",
      'standards, species is "chery", a wood without a published coefficient here. The nearest: "Cherry, black".',
    ],
    ["temperature", "500 C", "standards, temperature is 500 °C. It must be from -1.1 to 132.2 °C."],
    [
      "cabinet weight",
      "heavy",
      'standards, cabinet weight is "heavy". It takes a number, which is in lb, or a text of a number and its unit.',
    ],
    [
      "density",
      "feathers",
      'standards, density, item 1 is "feathers". It takes a number, which is in lb/ft³, or a text of a number and its unit.',
    ],
    ["load rate", 4000, "standards, load rate is 4000. It must be from 1 to 200 lb/ft²."],
  ])("%s %s is refused in words", (name, value, message) =>
    expectValueError(() => HARDWARE(openings(["A", 18, 12, 21.5, 1]), [[name, value]]), message),
  );
});

describe("whether the cabinet stands", () => {
  const bench = openings(["A", 18, 26, 23.25, 3]);
  const balance = (standards: unknown[][], table = bench) =>
    CHECKS(table, standards)
      .slice(1)
      .filter(([, , finding]) => /tips/.test(String(finding)));

  test("is not judged where its weight is not told", () => expect(balance([])).toEqual([]));

  test("one drawer out that tips it is wrong, with the pull on the anchor that is missing", () => {
    const standards = [
      ["cabinet weight", 20],
      ["load", 80],
      ["balance depth", 10],
    ];
    const [finding] = balance(standards);
    expect(finding!.slice(0, 2)).toEqual(["A", "wrong"]);
    // The law of the lever: slides of 22 put boxes of 22 out by 11, shut they hold 11 behind the front.
    const own = ["A1", "A2", "A3"].map(
      (drawer) => WORKING(bench, drawer, standards).find(([size]) => /own weight/.test(String(size)))![1] as number,
    );
    const ratios = own.map((_, out) => {
      const holds = 20 * 10 + own.reduce((sum, weight, i) => sum + (i === out ? 0 : weight * 11), 0);
      return { holds, tips: (80 + own[out]!) * 11 };
    });
    const { holds, tips } = ratios.reduce((a, b) => (b.holds / b.tips < a.holds / a.tips ? b : a));
    expect(finding![2]).toContain(`what holds it is ${Number((holds / tips).toFixed(2))} of what tips it`);
    expect(finding![3]).toContain(`for a pull of ${Math.ceil((tips - holds) / 27.5)} lb`);
  });

  const heavy = (more: unknown[][] = []) => [["cabinet weight", 20], ["load", 80], ["balance depth", 10], ...more];
  const row = (size: string, standards: unknown[][], table: unknown[][] = bench) =>
    WORKING(table, "A1", standards).find(([name]) => name === size);

  test("drawers on slides so short that their weight stays behind the front cannot tip it", () => {
    const on = (slide: number) =>
      heavy([
        ["box depth", 20],
        ["slide lengths", slide],
      ]);
    // Boxes of 20 have their weight at 10: on slides of 8 it comes out to 2 behind the front, on slides of 18 to 8 before it.
    expect([balance(on(8)), row("Balance, this drawer out", on(8)), row("Balance, all drawers out", on(8))]).toEqual([
      [],
      undefined,
      undefined,
    ]);
    expect(balance(on(18))).toHaveLength(1);
    expect(row("Balance, all drawers out", on(18))).toBeDefined();
  });

  test("WORKING shows the sum for one drawer out and for all, and CHECKS goes by the least of them", () => {
    const own = ["A1", "A2", "A3"].map(
      (drawer) => WORKING(bench, drawer, heavy()).find(([size]) => /own weight/.test(String(size)))![1] as number,
    );
    const [, value, how] = row("Balance, this drawer out", heavy())!;
    const [holds, tips] = [200 + (own[1]! + own[2]!) * 11, (80 + own[0]!) * 11];
    expect(value).toBeCloseTo(holds / tips, 9);
    expect(how).toBe(
      `what holds, ${Number(holds.toFixed(1))}, over what tips, ${Number(tips.toFixed(1))}, about the tipping line (an estimate); at 1 or less it tips`,
    );
    const all = own.reduce((sum, weight) => sum + (80 + weight) * 11, 0);
    expect(row("Balance, all drawers out", heavy())![1]).toBeCloseTo(200 / all, 9);
    expect(row("Balance, this drawer out", [])).toBeUndefined();
  });

  test("a tipping line behind the front makes every reach longer, and what holds by half the depth shorter", () => {
    const back = heavy([["toe recess", 3]]);
    const [, value] = row("Balance, all drawers out", back)!;
    const own = ["A1", "A2", "A3"].map(
      (drawer) => WORKING(bench, drawer, back).find(([size]) => /own weight/.test(String(size)))![1] as number,
    );
    expect(value).toBeCloseTo(200 / own.reduce((sum, weight) => sum + (80 + weight) * 14, 0), 9);
    const center = (recess: unknown) =>
      row("Balance, all drawers out", [
        ["cabinet weight", 300],
        ["load", 10],
        ["toe recess", recess],
      ])![1] as number;
    // The opening is 23 1/4 deep, and its weight lies in the middle of it.
    const lever = (recess: number) => 300 * (23.25 / 2 - recess);
    expect((center("0 in") / center(2)) * (11 / 13)).toBeCloseTo(lever(0) / lever(2), 9);
  });

  test("a cabinet on a toe kick tips about the toe kick, 3 in or 75 mm behind its front (common practice)", () => {
    const cabinets = (mm: boolean) =>
      OPENINGS(
        mm
          ? [
              ["Width", "Height", "Depth", "Columns", "Drawers", "Toe kick"],
              [600, 720, 600, 1, 3, 100],
            ]
          : [
              ["Width", "Height", "Depth", "Columns", "Drawers", "Toe kick"],
              [24, 34.5, 24, 1, 3, 4],
            ],
        mm ? [["unit", "mm"]] : [],
      );
    const all = (mm: boolean, more: unknown[][]) =>
      WORKING(cabinets(mm), "A1", [...(mm ? [["unit", "mm"]] : []), ["cabinet weight", 60], ...more]).find(
        ([size]) => size === "Balance, all drawers out",
      )![1];
    expect(all(false, [])).toBe(all(false, [["toe recess", 3]]));
    expect(all(false, [])).not.toBe(all(false, [["toe recess", "0 in"]]));
    expect(all(true, [])).toBe(all(true, [["toe recess", 75]]));
    expect(all(true, [["toe recess", "auto"]])).toBe(all(true, []));
  });

  test("all drawers out that tip it are doubtful, and a heavy cabinet is not found", () => {
    const weighing = (weight: number) =>
      balance([
        ["cabinet weight", weight],
        ["load", 20],
      ]).map((row) => row[1]);
    expect([weighing(60), weighing(400)]).toEqual([["doubtful"], []]);
  });
});

test("an ordinary job raises no finding of loads by the defaults, in inches or in millimeters", () => {
  const bench = openings(["A", 18, 26.25, 23.25, 3], ["B", 24, 26.25, 23.25, 3]);
  const about = (table: unknown[][], standards: unknown[][]) =>
    column(CHECKS(table, standards), "Finding").filter((finding) => /slides|sags|break/.test(String(finding)));
  expect(about(bench, [])).toEqual([]);
  expect(about(openings(["A", 450, 660, 590, 3], ["B", 600, 660, 590, 3]), [["unit", "mm"]])).toEqual([]);
});
