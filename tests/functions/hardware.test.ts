import { describe, expect, test } from "vitest";
import { HARDWARE } from "../../src/functions";
import { shown } from "../cell";
import { openings } from "./tables";

const PAN = "No. 8, pan head (common practice; the slide's data sheet decides)";
const one = openings(["A", 18, 20, 20.5, 1]);
/** Size, quantity and unit of each row of an item. */
const of = (item: string, standards?: unknown[][], table = one) =>
  HARDWARE(table, standards)
    .filter(([name]) => name === item)
    .map((row) => row.slice(1, 4));
const note = (item: string, standards?: unknown[][], table = one) =>
  HARDWARE(table, standards).find(([name]) => name === item)![4];

describe("HARDWARE(openings, standards)", () => {
  test("lists a whole job, equal items in one row", () => {
    expect(HARDWARE(openings(["B", 24, 26.25, 23.25, 3]), [["height step", "1/4"]])).toEqual([
      ["Item", "Size", "Qty", "Unit", "Note"],
      ["Side-mount slide", 22, 3, "pair", "rated for 75 lb or more, box included (an estimate)"],
      ["Slide screw", 0.5, 18, "each", `into the box sides, predrilled; ${PAN}`],
      ["Slide screw", 0.625, 18, "each", `into the cabinet's ends; ${PAN}`],
      [
        "Pocket screw",
        1,
        24,
        "each",
        "pocket holes in box front and back, into the sides; washer head, coarse thread, No. 8 (common practice; the jig's manual decides)",
      ],
      ["Front screw", 1, 12, "each", "from inside the box into its front; No. 8, truss head (common practice)"],
      ["Pull", 128 / 25.4, 6, "each", "size: spacing of its holes, 128 mm"],
      [
        "Pull screw",
        1.5,
        12,
        "each",
        "from inside the box, through box and front; machine screw 8-32, truss head (common practice; see what comes with the pull)",
      ],
      ["Glue", "", 7.5, "foot", "a bead along every corner and joint"],
    ]);
  });

  test("quantity multiplies", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Quantity"],
      [18, 20, 20.5, 1, 4],
    ];
    const [once, four] = [HARDWARE(one).slice(1), HARDWARE(table).slice(1)];
    expect(four.map((row) => row[1])).toEqual(once.map((row) => row[1]));
    for (const [i, row] of four.entries()) if (row[0] !== "Glue") expect(row[2]).toBe(4 * (once[i]![2] as number));
  });

  test("slides stand by length, in pairs; a center-mount slide is one", () => {
    const table = openings(["A", 18, 20, 20.5, 2], ["B", 18, 20, 22.5, 3], ["C", 18, 20, 20.5, 1]);
    expect(of("Side-mount slide", [["load", 30]], table)).toEqual([
      [20, 3, "pair"],
      [22, 3, "pair"],
    ]);
    expect(of("Center-mount slide", [["slide", "center-mount"]])).toEqual([[20, 1, "each"]]);
    const undermount = [
      ["slide", "undermount"],
      ["undermount deduction", 1.5],
    ];
    expect(of("Undermount slide", undermount)).toEqual([[20, 1, "pair"]]);
    expect(note("Undermount slide", undermount)).toBe(
      "with what its own data sheet asks for; rated for 75 lb or more, box included (an estimate)",
    );
  });

  test("slide screws are three a half, the longest up to 5/8 that its stock takes", () => {
    expect(of("Slide screw", [["side thickness", "15/32"]])).toEqual([
      [0.375, 6, "each"],
      [0.625, 6, "each"],
    ]);
    expect(
      of("Slide screw", [
        ["slide screws", 4],
        ["slide screw length", "1/2"],
      ]),
    ).toEqual([
      [0.5, 8, "each"],
      [0.5, 8, "each"],
    ]);
    expect(of("Slide screw", [["unit", "mm"]], openings(["A", 450, 500, 520, 1]))).toEqual([
      [12, 6, "each"],
      [16, 6, "each"],
    ]);
  });

  test("pocket screws in butt joints by stock, one to every 4 in of each corner and at least two", () => {
    const sized = (height: string, side: string) =>
      of(
        "Pocket screw",
        [
          ["box heights", height],
          ["side thickness", side],
        ].slice(1),
        [
          ["Width", "Height", "Depth", "Drawers", "Box heights"],
          [18, 20, 20.5, 1, height],
        ],
      )[0];
    expect(["3", "8", "8 1/8", "12 1/2"].map((height) => sized(height, "1/2")![1])).toEqual([8, 8, 12, 16]);
    expect(["1/2", "15/32", "5/8", "23/32", "3/4", "1 1/2"].map((side) => sized("4", side)![0])).toEqual([
      1, 1, 1, 1.25, 1.25, 2.5,
    ]);
  });

  test("other joints: nails in rabbets and dadoes, glue alone where joints lock; or as the standard says", () => {
    const rabbet = [
      ["corner joint", "rabbet"],
      ["joint depth", "1/4"],
    ];
    expect(of("Corner nail", rabbet)).toEqual([[1.25, 20, "each"]]);
    expect(of("Corner nail", [["corner joint", "dovetail"]])).toEqual([]);
    expect(
      of("Corner screw", [
        ["corner fastening", "screws"],
        ["corner screws", 3],
      ]),
    ).toEqual([[1.25, 12, "each"]]);
    expect(of("Pocket screw", [["corner fastening", "none"]])).toEqual([]);
    expect(of("Pocket screw", [["corner screw length", "1 1/4"]])[0]![0]).toBe(1.25);
  });

  test("stock that nothing on sale suits is said in the note, not guessed", () => {
    const thin = [
      ["side thickness", "5/16"],
      ["groove depth", "1/8"],
    ];
    expect(of("Slide screw", thin)[0]).toEqual(["", 6, "each"]);
    expect(note("Slide screw", thin)).toBe(
      `into the box sides, predrilled; ${PAN}; none of the screw lengths suits this stock`,
    );
    expect(of("Slide screw", [...thin, ["screw lengths", "1/4; 1"]])).toEqual([
      [0.25, 6, "each"],
      [0.25, 6, "each"],
    ]);
  });

  test("nails go round an applied bottom, screws up into the back of an open one, nothing into a grooved one", () => {
    // 17 × 20: five and five spaces of at most 4 in on each pair of edges.
    expect(of("Bottom nail", [["bottom fit", "applied"]])).toEqual([[0.75, 20, "each"]]);
    expect(
      of("Bottom nail", [
        ["bottom fit", "applied"],
        ["nail spacing", 8],
      ]),
    ).toEqual([[0.75, 12, "each"]]);
    expect(of("Bottom screw", [["bottom fit", "under back"]])).toEqual([[0.75, 2, "each"]]);
    expect(
      of("Bottom screw", [
        ["bottom fit", "under back"],
        ["bottom thickness", "1/2"],
        ["bottom screws", 5],
      ]),
    ).toEqual([[1.5, 5, "each"]]);
    expect(of("Bottom screw")).toEqual([]);
  });

  test("a bottom screw of three times its bottom that would come out of a low back, or that is not sold, gives way to the longest that holds", () => {
    const thick = [
      ["bottom fit", "under back"],
      ["bottom thickness", "1/2"],
    ];
    // A box of 1 3/4 has a back of 7/8: through 1/2 into it, 1/8 short of its upper edge.
    expect(of("Bottom screw", thick, openings(["A", 18, 2.5, 20.5, 1]))).toEqual([[1.25, 2, "each"]]);
    expect(of("Bottom screw", [...thick, ["screw lengths", "3/4; 1 1/4"]])).toEqual([[1.25, 2, "each"]]);
  });

  test("front screws stay 1/8 in inside box and front; two, or four on a wide front", () => {
    expect(of("Front screw")).toEqual([[1, 2, "each"]]);
    expect(of("Front screw", [["side thickness", "3/4"]])).toEqual([[1.25, 2, "each"]]);
    expect(of("Front screw", [["four screws from", 18]])).toEqual([[1, 4, "each"]]);
    expect(of("Front screw", [["front screws", "none"]])).toEqual([]);
    expect(of("Front screw", [["front screw length", "1 1/8"]])).toEqual([[1.125, 2, "each"]]);
  });

  /** common practice: what a screw pulls together lies on something solid */
  test("behind a box front that its dadoes set back, front screws go through packers as thick as that", () => {
    const dado = (...own: unknown[][]) => [["corner joint", "dado"], ["joint depth", "1/4"], ...own];
    expect(of("Front screw", dado())).toEqual([[1.25, 2, "each"]]);
    const packed = (size: string) =>
      `from inside the box into its front; a packer ${size} thick at each, for the box front stands in from the sides' ends; No. 8, truss head (common practice)`;
    expect(note("Front screw", dado())).toBe(packed("1/4 in"));
    expect(note("Front screw", dado(["dado inset", "3/8"]))).toBe(packed("3/8 in"));
    expect(note("Pull screw", dado())).toMatch(/through box and front; a packer 1\/4 in thick at each/);
    for (const flush of [
      dado(["dado inset", "none"]),
      [],
      [
        ["corner joint", "rabbet"],
        ["joint depth", "1/4"],
      ],
    ])
      for (const screw of ["Front screw", "Pull screw"]) expect(note(screw, flush)).not.toMatch(/packer/);
  });

  test("pull screws go through box and front and 1/4 in on; a pull without spacing has one", () => {
    expect(of("Pull screw")).toEqual([[1.5, 2, "each"]]);
    expect(of("Pull screw", [["pull spacing", "none"]])).toEqual([[1.5, 1, "each"]]);
    expect([of("Pull", [["pull spacing", "none"]]), note("Pull", [["pull spacing", "none"]])]).toEqual([
      [["", 1, "each"]],
      "one hole",
    ]);
    expect(of("Pull screw", [["pull screw length", 2]])).toEqual([[2, 2, "each"]]);
    expect(of("Pull", [["pulls per front", "none"]])).toEqual([]);
  });

  test("a shop-made pull is screwed from inside through its strip, 1/8 in short of its plate's face", () => {
    const made = [["pull kind", "shop-made"]];
    expect(of("Shop-made pull", made)).toEqual([[6, 1, "each"]]);
    // 1/2 + 3/4 + 1/2 + 3/4 − 1/8 = 2 3/8.
    expect(of("Pull screw", made)).toEqual([[2.25, 2, "each"]]);
  });

  test("edge band goes round every front, glue along every corner; both in feet or meters, up to the next tenth", () => {
    // 2 × (483 + 533) = 2032 mm; 2 × (19 3/8 + 21 3/8) = 81 1/2 in = 6.79 ft.
    expect(of("Edge band", [["edge band", "1/32"]])).toEqual([[1 / 32, 6.8, "foot"]]);
    expect(note("Edge band", [["edge band", "1/32"]])).toMatch(/for edges 3\/4 in thick/);
    expect(
      of(
        "Edge band",
        [
          ["unit", "mm"],
          ["edge band", 1],
        ],
        openings(["A", 450, 500, 520, 1]),
      ),
    ).toEqual([[1, 2.1, "meter"]]);
    // Four corners of 19 1/4 are 77 in = 6.42 ft.
    expect(of("Glue")).toEqual([["", 6.5, "foot"]]);
    expect(of("Glue", [["glue", "none"]])).toEqual([]);
  });

  test("behind a face frame blocking fills half of what the case is wider than the opening", () => {
    const table = (caseWidth: unknown) => [
      ["Width", "Height", "Depth", "Drawers", "Case width"],
      [18, 20, 20.5, 2, caseWidth],
    ];
    const framed = [["construction", "face frame"]];
    expect(of("Blocking", framed, table(20))).toEqual([[1, 4, "each"]]);
    expect(of("Blocking screw", framed, table(20))).toEqual([[1.5, 12, "each"]]);
    expect(of("Blocking", framed, table(18))).toEqual([]);
    expect(of("Blocking", framed, table(""))).toEqual([["", 4, "each"]]);
    expect(note("Blocking", framed, table(""))).toBe(
      "20 in long and at least 2 1/2 in wide; give the Case width, and its thickness stands here",
    );
  });

  test("screws into a partition are listed apart, for slides stand on both its sides", () => {
    const rows = HARDWARE(openings(["A", 18, 20, 20.5, 1], ["B", 18, 20, 20.5, 1]));
    expect(rows.filter(([item]) => item === "Slide screw").map((row) => [row[2], row[4]])).toEqual([
      [12, `into the box sides, predrilled; ${PAN}`],
      [6, `into the cabinet's ends; ${PAN}`],
      [6, `into a partition: stagger them where both sides have them; ${PAN}`],
    ]);
  });

  test("a thin partition takes short screws from both its sides, a thin carcase long ones through the blocking", () => {
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Partition thickness"],
      [18, 20, 20.5, 1, "3/8"],
      [18, 20, 20.5, 1, ""],
    ];
    const into = (note: RegExp, rows: unknown[][]) =>
      rows.filter((row) => row[0] === "Slide screw" && note.test(String(row[4]))).map((row) => row.slice(1, 3));
    expect(into(/partition/, HARDWARE(table))).toEqual([[0.375, 6]]);
    expect(into(/cabinet/, HARDWARE(table))).toEqual([[0.625, 6]]);
    const framed = [
      ["Width", "Height", "Depth", "Drawers", "Case width", "Cabinet thickness"],
      [18, 20, 20.5, 1, 19, "1/4"],
    ];
    expect(into(/blocking/, HARDWARE(framed, [["construction", "face frame"]]))).toEqual([[0.625, 6]]);
  });

  test("one bad row fails the whole call and names it, so that nobody buys too little", () => {
    expect(shown(() => HARDWARE(openings(["A", 18, 10, 20.5, 1], ["B", 18, 10, 9, 1])))).toMatch(
      /^#N\/A Opening B: No slide fits/,
    );
    const table = [
      ["Width", "Height", "Depth", "Drawers", "Front screws"],
      [18, 20, 20.5, 1, "many"],
    ];
    expect(shown(() => HARDWARE(table))).toBe(
      '#VALUE! openings, row 2, Front screws is "many". It must be a whole number from 0 to 20.',
    );
  });
});
