import { describe, expect, test } from "vitest";
import { CHECKS, EMC, HARDWARE, PIECES, QUOTE, SETUPS, WORKING } from "../../src/functions";
import { openings } from "./tables";

const table = openings(["A", 18, 12, 21.5, 2]);
const CHERRY = [
  ["bottom material", "Cherry"],
  ["bottom thickness", "3/8"],
  ["bottom fit", "under back"],
];
/** Black cherry, flat sawn, moves by 0.00248 of its width a percent of moisture: Wood Handbook, FPL-GTR-190, Table 13-5. */
const moved = (across: number, from: number, to: number, share = 0.00248): number =>
  across * share * (EMC(70, to) - EMC(70, from));

const found = (standards: unknown[][], about: RegExp, rows = table) =>
  CHECKS(rows, standards)
    .slice(1)
    .filter(([, , finding]) => about.test(String(finding)));
const hardware = (standards: unknown[][], item: RegExp, rows = table) =>
  HARDWARE(rows, standards).filter(([name]) => item.test(String(name)));
const slots = (standards: unknown[][], rows = table) =>
  SETUPS(rows, standards).filter(([, operation]) => operation === "Bottom slots");
/** 20 deep, sides of 1/2: 20 − 1/2 + 1/4 − 1/16. */
const DEEP = 19.6875;

