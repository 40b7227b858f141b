import { describe, expect, test } from "vitest";
import { CHECKS } from "../../src/functions";
import { openings } from "./tables";

const QUIET: Record<string, unknown> = {
  "side thickness": "15/32",
  "bottom thickness": "7/32",
  "groove depth": "7/32",
};
const QUIET_MM: Record<string, unknown> = { unit: "mm", "bottom thickness": 9 };

type Job = { standards?: Record<string, unknown>; rows?: unknown[][]; heads?: string[] };
function findings({ standards = {}, rows = [["A", 18, 20, 20.5, 2]], heads = [] }: Job, quiet = QUIET): string {
  const table = openings(...rows);
  table[0] = [...table[0]!, ...heads];
  return CHECKS(table, Object.entries({ ...quiet, ...standards }))
    .slice(1)
    .map(([where, level, finding]) => `${String(where)} ${String(level)} ${String(finding)}`)
    .join("\n");
}

/** Each finding, a job that has it and its neighbor, just on the quiet side. */
const PAIRS: [finding: RegExp, loud: Job, quiet: Job][] = [
  [
    /A wrong An applied bottom leaves no recess/,
    { standards: { slide: "undermount", "undermount deduction": 1.25, "bottom fit": "applied", "space below": "1/2" } },
    { standards: { "bottom fit": "applied" } },
  ],
  [
    /A, B doubtful A gap of 0 in between fronts/,
    {
      standards: { "front gap": "none" },
      rows: [
        ["A", 18, 20, 20.5, 1],
        ["B", 18, 20, 20.5, 1],
      ],
    },
    { standards: { "front gap": "none" }, rows: [["A", 18, 20, 20.5, 1]] },
  ],
  [
    /stops short of the opening's right edge/,
    {
      standards: { "front gap": 1, "partition thickness": "1/4" },
      rows: [
        ["A", 18, 20, 20.5, 1],
        ["B", 18, 20, 20.5, 1],
      ],
    },
    {
      standards: { "front gap": "1/4", "partition thickness": "1/4" },
      rows: [
        ["A", 18, 20, 20.5, 1],
        ["B", 18, 20, 20.5, 1],
      ],
    },
  ],
  [
    /stops short of the opening's bottom edge/,
    { standards: { "rail below": "1/4", "front gap": 1 } },
    { standards: { "rail below": 1, "front gap": 1 } },
  ],
  [
    /A wrong Fronts overlay the frame by 1\/2 in from both sides of a rail above of 3\/4 in, and collide/,
    {
      standards: { construction: "face frame", "rail above": "3/4" },
      rows: [["A", 18, 20, 20.5, 1, 19]],
      heads: ["Case width"],
    },
    {
      standards: { construction: "face frame", "rail above": "1 1/8" },
      rows: [["A", 18, 20, 20.5, 1, 19]],
      heads: ["Case width"],
    },
  ],
  [
    /need blocking/,
    { standards: { construction: "face frame" } },
    { standards: { construction: "face frame" }, rows: [["A", 18, 20, 20.5, 1, 19]], heads: ["Case width"] },
  ],
  [
    /it will rub/,
    { standards: { "space below": "none", "space above": "none" }, rows: [["A", 18, 20, 20.5, 1]] },
    { standards: { "space below": "1/16", "space above": "1/16" }, rows: [["A", 18, 20, 20.5, 1]] },
  ],
  [
    /A, B doubtful Openings 20 in and 30 in high cannot share/,
    {
      rows: [
        ["A", 18, 20, 20.5, 2],
        ["B", 18, 30, 20.5, 3],
      ],
    },
    {
      rows: [
        ["A", 18, 20, 20.5, 2, "K1"],
        ["B", 18, 30, 20.5, 3, "K2"],
      ],
      heads: ["Cabinet"],
    },
  ],
  [
    /reads as solid wood, with upright grain/,
    { standards: { "front material": "Pine board" } },
    { standards: { "front material": "Pine board", "front grain": "horizontal" } },
  ],
  [
    /reads as solid wood, and is held/,
    { standards: { "bottom material": "Cedar boards" } },
    { standards: { "bottom material": "Hardboard" } },
  ],
  [
    /lower than the slide/,
    { rows: [["A", 18, 8, 20.5, 4]] },
    { standards: { slide: "center-mount" }, rows: [["A", 18, 8, 20.5, 4]] },
  ],
  [/deep, may rack/, { rows: [["A", 31.125, 20, 20.5, 2]] }, { rows: [["A", 31, 20, 20.5, 2]] }],
  [
    /of wood stands below the groove/,
    { standards: { "groove offset": "7/32" } },
    { standards: { "groove offset": "1/4" } },
  ],
  [
    /takes more than half of sides and ends /,
    { standards: { "groove depth": "1/4" } },
    { standards: { "groove depth": "15/64" } },
  ],
  [
    /takes more than half of ends /,
    { standards: { "end thickness": "3/8" } },
    { standards: { "end thickness": "7/16" } },
  ],
  [
    /A half-blind dovetail 1\/2 in deep leaves little of stock 5\/8 in/,
    {
      standards: {
        "corner joint": "half-blind dovetail",
        "joint depth": "1/2",
        "end thickness": "5/8",
        "side thickness": 1,
      },
    },
    {
      standards: {
        "corner joint": "half-blind dovetail",
        "joint depth": "3/8",
        "end thickness": "5/8",
        "side thickness": "7/16",
      },
    },
  ],
  [
    /leaves the carcase's whole edge bare/,
    { standards: { "top reveal": "3/4" } },
    { standards: { "top reveal": "3/4", "front style": "inset" } },
  ],
  [
    /Fronts stand 1\/8 in past the carcase at the bottom/,
    { standards: { "bottom reveal": "-1/8" } },
    { standards: { "bottom reveal": "-1/8", "rail below": 1 } },
  ],
  [
    /Fronts stand 1\/8 in past the carcase at the top/,
    { standards: { "top reveal": "-1/8" } },
    { standards: { "top reveal": "-1/8", "rail above": 1 } },
  ],
  [
    // Half of the gap lies above the lower front, 1/4 in and what the height step leaves above its box.
    /A2 doubtful The box stands 3\/16 in above its front/,
    { standards: { "front gap": 1 } },
    { standards: { "front gap": "1/2" } },
  ],
  [
    /A1 doubtful The height asked for leaves 1\/8 in above the box; the standard is 1\/4 in/,
    { rows: [["A", 18, 20, 20.5, 1, "19 3/8"]], heads: ["Box heights"] },
    { rows: [["A", 18, 20, 20.5, 1, "19 1/4"]], heads: ["Box heights"] },
  ],
  [
    /measured from 18 in to 18 3\/64 in/,
    { rows: [["A", "18; 18 3/64", 20, 20.5, 2]] },
    { rows: [["A", "18; 18 1/32", 20, 20.5, 2]] },
  ],
  [
    /has one pull/,
    { standards: { "pulls per front": 1, "two pulls from": "19 3/8" } },
    { standards: { "pulls per front": 1, "two pulls from": "19 7/16" } },
  ],
  [
    /the bottom.*given as 5\/8 in.*0\.594 to 0\.656/i,
    { standards: { "bottom thickness": "5/8" } },
    { standards: { "bottom thickness": "19/32" } },
  ],
];

