import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as ours from "../../src/functions";
import { computedByLibreOffice, type Value } from "../libreoffice";

/**
 * The sums that a careful person would write into a sheet with native formulas, computed by LibreOffice.
 * A–H hold the arguments, the last column the native formula; `#` in it stands for the row.
 */
interface Twin {
  call: keyof typeof ours;
  /** The arguments of one row; texts and numbers, millimeters or inches. */
  row: fc.Arbitrary<Value[]>;
  native: string;
  /** The arguments of ours, where they are not the row as it stands. */
  args?: (row: Value[]) => unknown[];
  /** Which cell of a table or column of ours the row asks for. */
  pick?: (result: unknown, row: Value[]) => unknown;
}

/** A number 0 may be an empty cell; as a text it is meant. */
const meant = (value: unknown): unknown => (value === 0 ? "0" : value);

const ROWS = 60;
const sixtyFourths = (least: number, most: number) => fc.integer({ min: least, max: most }).map((n) => n / 64);
const inch = (least: number, most: number) => sixtyFourths(least * 64, most * 64);
const whole = (least: number, most: number) => fc.integer({ min: least, max: most });
const joint = fc.constantFrom("butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint");

const column = (result: unknown, row: Value[]) => (result as number[][])[(row[0] as number) - 1]![0];

const oneOpening = (width: Value): unknown[][] => [
  ["Width", "Height", "Depth", "Drawers"],
  [width, 24, 22.5, 1],
];
const RABBETED = `OR(C#="rabbet",C#="dado")`;
const CUTS = `IF(${RABBETED},3,1)`;
const STOCK = `IF(OR(C#="butt",${RABBETED}),2*F#,0)`;
const WORST = `(D#+${CUTS}*E#+${STOCK})/2`;
const LIKELY = `SQRT(D#^2+${CUTS}*E#^2+(${STOCK})^2)/2`;