describe("a solid bottom that runs under the back", () => {
  // From its rear edge: half of the back, half of a bit of 3/16, and what the bottom swells.
  const least = 0.25 + 3 / 32 + moved(DEEP, 45, 60);

  test("is held by screws with washers, in slots as long as it moves", () => {
    const [screw] = hardware(CHERRY, /^Bottom screw$/);
    expect(screw!.slice(1, 4)).toEqual([1.25, 4, "each"]);
    expect(screw![4]).toMatch(
      /^up through slots, 1\/2 in long and open at the bottom's rear edge, into the box back; .*snug, not tight/,
    );
    const [washer] = hardware(CHERRY, /^Washer$/);
    expect(washer!.slice(2)).toEqual([
      4,
      "each",
      "under the heads of the bottom screws, over their slots; for No. 6 screws",
    ]);
  });

  test("slots longer than the back is thick reach into the drawer, which is doubtful", () => {
    const past = (standards: unknown[][]) => found([...CHERRY, ...standards], /^The slots/);
    expect(past([])).toEqual([]);
    // Of 3/8 half, half of a bit of 3/16 and 0.125 swelling: 0.40625, up to 7/16.
    const [row] = past([["end thickness", "3/8"]]);
    expect(row).toEqual([
      "A",
      "doubtful",
      "The slots for the bottom's screws, 7/16 in long, reach past a back 3/8 in thick, into the drawer.",
      "Take a thicker back, quartersawn boards or a sheet.",
    ]);
    expect(
      past([
        ["end thickness", "3/8"],
        ["bottom screws", "none"],
      ]),
    ).toEqual([]);
  });

  test("plain screws hold a sheet, and nothing a bottom in grooves", () => {
    const sheet = CHERRY.slice(1);
    expect(String(hardware(sheet, /^Bottom screw$/)[0]![4])).not.toMatch(/slot/);
    for (const standards of [sheet, [...CHERRY.slice(0, 2), ["bottom fit", "grooved"]]]) {
      expect([hardware(standards, /^Washer$/), slots(standards)]).toEqual([[], []]);
    }
  });

  test("SETUPS sets bit, length and places of the slots, with the grain and a caution before them", () => {
    expect(slots(CHERRY).map((row) => row.slice(2))).toEqual([
      ["Width of the bit", 0.1875, 2, "Bottom A1, A2"],
      ["Length, in from the rear edge and open there", 0.5, 2, "Bottom A1, A2"],
      // The bottom is 17 − 1 + 1/2 − 1/16 wide: each of its two slots stands in the middle of its half, 4.109, down to a
      // 16th.
      ["Stop block, from either end to the slot's middle", 4.0625, 2, "Bottom A1, A2"],
    ]);
    const steps = SETUPS(table, CHERRY);
    const caution = steps[steps.findIndex(([, operation]) => operation === "Bottom slots") - 1]!;
    expect(caution[1]).toBe("Caution");
    expect(caution[2]).toMatch(/grain .* side to side.*Clamp/s);
    expect(least).toBeGreaterThan(0.4375);
    expect(least).toBeLessThan(0.5);
  });

  test("of an odd number of slots one is in the middle, exactly", () => {
    const three = slots([...CHERRY, ["bottom screws", 3]]).filter(([, , setting]) => /^Stop/.test(String(setting)));
    expect(three.map((row) => row[3])).toEqual([2.6875, 16.4375 / 2]);
  });

  test("a piece's label names the steps of its slots", () => {
    const pieces = PIECES(table, CHERRY);
    const bottom = pieces.find(([, , part]) => part === "Bottom")!;
    const steps = SETUPS(table, CHERRY)
      .filter(([, operation]) => operation === "Bottom slots")
      .map(([step]) => String(step));
    expect(String(bottom[pieces[0]!.indexOf("Set-ups")]).split(", ")).toEqual(expect.arrayContaining(steps));
  });

  test("WORKING tells how much it moves over the year, and the sum of its slot", () => {
    const rows = WORKING(table, "A1", CHERRY);
    const [, moves, how] = rows.find(([name]) => name === "Bottom moves")!;
    expect(moves).toBeCloseTo(moved(DEEP, 30, 60), 9);
    expect(how).toMatch(/19 11\/16 across its grain × 0\.00248 × [\d.]+ % .*30 and 60 % humidity.*estimate/);
    expect(rows.find(([name]) => name === "Bottom slot")!.slice(1)).toEqual([
      0.5,
      expect.stringMatching(
        /^half of the back 1\/4 \+ half of the bit 3\/32 \+ swelling ≈.* up to a multiple of 1\/16$/,
      ),
    ]);
  });

  test("wood that moves more gets longer slots; one not known by name is reckoned as one that moves most", () => {
    const length = (material: string) =>
      slots([["bottom material", material], ...CHERRY.slice(1)]).find(([, , s]) => /^Length/.test(String(s)))![3];
    const all = ["Western redcedar", "Cherry", "Beech", "Shop boards"].map(length) as number[];
    expect([...all].sort((a, b) => a - b)).toEqual(all);
    // Beech, American: 0.00431.
    expect(all[2]).toBe(Math.ceil((0.25 + 3 / 32 + moved(DEEP, 45, 60, 0.00431)) * 16) / 16);
    expect(String(hardware([["bottom material", "Shop boards"], ...CHERRY.slice(1)], /^Bottom screw$/)[0]![4])).toMatch(
      /a wood not known by name/,
    );
  });

  test("in millimeters slots are whole millimeters, their bit 5", () => {
    const rows = slots(
      [["unit", "mm"], ["bottom thickness", 10], CHERRY[0]!, CHERRY[2]!],
      openings(["A", 450, 300, 560, 1]),
    );
    expect(rows[0]![3]).toBe(5);
    // 550 deep: 550 − 12 + 6 − 1.5; half of a back of 12, half of a bit of 5.
    const swells = 542.5 * 0.00248 * (EMC(21, 60, "C" as never) - EMC(21, 45, "C" as never));
    expect(rows[1]![3]).toBe(Math.ceil(6 + 2.5 + swells));
  });

  test("a bottom that shrinks out from its screws is doubtful", () => {
    const deep = openings(["A", 18, 12, 29, 1]);
    const beech = [["bottom material", "Beech"], ...CHERRY.slice(1)];
    expect(found(CHERRY, /draws out/, deep)).toEqual([]);
    expect(found([...beech, ["end thickness", "3/4"]], /draws out/, deep)).toEqual([]);
    const [row] = found(beech, /draws out/, deep);
    expect(row!.slice(0, 2)).toEqual(["A", "doubtful"]);
    const by = moved(28 - 0.3125, 30, 45, 0.00431);
    expect(row![2]).toContain(`shrinks by an estimated ${Number(by.toFixed(3))} in`);
  });

  test("washers stand in a quote uncharged, as blocking does, and are no screws", () => {
    const stock = [
      ["Length", "Width", "Price"],
      [96, 48, 60],
    ];
    const rates = [
      ["slide price", 18],
      ["pull price", 6],
      ["screw price", 1],
    ];
    const lines = QUOTE(table, CHERRY, stock, rates);
    expect(lines.find(([, item]) => /^Washer/.test(String(item)))).toEqual([
      "Hardware",
      "Washer (no rate of its own)",
      4,
      "each",
      "",
      "",
    ]);
    const screws = HARDWARE(table, CHERRY).filter(([item]) => /screw|nail/i.test(String(item)));
    expect(lines.find(([, item]) => item === "Screws and nails")![2]).toBe(
      screws.reduce((sum, row) => sum + (row[2] as number), 0),
    );
  });
});

