import { describe, expect, test } from "vitest";
import { parseLength, toDouble } from "../../src/core/length";
import { loadBundle } from "../build/load-bundle";
import { PARTS_BENCH, SAMPLE_CHEST, type WorkedPlan } from "./plans";

const bundle = loadBundle();
type Table = (string | number)[][];
const call = (name: string, ...args: unknown[]): Table => bundle.get(name)!(...args) as Table;

describe.each([PARTS_BENCH, SAMPLE_CHEST])("worked example: $name, through the built functions", (worked) => {
  const { openings, standards, unit } = worked;
  const exact = (text: string): number => toDouble(parseLength(text, unit));
  const plan = call("PLAN", openings, standards);

  test("PLAN gives every size exactly", () => {
    expect(plan[0]).toEqual([
      "Drawer",
      "Opening",
      "Front width",
      "Front height",
      "Front bottom",
      "Box width",
      "Box height",
      "Box depth",
      "Box bottom",
      "Slide length",
      "Slide centerline",
      "Inside width",
      "Inside depth",
      "Inside height",
    ]);
    const expected = worked.plan.map((line) => {
      const [drawer, ...sizes] = line.split(" | ");
      return [drawer, drawer!.replace(/-?\d$/, ""), ...sizes.map(exact)];
    });
    expect(plan.slice(1)).toEqual(expected);
  });

  test("PARTS gives every cut size exactly", () => {
    const parts = call("PARTS", openings, standards, false);
    const cuts = worked.cuts.map((line) => {
      const [drawer, ...pieces] = line.split(" | ");
      return [drawer, ...pieces.map((piece) => piece.split(" × ").map(exact))];
    });
    const found = cuts.map(([drawer]) => [
      drawer,
      ...["Side", "Box front", "Box back", "Bottom", "Front"].map((part) => piece(parts, part, drawer as string)),
    ]);
    expect(found).toEqual(cuts);
    expect(parts.length).toBe(1 + 5 * cuts.length);
    expect(parts.slice(1).map((row) => row[2])).toEqual(parts.slice(1).map((row) => (row[0] === "Side" ? 2 : 1)));
  });

  test("WORKING agrees with PLAN in every size", () => expectWorkingAgrees(worked, plan));
});

const piece = (parts: Table, part: string, drawer: string) =>
  parts.filter((row) => row[0] === part && row[1] === drawer).flatMap((row) => [row[3], row[4]]);

function expectWorkingAgrees({ openings, standards }: WorkedPlan, plan: Table): void {
  for (const row of plan.slice(1)) {
    const sizes = new Map(call("WORKING", openings, row[0], standards).map(([size, value]) => [size, value]));
    const shown = plan[0]!.slice(2).map((heading) => sizes.get(heading));
    expect(shown, String(row[0])).toEqual(row.slice(2));
  }
}

describe("worked examples: how a size comes about", () => {
  const working = (drawer: string) =>
    Object.fromEntries(
      call("WORKING", PARTS_BENCH.openings, drawer, PARTS_BENCH.standards).map(([size, , how]) => [size, how]),
    );

  test("B3: face, fronts, zone, box, slide and bottom, as worked by hand", () => {
    expect(working("B3")).toMatchObject({
      "Face height": "upper edge 26 7/8 − lower edge (-3/4)",
      "Front height": "1 of 3 parts of (face height 27 5/8 − 2 × front gap 1/8)",
      "Zone top": "middle of the gap from 8 3/8 to 8 1/2",
      "Zone bottom": "floor of the opening",
      "Box height":
        "height of its space 8 7/16 − space below 1/2 − space above 1/4 = 7 11/16, down to a multiple of 1/4",
      "Slide length": "longest slide on sale within opening depth 23 1/4 − rear clearance 1/2 = 22 3/4",
      "Box width": "opening width 24 − 2 × side clearance 1/2",
      "Bottom width": "box width 23 − 2 × side thickness 1/2 + 2 × groove depth 1/4 − bottom play 1/16",
      "Cabinet outside width": "2 × cabinet thickness 3/4 + openings 72 + partitions 1 1/2",
    });
  });

  test("B1 would be 7 3/4 high, and is matched to the least behind equal fronts", () => {
    expect(working("B1")["Box height"]).toBe(
      "height of its space 8 9/16 − space below 1/2 − space above 1/4 = 7 13/16, down to a multiple of 1/4 = 7 3/4, matched to the least behind equal fronts (opening)",
    );
  });

  test("C2: 18 1/3, shown to the nearest 64th, down to sixteenths, and the spare step", () => {
    expect(working("C2")["Front height"]).toBe(
      "2 of 3 parts of (face height 27 5/8 − front gap 1/8) ≈ 18 21/64, down to a multiple of 1/16, and a spare step",
    );
  });
});

describe("worked examples: three jobs more", () => {
  const sizes = (table: Table, part: string) => piece(table, part, "A1");
  const job = (standards: unknown[][], ...opening: unknown[]) =>
    [[["Width", "Height", "Depth", "Drawers"], opening], standards] as const;
  const inches = (...texts: string[]) => texts.map((text) => toDouble(parseLength(text, "in")));

  test("15/32 stock, rabbets 1/4 deep, bottom 7/32, under back, in an opening 18 × 6 3/4 × 20 1/2", () => {
    const parts = call(
      "PARTS",
      ...job(
        [
          ["side thickness", "15/32"],
          ["corner joint", "rabbet"],
          ["joint depth", "1/4"],
          ["bottom thickness", "7/32"],
          ["bottom fit", "under back"],
        ],
        18,
        6.75,
        20.5,
        1,
      ),
    );
    expect(sizes(parts, "Side")).toEqual([20, 6]);
    expect(sizes(parts, "Box front")).toEqual(inches("16 9/16", "6"));
    expect(sizes(parts, "Box back")).toEqual(inches("16 9/16", "5 13/32"));
    expect(sizes(parts, "Bottom")).toEqual(inches("16 1/2", "19 23/32"));
  });

  test("an opening 10 high with a top reveal of 1 1/2: a front 10 high from -3/4, a box 8 1/2 high from 1/2, never above its front", () => {
    const plan = call("PLAN", ...job([["top reveal", "1 1/2"]], 18, 10, 20.5, 1));
    const row = Object.fromEntries(plan[0]!.map((heading, i) => [heading, plan[1]![i]]));
    expect(row).toMatchObject({ "Front height": 10, "Front bottom": -0.75, "Box height": 8.5, "Box bottom": 0.5 });
  });

  test("half-blind dovetails, box 16 1/4 wide and 21 deep, all stock 5/8, sockets 3/8: sides 20 1/2, ends 16 1/4, bottom 15 7/16 × 20 3/16", () => {
    const parts = call(
      "PARTS",
      ...job(
        [
          ["corner joint", "half-blind dovetail"],
          ["joint depth", "3/8"],
          ["side thickness", "5/8"],
          ["box depth", 21],
          ["slide lengths", "21"],
        ],
        17.25,
        8,
        22,
        1,
      ),
    );
    expect(sizes(parts, "Side")![0]).toBe(20.5);
    expect(sizes(parts, "Box front")![0]).toBe(16.25);
    expect(sizes(parts, "Bottom")).toEqual(inches("15 7/16", "20 3/16"));
  });
});
