import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE, WORKING } from "../../src/functions";
import { column, openings } from "./tables";

const files = (kind: string, ...more: unknown[][]) => [["hanging files", kind], ...more];
/** A surveyor's desk: 15 wide, so a box of 14, 13 inside; 20 1/2 deep, so a box of 20, 19 inside. */
const desk = (width = 15, height = 12, depth = 20.5) => openings(["D", width, height, depth, 1]);
const rails = (table: unknown[][], standards: unknown[][]) =>
  HARDWARE(table, standards)
    .filter(([item]) => item === "File rail")
    .map((row) => row.slice(1));
const found = (table: unknown[][], standards: unknown[][], pattern = /folders|Folders/) =>
  CHECKS(table, standards)
    .filter(([, , finding]) => pattern.test(String(finding)))
    .map((row) => row.slice(0, 3));
const filing = (table: unknown[][], standards: unknown[][]) =>
  WORKING(table, "D1", standards)
    .filter(([size]) => size === "Filing length")
    .map((row) => row.slice(1));

/** Common practice: 12 1/4 in (311 mm) in the clear for letter folders, 15 1/4 in (387 mm) for legal; from memory. */
describe("hanging files have rails, a folder's width apart", () => {
  test("none where nothing is said", () => {
    expect(rails(desk(), [])).toEqual([]);
    expect(filing(desk(), [])).toEqual([]);
    expect(found(desk(), [])).toEqual([]);
  });

  test("from front to back where the box is wide enough", () => {
    expect(rails(desk(), files("letter"))).toEqual([
      [19, 2, "each", "from front to back at the box's upper edges, 12 1/4 in apart in the clear: for letter folders"],
    ]);
    expect(filing(desk(), files("letter"))).toEqual([[19, "inside depth 19"]]);
  });

  test("from side to side where it is not, or where more files go in so", () => {
    // 13 wide inside is too narrow for legal folders; 19 deep is not.
    expect(rails(desk(), files("legal"))).toEqual([
      [13, 2, "each", "from side to side at the box's upper edges, 15 1/4 in apart in the clear: for legal folders"],
    ]);
    // A lateral file: 36 − 1 − 1 = 34 wide inside, 14 − 1 = 13 deep. Two rows of 13 from front to back hold less than 34.
    expect(filing(desk(36, 12, 14.5), files("letter"))).toEqual([[34, "inside width 34"]]);
  });

  test("in several rows where they have room, 1/4 between them", () => {
    // 30 − 2 = 28 inside: two rows take 24 3/4. Rails from side to side hold 28, less than twice 19.
    expect(filing(desk(30), files("letter"))).toEqual([[38, "2 rows of inside depth 19"]]);
    expect(rails(desk(30), files("letter"))[0]!.slice(0, 2)).toEqual([19, 4]);
    // 26 3/4 − 2 = 24 3/4, just so; 1/16 less is one row.
    expect(filing(desk(26.75), files("letter"))).toEqual([[38, "2 rows of inside depth 19"]]);
    expect(filing(desk(26.6875), files("letter"))).toEqual([[24.6875, "inside width 24 11/16"]]);
  });

  test("in millimeters 311 and 387", () => {
    const table = openings(["D", 400, 300, 512, 1]);
    const metric = (kind: string) =>
      rails(table, [
        ["unit", "mm"],
        ["hanging files", kind],
      ])[0]!;
    expect(metric("letter")[3]).toMatch(/311 mm apart/);
    expect(metric("legal")[3]).toMatch(/from side to side .* 387 mm apart/);
  });

  test("of each drawer by itself, from the top", () => {
    const pedestal = openings(["D", 15, 26.25, 20.5, "5; 5; 1 part"]);
    expect(rails(pedestal, files("none; none; letter"))[0]!.slice(0, 2)).toEqual([19, 2]);
    expect(rails(pedestal, files("letter"))[0]!.slice(0, 2)).toEqual([19, 6]);
    // Equal boxes need not hold the same.
    expect(rails(openings(["D", 15, 26.25, 20.5, 2]), files("none; letter"))[0]!.slice(0, 2)).toEqual([19, 2]);
    expect(column(CHECKS(pedestal, files("none; letter")), "Finding")).toContain(
      "Opening D: hanging files lists 2 for 3 drawers. Give one for all, or one a drawer.",
    );
    expect(column(CHECKS(pedestal, files("none; foolscap")), "Finding").join()).toMatch(/foolscap/);
  });

  test("as often as the opening is there", () => {
    const three = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Quantity"],
      ["D", 15, 12, 20.5, 1, 3],
    ];
    expect(rails(three, files("letter"))[0]!.slice(0, 2)).toEqual([19, 6]);
  });
});

describe("boxes that folders do not hang in are found", () => {
  test("too narrow both ways", () => {
    // 14 − 2 = 12 wide; depth 12 1/2: a slide of 12, so 11 deep inside.
    expect(found(desk(14, 12, 12.5), files("letter"))).toEqual([
      [
        "D1",
        "wrong",
        "Letter folders want 12 1/4 in between their rails, and the box is 12 in wide and 11 in deep inside.",
      ],
    ]);
    expect(rails(desk(14, 12, 12.5), files("letter"))).toEqual([]);
    // 14 1/4 − 2 = 12 1/4.
    expect(found(desk(14.25), files("letter"), /between their rails/)).toEqual([]);
  });

  test("too low for folders, which hang 9 1/2", () => {
    // Opening 10 1/2: less 1/2 and 1/4 a box of 9 3/4; less 3/8 and 1/4 for the bottom 9 1/8 inside.
    expect(found(desk(15, 10.5), files("letter"))).toEqual([
      ["D1", "wrong", "Folders hang 9 1/2 in below their rails, and the box is 9 1/8 in high inside."],
    ]);
  });

  test("too low for their tabs, which want 10 up to what is above the box", () => {
    // Opening 11: 9 5/8 inside, and 1/4 above it.
    expect(found(desk(15, 11), files("letter"))).toEqual([
      [
        "D1",
        "doubtful",
        "The tabs of hanging folders stand up to 10 in above the bottom, and there is 9 7/8 in up to what is above the box.",
      ],
    ]);
    // 11 1/8: 9 3/4 and 1/4 are 10.
    expect(found(desk(15, 11.125), files("letter"))).toEqual([]);
  });

  test("a load that is reckoned without files", () => {
    const load = (...more: unknown[][]) => found(desk(), files("letter", ...more), /reckoned/);
    expect(load()).toEqual([["D1", "doubtful", "Hanging files weigh more than the even load that is reckoned with."]]);
    expect(load(["load", "files"])).toEqual([]);
    expect(load(["load", 60])).toEqual([]);
  });
});