describe("CHECKS raises each finding at its limit, and is quiet just beside it", () => {
  test.each(PAIRS)("%s", (finding, loud, quiet) => {
    expect(findings(loud)).toMatch(finding);
    expect(findings(quiet)).not.toMatch(finding);
  });
});

describe("CHECKS in millimeters", () => {
  const mm = (standards: Record<string, unknown>, rows: unknown[][] = [["A", 500, 600, 525, 2]]) =>
    findings({ standards, rows }, QUIET_MM);

  test("has limits of its own, and says nothing of plywood sold by the inch", () => {
    expect(mm({})).toBe("  All clear");
    expect(mm({ "side thickness": 12, "bottom thickness": 12 })).not.toMatch(/sold by that name/);
    expect(mm({ "groove offset": 5 })).toMatch(/Only 5 mm of wood/);
    expect(mm({}, [["A", 49, 600, 525, 2]])).toMatch(/An opening width of 49 mm is unlikely/);
    expect(mm({}, [["A", 51, 600, 525, 2]])).not.toMatch(/is unlikely/);
  });

  test("compares the slides' rating in kilograms: 718 Pa on 450.6 × 476 mm is 15.7 kg", () => {
    const load = (0.4506 * 0.476 * 718) / 9.80665;
    expect(load).toBeCloseTo(15.7, 1);
    expect(mm({ "slide rating": 15, "load rate": "718 Pa" })).toMatch(/carry 15 kg; an estimated 15\.7 kg/);
    expect(mm({ "slide rating": 45 })).not.toMatch(/carry/);
  });
});
