import { describe, expect, test } from "vitest";
import { CHECKS } from "../../src/functions";
import { openings } from "./tables";

/** Nothing else to find: measured plywood, grooves of half its thickness. */
const QUIET = [
  ["side thickness", "15/32"],
  ["bottom thickness", "7/32"],
  ["groove depth", "7/32"],
];
const RUNNERS = [
  ["slide", "wood runner"],
  ["box depth", 18],
  ["space below", 1],
];
const table = openings(["A", 18, 20, 20.5, 2]);
const found = (standards: unknown[][], rows = table) =>
  CHECKS(rows, [...QUIET, ...standards])
    .slice(1)
    .map((row) => row.slice(0, 3));
const unused = (standards: unknown[][], rows = table) =>
  found(standards, rows).filter(([, , finding]) => / no effect: /.test(String(finding)));
const ALL_CLEAR = [["", "", "All clear"]];

describe("a standard that no opening has a use for", () => {
  test.each<[names: string, lacks: string, standards: unknown[][]]>([
    ["undermount notch width", "undermount slides", [["undermount notch width", "1 3/8"]]],
    [
      "undermount deduction, undermount hook hole",
      "undermount slides",
      [
        ["undermount hook hole", "1/4"],
        ["undermount deduction", "1 5/8"],
      ],
    ],
    ["center slide height", "center-mount slides", [["center slide height", "5/8"]]],
    [
      "runner, runner width",
      "wood runners",
      [
        ["runner", "side groove"],
        ["runner width", "1 1/4"],
      ],
    ],
    [
      "stile width, rail width",
      "a face frame",
      [
        ["rail width", 2],
        ["stile width", 2],
      ],
    ],
    ["frame overlay", "overlay fronts on a face frame", [["frame overlay", "3/8"]]],
    ["slide rating", "slides that are bought", [...RUNNERS, ["slide rating", 75]]],
    [
      "top reveal, end reveal",
      "overlay fronts without a face frame",
      [
        ["front style", "inset"],
        ["end reveal", 0.125],
        ["top reveal", 1],
      ],
    ],
    ["species", "fronts or bottoms of solid wood", [["species", "Cherry"]]],
    [
      "groove depth, groove offset",
      "a bottom in grooves",
      [
        ["bottom fit", "applied"],
        ["groove offset", "1/2"],
      ],
    ],
    ["inset gap", "inset fronts", [["inset gap", "1/16"]]],
    ["joint depth", "a rabbet, a dado or half-blind dovetails", [["joint depth", "1/4"]]],
    ["dado inset", "a dado", [["dado inset", "3/8"]]],
    ["bottom overhang", "an applied bottom", [["bottom overhang", "1/8"]]],
    ["pull length", "shop-made pulls", [["pull length", 5]]],
    ["balance depth", "a cabinet weight", [["balance depth", 12]]],
  ])("%s: no opening has %s", (names, lacks, standards) => {
    const has = names.includes(",") ? "have" : "has";
    expect(found(standards)).toEqual([
      [
        "standards",
        "doubtful",
        `The standard${has === "have" ? "s" : ""} ${names} ${has} no effect: no opening has ${lacks}.`,
      ],
    ]);
  });

  test.each<[string, unknown[][]]>([
    [
      "left at what holds anyway",
      [
        ["inset gap", "3/32"],
        ["dado inset", "1/4"],
        ["balance depth", "center"],
      ],
    ],
    [
      "left blank",
      [
        ["undermount deduction", ""],
        ["joint depth", ""],
      ],
    ],
    [
      "none where none is given",
      [
        ["joint depth", "none"],
        ["undermount deduction", "none"],
      ],
    ],
  ])("is not raised where it is %s", (_, standards) => {
    expect(found(standards)).toEqual(ALL_CLEAR);
  });

  test("is raised neither where one opening uses it, nor for one that cannot be planned", () => {
    const deduction = [["undermount deduction", "1 5/8"]];
    const rows = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Slide"],
      ["A", 18, 20, 20.5, 2, ""],
      ["B", 18, 20, 20.5, 2, "undermount"],
    ];
    expect(unused(deduction, rows)).toEqual([]);
    expect(unused(deduction, openings(["A", 18, 20, "x", 2]))).toEqual([]);
  });

  test("stands at the openings whose own it is", () => {
    const rows = [
      ["Opening", "Width", "Height", "Depth", "Drawers", "Inset gap"],
      ["A", 18, 20, 20.5, 2, ""],
      ["B", 18, 20, 20.5, 2, "1/16"],
    ];
    expect(unused([], rows)).toEqual([
      ["B", "doubtful", "The standard inset gap has no effect: no opening has inset fronts."],
    ]);
  });
});