describe("a solid bottom in grooves", () => {
  const grooved = (more: unknown[][]) => [...CHERRY.slice(0, 2), ["bottom fit", "grooved"], ...more];
  const of = (more: unknown[][]) => found(grooved(more), /^The bottom/)[0]!;
  // 20 − 1 + 1/2 − play.
  const across = (play: number) => 19.5 - play;

  test("that swells by more than its play forces the corners: by how much, and the play that it needs, are told", () => {
    const by = moved(across(1 / 16), 45, 60);
    const row = of([]);
    expect(row[2]).toContain(
      `It swells by an estimated ${Number(by.toFixed(3))} in as the air goes from 45 to 60 % humidity, and has a play of 1/16 in in its grooves.`,
    );
    expect(row[3]).toMatch(/^Make the bottom play at least 1\/8 in/);
    expect(by).toBeGreaterThan(1 / 16);
    expect(by).toBeLessThan(1 / 8);
  });

  test("in a groove too shallow for that play wants a deeper one besides", () => {
    const shrinks = moved(19.375 - 1 / 16, 30, 45);
    // What 1/8 of play leaves in a groove of 3/16.
    expect(shrinks).toBeGreaterThan(1 / 16);
    expect(of([["groove depth", "3/16"]])[3]).toMatch(
      /^Make the bottom play at least 1\/8 in, and the groove depth more than 3\/16 in, glue it nowhere/,
    );
    expect(of([])[3]).not.toMatch(/groove depth/);
  });

  test("with the play that it needs floats, and is not to be glued", () => {
    const row = of([["bottom play", "1/8"]]);
    expect(row[2]).toMatch(/floats in its grooves/);
    expect(row[3]).toMatch(/grain from side to side.*glue/);
  });

  test("that shrinks out of a groove is doubtful", () => {
    const shallow = [
      ["groove depth", "3/16"],
      ["bottom play", "1/8"],
    ];
    const by = moved(19.375 - 0.125, 30, 45);
    expect(by).toBeGreaterThan(1 / 16);
    expect(of(shallow)[2]).toContain(`shrinks by an estimated ${Number(by.toFixed(3))} in`);
    expect(of(shallow)[3]).toMatch(/groove depth/);
  });
});

test("a solid front is screwed on through holes with room, a sheet through plain ones", () => {
  const note = (material: string) => String(hardware([["front material", material]], /^Front screw$/)[0]![4]);
  expect(note("Cherry")).toMatch(
    /^from inside the box into its front of solid wood, which moves: oversize holes in the box, snug, not tight; /,
  );
  expect(note("Plywood")).toMatch(/^from inside the box into its front; /);
});

describe("the gap round a solid inset front", () => {
  const inset = (more: unknown[][]) => [["front style", "inset"], ["front material", "Cherry"], ...more];
  const single = openings(["A", 18, 20, 21.5, 1]);

  test("that closes at the greatest humidity is doubtful, and the remedy names the gap that it needs", () => {
    const [row] = found(inset([["inset gap", "1/32"]]), /swells/, single);
    // Half of the swelling on each side.
    const half = moved(18 - 1 / 16, 45, 60) / 2;
    expect(half).toBeGreaterThan(3 / 64);
    expect(half).toBeLessThan(1 / 16);
    expect(row![3]).toMatch(/^Make the inset gap more than 1\/16 in/);
  });

  test("of a wood not known by name cannot be told, and is doubtful", () => {
    const boards = [
      ["front style", "inset"],
      ["front material", "Shop boards"],
    ];
    expect(found(boards, /its movement cannot be told/i, single)[0]!.slice(0, 2)).toEqual(["A1", "doubtful"]);
    expect(found([...boards, ["species", "cherry"]], /its movement cannot be told/i, single)).toEqual([]);
    expect(found([["front material", "Shop boards"]], /its movement cannot be told/i, single)).toEqual([]);
  });
});

