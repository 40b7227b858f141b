import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE } from "../../src/functions";
import { openings } from "./tables";

const one = openings(["A", 18, 12, 21.5, 1]);
const rows = (item: string, standards: unknown[][] = [], table = one) =>
  HARDWARE(table, standards).filter(([name]) => name === item);
const note = (item: string, standards: unknown[][] = [], table = one) => String(rows(item, standards, table)[0]![4]);
const mm = (standards: unknown[][] = []) => [["unit", "mm"], ...standards];
const metric = openings(["A", 450, 300, 560, 1]);
const frame = (caseWidth: unknown) => [
  ["Width", "Height", "Depth", "Drawers", "Case width"],
  [18, 20, 20.5, 1, caseWidth],
];
const FRAMED = [["construction", "face frame"]];

describe("what screws to ask for: gauge and head as common practice, after the makers' data sheets", () => {
  test.each<[item: string, kind: RegExp, standards: unknown[][]]>([
    ["Slide screw", /No\. 8, pan head \(common practice; the slide's data sheet decides\)/, []],
    ["Runner screw", /No\. 8, flat head \(common practice\)/, [["slide", "wood runner"]]],
    ["Pocket screw", /washer head, coarse thread, No\. 8 \(common practice; the jig's manual decides\)/, []],
    [
      "Pocket screw",
      /washer head, fine thread, No\. 7, in hardwood, coarse, No\. 8, in softwood/,
      [["side material", "Maple"]],
    ],
    [
      "Corner nail",
      /18 gauge brad \(common practice\)/,
      [
        ["corner joint", "rabbet"],
        ["joint depth", "1/4"],
      ],
    ],
    ["Corner screw", /No\. 6, flat head/, [["corner fastening", "screws"]]],
    [
      "Corner screw",
      /No\. 8, flat head/,
      [
        ["corner fastening", "screws"],
        ["side thickness", "3/4"],
      ],
    ],
    ["Bottom nail", /18 gauge brad/, [["bottom fit", "applied"]]],
    ["Bottom screw", /No\. 6, flat head/, [["bottom fit", "under back"]]],
    [
      "Bottom screw",
      /No\. 8, pan head/,
      [
        ["bottom fit", "under back"],
        ["bottom material", "Cherry"],
        ["end thickness", "3/4"],
      ],
    ],
    [
      "Washer",
      /for No\. 6 screws/,
      [
        ["bottom fit", "under back"],
        ["bottom material", "Cherry"],
      ],
    ],
    ["Front screw", /No\. 8, truss head/, []],
    ["Pull screw", /machine screw 8-32, truss head \(common practice; see what comes with the pull\)/, []],
    ["Pull screw", /No\. 8, pan head/, [["pull kind", "shop-made"]]],
  ])("%s: %s", (item, kind, standards) => expect(note(item, standards)).toMatch(kind));

  test("in millimeters by their diameter", () => {
    expect(note("Slide screw", mm(), metric)).toMatch(/4 mm, pan head/);
    expect(note("Pocket screw", mm(), metric)).toMatch(/washer head, coarse thread, 4 mm/);
    expect(note("Pull screw", mm(), metric)).toMatch(/machine screw M4, truss head/);
    expect(note("Bottom screw", mm([["bottom fit", "under back"]]), metric)).toMatch(/3\.5 mm, flat head/);
  });

  test("blocking is at least as wide as its slide is high, and 3/8 in on both sides", () => {
    expect(note("Blocking", FRAMED, frame(20))).toBe(
      "as thick as the frame hides, 20 in long and at least 2 1/2 in wide, behind slide or runner",
    );
    expect(note("Blocking", [...FRAMED, ["slide height", 2]], frame(20))).toMatch(/at least 2 3\/4 in wide/);
    expect(note("Blocking", FRAMED, frame(""))).toMatch(/^20 in long and at least 2 1\/2 in wide; give the Case width/);
    const runners = [...FRAMED, ["slide", "wood runner"], ["runner thickness", "3/4"]];
    expect(note("Blocking", runners, frame(20))).toMatch(/at least 1 1\/2 in wide/);
  });
});

describe("a pocket screw is as long as common practice has it for its stock, and never comes through", () => {
  const size = (side: unknown, end: unknown = side) =>
    rows("Pocket screw", [
      ["side thickness", side],
      ["end thickness", end],
      ["groove depth", "1/8"],
    ])[0]![1];

  test("by the thinner of the two, which may measure a little less than its name", () => {
    const stock = ["1/2", "15/32", "12 mm", "5/8", "11/16", "23/32", "18 mm", "3/4", "7/8", 1, "1 1/4", "1 1/2"];
    expect(stock.map((thick) => size(thick))).toEqual([1, 1, 1, 1, 1, 1.25, 1.25, 1.25, 1.5, 1.5, 2, 2.5]);
    expect([size("1/2", "3/4"), size("3/4", "1/2")]).toEqual([1, 1]);
    expect(size("3/8")).toBe("");
  });

  test("in millimeters", () => {
    const of = (side: unknown) =>
      rows(
        "Pocket screw",
        mm([
          ["side thickness", side],
          ["groove depth", 4],
        ]),
        metric,
      )[0]![1];
    expect([12, 15, 16, 18, 19, 22, 25, 32, 38].map(of)).toEqual([25, 25, 25, 32, 32, 38, 38, 50, 64]);
  });

  test("a longer one that is asked for comes out, and is wrong", () => {
    const found = (length: unknown, side: unknown = "1/2") =>
      CHECKS(one, [
        ["corner screw length", length],
        ["side thickness", side],
        ["groove depth", "1/8"],
      ]).filter(([, , words]) => /pocket screw/i.test(String(words)));
    expect(found("1 1/4")).toEqual([
      [
        "A1",
        "wrong",
        "A pocket screw of 1 1/4 in is too long for stock 1/2 in thick: its point may come out.",
        "Take one of 1 in, or set the corner screw length to auto.",
      ],
    ]);
    expect(found(1)).toEqual([]);
    expect(found("1 1/4", "3/4")).toEqual([]);
    expect(found("1 1/2", "3/4")).toHaveLength(1);
    expect(found(1, "3/8")[0]!.slice(1, 3)).toEqual([
      "wrong",
      "A pocket screw of 1 in is too long for stock 3/8 in thick: its point may come out.",
    ]);
  });

  test.each(["0 in", "many", -1])("a corner screw length of %j is refused in words", (length) =>
    expect(() => HARDWARE(one, [["corner screw length", length]])).toThrow(/^standards, corner screw length is/),
  );
});