const TWINS: Twin[] = [
  { call: "LENGTH", row: fc.tuple(whole(0, 90), whole(1, 15)), args: ([w, n]) => [`${w} ${n}/16`], native: "A#+B#/16" },
  {
    call: "TAPE",
    row: fc.tuple(inch(0, 90), fc.constantFrom(2, 4, 8, 16, 32, 64)),
    native:
      `IF(AND(INT(ROUND(A#*B#,0)/B#)=0,MOD(ROUND(A#*B#,0),B#)>0),"",INT(ROUND(A#*B#,0)/B#)&IF(MOD(ROUND(A#*B#,0),B#)>0," ",""))` +
      `&IF(MOD(ROUND(A#*B#,0),B#)>0,MOD(ROUND(A#*B#,0),B#)/GCD(ROUND(A#*B#,0),B#)&"/"&B#/GCD(ROUND(A#*B#,0),B#),"")&""""`,
  },
  { call: "BOXWIDTH", row: fc.tuple(inch(6, 48), inch(0, 1)), native: "A#-2*B#" },
  {
    call: "BOXHEIGHT",
    row: fc.tuple(inch(3, 30), inch(0, 1), inch(0, 1), fc.constantFrom(0.125, 0.25, 0.5, 1)),
    native: "FLOOR(ROUND(A#-B#-C#,6),D#)",
  },
  {
    call: "SLIDELENGTH",
    row: fc.tuple(inch(13, 32), inch(0, 1), inch(0, 1)),
    native: "MIN(28,FLOOR(A#-B#-C#,2))",
  },
  {
    call: "ENDLENGTH",
    row: fc.tuple(inch(6, 40), sixtyFourths(24, 48), joint, sixtyFourths(4, 20)),
    native: `IF(C#="butt",A#-2*B#,IF(OR(C#="rabbet",C#="dado"),A#-2*B#+2*D#,A#))`,
  },
  {
    call: "SIDELENGTH",
    row: fc.tuple(inch(6, 40), sixtyFourths(24, 48), joint, sixtyFourths(4, 20)),
    native: `IF(C#="half-blind dovetail",A#-2*(B#-D#),A#)`,
  },
  {
    call: "BOTTOMWIDTH",
    row: fc.tuple(inch(6, 40), sixtyFourths(24, 48), sixtyFourths(4, 20), sixtyFourths(0, 7)),
    native: "A#-2*B#+2*C#-D#",
  },
  {
    call: "BOTTOMDEPTH",
    row: fc.tuple(
      inch(6, 40),
      sixtyFourths(24, 48),
      sixtyFourths(8, 20),
      sixtyFourths(0, 7),
      fc.constantFrom("grooved", "under back", "applied"),
    ),
    native: `IF(E#="applied",A#,IF(E#="under back",A#-B#+C#-D#,A#-2*B#+2*C#-D#))`,
  },
  {
    call: "FRONTHEIGHT",
    row: fc.tuple(inch(20, 90), whole(1, 12), inch(0, 1), inch(-1, 1), inch(-1, 1)),
    native: "(A#-D#-E#-(B#-1)*C#)/B#",
  },
  {
    call: "FRONTWIDTH",
    row: fc.tuple(whole(500, 2400), whole(1, 6), whole(0, 8), whole(-20, 20), whole(-20, 20)),
    args: (row) => [...row, "mm"],
    native: "(A#-D#-E#-(B#-1)*C#)/B#",
  },
  {
    // Row: which front, face, the fixed top front, parts of two more, gap, step.
    call: "FRONTHEIGHTS",
    row: fc.tuple(
      whole(1, 3),
      inch(20, 60),
      inch(2, 8),
      whole(1, 3),
      whole(1, 3),
      inch(0, 1),
      fc.constantFrom(0.0625, 0.125, 0.5),
    ),
    args: ([, face, fixed, p2, p3, gap, step]) => [face, [[fixed], [`${p2} parts`], [`${p3} parts`]], gap, 0, 0, step],
    native:
      "CHOOSE(A#,C#,FLOOR(ROUND((B#-2*F#-C#)*D#/(D#+E#),9),G#),FLOOR(ROUND((B#-2*F#-C#)*E#/(D#+E#),9),G#)" +
      "+IF(ROUND(B#-2*F#-C#-FLOOR(ROUND((B#-2*F#-C#)*D#/(D#+E#),9),G#)-FLOOR(ROUND((B#-2*F#-C#)*E#/(D#+E#),9),G#),9)>=G#,G#,0))",
    pick: column,
  },
  {
    // Row: which front, face, count, amount, gap.
    call: "GRADUATED",
    row: fc.tuple(whole(1, 3), inch(30, 60), whole(3, 8), sixtyFourths(0, 32), inch(0, 1)),
    args: ([, face, count, amount, gap]) => [face, count, "arithmetic", amount, gap],
    native: "(B#-(C#-1)*E#-D#*C#*(C#-1)/2)/C#+(A#-1)*D#",
    pick: column,
  },
  {
    call: "GRADUATED",
    row: fc.tuple(
      whole(1, 3),
      inch(30, 60),
      whole(3, 8),
      whole(11, 15).map((n) => n / 10),
      inch(0, 1),
    ),
    args: ([, face, count, factor, gap]) => [face, count, "geometric", factor, gap],
    native: "(B#-(C#-1)*E#)*(D#-1)/(D#^C#-1)*D#^(A#-1)",
    pick: column,
  },
  {
    // Row: which pass, groove width, kerf, offset, depth.
    call: "GROOVEPASSES",
    row: fc.tuple(whole(1, 3), sixtyFourths(25, 60), fc.constantFrom(8 / 64, 6 / 64), inch(0, 1), inch(1, 2)),
    args: ([, ...args]) => args,
    native: "D#+(A#-1)*(B#-C#)/(ROUNDUP(B#/C#,0)-1)",
    pick: (result, row) => (result as unknown[][])[row[0] as number]![1],
  },
  {
    // Row: which figure, opening width, joint, tolerances of opening, cut and thickness, of the slide low and high.
    call: "FIT",
    row: fc.tuple(whole(1, 7), inch(10, 40), joint, ...[4, 2, 2, 4, 4].map((most) => sixtyFourths(0, most))),
    args: ([, width, corner, o, c, t, low, high]) => [
      oneOpening(width!),
      [
        ["corner joint", corner],
        ["joint depth", "1/4"],
        ["side clearance", "7/16"],
        ["opening tolerance", `${o}`],
        ["cut tolerance", `${c}`],
        ["thickness tolerance", `${t}`],
        ["slide tolerance low", low],
        ["slide tolerance high", `${high}`],
      ],
    ],
    native:
      `(B#-(B#-2*7/16))/2+CHOOSE(A#,0,-1,1,-1,1,-1,1)*CHOOSE(A#,0,` + `${WORST},${WORST},${LIKELY},${LIKELY},G#,H#)`,
    pick: (result, row) => (result as unknown[][])[1]![row[0] as number],
  },
  {
    // Row: box height, side thickness, copies, which of the corner screws' length and count.
    call: "HARDWARE",
    row: fc.tuple(inch(3, 20), fc.constantFrom(0.46875, 0.5, 0.71875, 0.75), whole(1, 9), whole(1, 2)),
    args: ([height, side, copies]) => [
      [
        ["Width", "Height", "Depth", "Drawers", "Box heights", "Side thickness", "Quantity"],
        [24, 24, 22.5, 1, height, side, copies],
      ],
    ],
    native: "CHOOSE(D#,IF(B#<0.6,1,1.25),4*C#*MAX(2,ROUNDUP(A#/4,0)))",
    pick: (result, row) => (result as unknown[][]).find(([item]) => item === "Pocket screw")![row[3] as number],
  },
  {
    // Row: opening width, depth in whole slides, nail spacing, copies.
    call: "HARDWARE",
    row: fc.tuple(inch(12, 40), whole(5, 14), whole(2, 8), whole(1, 9)),
    args: ([width, slides, spacing, copies]) => [
      [
        ["Width", "Height", "Depth", "Drawers", "Quantity"],
        [width, 24, 2 * (slides as number) + 0.5, 1, copies],
      ],
      [
        ["bottom fit", "applied"],
        ["nail spacing", spacing],
      ],
    ],
    native: "2*D#*(ROUNDUP((A#-1)/C#,0)+ROUNDUP(2*B#/C#,0))",
    pick: (result) => (result as unknown[][]).find(([item]) => item === "Bottom nail")![2],
  },
  {
    // Row: which size of the cut front, opening width and height, bands of its upper, lower, left and right edge.
    call: "PARTS",
    row: fc.tuple(
      whole(1, 2),
      inch(12, 40),
      whole(8 * 16, 30 * 16).map((n) => n / 16),
      ...[1, 2, 3, 4].map(() => sixtyFourths(0, 12)),
    ),
    args: ([, width, height, ...bands]) => [
      [
        ["Width", "Height", "Depth", "Drawers"],
        [width, height, 20.5, 1],
      ],
      ["top", "bottom", "left", "right"].map((edge, i) => [`${edge} edge band`, meant(bands[i])]),
    ],
    native: "CHOOSE(A#,C#+1.5-0.125-D#-E#,B#+1.5-0.125-F#-G#)",
    pick: (result, row) => (result as unknown[][]).find(([name]) => name === "Front")![2 + (row[0] as number)],
  },
  {
    // Row: opening width and height, allowance, copies; of a band of the upper and the left edge, in feet.
    call: "HARDWARE",
    row: fc.tuple(
      inch(12, 40),
      whole(8 * 16, 30 * 16).map((n) => n / 16),
      inch(0, 2),
      whole(1, 9),
    ),
    args: ([width, height, allowance, copies]) => [
      [
        ["Width", "Height", "Depth", "Drawers", "Quantity"],
        [width, height, 20.5, 1, copies],
      ],
      [
        ["top edge band", "1/16"],
        ["left edge band", "1/16"],
        ["edge band allowance", meant(allowance)],
      ],
    ],
    native: "ROUNDUP(ROUND(D#*(A#+B#+2*1.375+2*C#)/12,9),1)",
    pick: (result) => (result as unknown[][]).find(([item]) => item === "Edge band")![2],
  },
  {
    // Row: which mark, box height, joint pitch, pin width; of dovetails, two marks a tail.
    call: "SETUPS",
    row: fc.tuple(whole(1, 4), inch(4, 20), fc.constantFrom(0.75, 1, 1.25, 1.5), sixtyFourths(8, 24)),
    args: ([, height, pitch, pin]) => [
      [
        ["Width", "Height", "Depth", "Drawers", "Box heights"],
        [18, 30, 20.5, 1, height],
      ],
      [
        ["corner joint", "dovetail"],
        ["joint pitch", pitch],
        ["pin width", pin],
      ],
    ],
    native: "ROUNDUP(A#/2,0)*B#/ROUND(B#/C#,0)+IF(ISODD(A#),-B#/ROUND(B#/C#,0)+D#/2,-D#/2)",
    pick: (result, row) =>
      (result as unknown[][]).filter(([, , setting]) => /^Mark/.test(String(setting)))[(row[0] as number) - 1]![3],
  },
  {
    // Row: which finger's end, box height, joint pitch: an odd number of fingers, two to a pitch.
    call: "SETUPS",
    row: fc.tuple(whole(1, 4), inch(4, 20), fc.constantFrom(0.75, 1, 1.25, 1.5)),
    args: ([, height, pitch]) => [
      [
        ["Width", "Height", "Depth", "Drawers", "Box heights"],
        [18, 30, 20.5, 1, height],
      ],
      [
        ["corner joint", "box joint"],
        ["joint pitch", pitch],
      ],
    ],
    native: "A#*B#/(2*INT(B#/C#)+1)",
    pick: (result, row) =>
      (result as unknown[][]).filter(([, , setting]) => /^Mark/.test(String(setting)))[(row[0] as number) - 1]![3],
  },
  {
    // Row: opening width, how many dividers, their thickness; where the first dado begins. Slides and sides take 2 in.
    call: "SETUPS",
    row: fc.tuple(inch(12, 36), whole(1, 6), sixtyFourths(8, 32)),
    args: ([width, count, thickness]) => [
      [
        ["Width", "Height", "Depth", "Drawers"],
        [width, 8, 20.5, 1],
      ],
      [
        ["dividers", count],
        ["divider thickness", meant(thickness)],
      ],
    ],
    native: "(A#-2-B#*C#)/(B#+1)",
    pick: (result) =>
      (result as unknown[][]).find(
        ([, operation, setting]) => operation === "Dadoes for dividers" && /fence/.test(String(setting)),
      )![3],
  },
];

describe("native formulas for the same sums, computed by LibreOffice, agree with ours cell for cell", () => {
  test.each(TWINS)("$call = $native", async ({ call, row, native, args, pick }) => {
    const rows = fc.sample(row, { numRuns: ROWS, seed: 20261125 });
    const sheet = rows.map((cells, i) => [...cells, `=${native.replaceAll("#", String(i + 1))}`]);
    const computed = (await computedByLibreOffice(sheet)).map((cells) => cells.at(-1));
    const mine = rows.map((cells) => {
      const result = (ours[call] as (...a: unknown[]) => unknown)(...(args?.(cells) ?? cells).map(meant));
      return pick ? pick(result, cells) : result;
    });
    for (const [i, value] of mine.entries()) {
      const where = `${call} of ${JSON.stringify(rows[i])}`;
      if (typeof value === "number") expect(Math.abs(value - (computed[i] as number)), where).toBeLessThan(1e-9);
      else expect(value, where).toBe(computed[i]);
    }
    expect(new Set(computed).size).toBeGreaterThan(5);
  });
});