describe("the gaps above and below a solid front whose grain runs from side to side", () => {
  const lying = (more: unknown[][], drawers: unknown, unit: unknown[][] = []) =>
    found(
      [["front material", "Cherry"], ["front grain", "horizontal"], ...unit, ...more],
      /swells/,
      openings(["A", 18, 20, 21.5, drawers]),
    );
  /** What is found of a front: its drawers, its room, and the gap that it needs. */
  const told = (rows: unknown[][]) =>
    rows.map(([where, , words, remedy]) => [
      where,
      /and has (.*) of room/.exec(String(words))![1],
      /^Make the (.*), turn/.exec(String(remedy))![1],
    ]);
  const inset = (inner: string, between: string) => [
    ["front style", "inset"],
    ["inset gap", inner],
    ["front gap", between],
  ];

  test("two stacked fronts swell by half each into the gap between them", () => {
    const by = moved(8, 45, 60);
    expect(by).toBeGreaterThan(1 / 32);
    expect(by).toBeLessThan(1 / 16);
    const rows = lying([["front gap", "1/32"]], "8 in; 8 in");
    expect(told(rows)).toEqual([["A1, A2", "1/32 in", "front gap more than 1/16 in"]]);
    expect(rows[0]![2]).toContain(`8 in across its grain, swells by an estimated ${Number(by.toFixed(3))} in`);
    expect(lying([["front gap", "1/16"]], "8 in; 8 in")).toEqual([]);
  });

  test("an overlay front that stands alone has nothing to swell into", () => {
    expect(lying([["front gap", "1/64"]], 1)).toEqual([]);
  });

  test("inset, the ends of the stack have the inset gap at one side: the lesser room counts", () => {
    // 6 in swell by 1/32 to 1/16; half of it is up to 1/32.
    const by = moved(6, 45, 60);
    expect(by).toBeGreaterThan(1 / 32);
    expect(by).toBeLessThan(1 / 16);
    const three = "6 in; 6 in; 6 in";
    expect(told(lying(inset("1/64", "1/8"), three))).toEqual([["A1, A3", "1/32 in", "inset gap more than 1/32 in"]]);
    expect(told(lying(inset("1/8", "1/32"), three))).toEqual([
      ["A1, A2, A3", "1/32 in", "front gap more than 1/16 in"],
    ]);
    expect(lying(inset("1/32", "1/16"), three)).toEqual([]);
  });

  test("one inset front has the inset gap at both sides", () => {
    expect(told(lying(inset("1/64", "1/8"), "6 in"))).toEqual([["A1", "1/32 in", "inset gap more than 1/32 in"]]);
  });
});

test("in millimeters what swells is told to a tenth, and the gap that it needs in halves", () => {
  const [row] = found(
    [
      ["unit", "mm"],
      ["front style", "inset"],
      ["inset gap", 1],
      ["front material", "Cherry"],
    ],
    /swells/,
    openings(["A", 450, 500, 540, 1]),
  );
  const by = 448 * 0.00248 * (EMC(21, 60, "C" as never) - EMC(21, 45, "C" as never));
  expect(row![2]).toBe(
    `The front of Cherry, black, 448 mm across its grain, swells by an estimated ${by.toFixed(1)} mm as the air goes from 45 to 60 % humidity, and has 2 mm of room.`,
  );
  expect(by / 2).toBeGreaterThan(1);
  expect(by / 2).toBeLessThan(1.5);
  expect(row![3]).toMatch(/^Make the inset gap more than 1\.5 mm,/);
});
