import { describe, expect, test } from "vitest";
import { CHECKS, HARDWARE, PIECES, PLAN, SETUPS, WORKING } from "../../src/functions";
import { column, openings } from "./tables";

/** What an invented data sheet says; no maker's. */
const SHEET = {
  "undermount deduction": "1 5/8",
  "undermount thickest side": "5/8",
  "undermount space below": "1/2",
  "undermount space above": "1/4",
  "undermount bottom recess": "1/2",
  "undermount depth difference": "none",
  "undermount notch width": "1 3/8",
  "undermount notch height": "1/2",
  "undermount hook hole": "1/4",
  "undermount hook inset": "9/32",
  "undermount hook height": "7/16",
  "undermount hook depth": "3/8",
};
const STATED = Object.keys(SHEET).filter((name) => name !== "undermount deduction");
/** A box that keeps it, and raises nothing else. */
const KEPT = {
  slide: "undermount",
  "side thickness": "19/32",
  "bottom thickness": "7/32",
  "groove offset": "1/2",
  ...SHEET,
};
type Own = Record<string, string | number>;
const one = openings(["A", 18, 10, 20.5, 1]);
const job = (own: Own = {}): unknown[][] => Object.entries({ ...KEPT, ...own });
const without = (...names: string[]): unknown[][] => job().filter(([name]) => !names.includes(String(name)));
const found = (standards: unknown[][], table = one) =>
  CHECKS(table, standards)
    .slice(1)
    .map((row) => row.slice(0, 3));
const steps = (standards: unknown[][], operation: string, table = one) =>
  SETUPS(table, standards)
    .filter((row) => row[1] === operation)
    .map((row) => row.slice(2));
const working = (standards: unknown[][], size: string, table = one, drawer = "A1") =>
  WORKING(table, drawer, standards)
    .filter(([name]) => name === size)
    .map((row) => row.slice(1));
const ALL_CLEAR = [["", "", "All clear"]];
const FROM_SHEET = /take it from the slide's data sheet/;

describe("what an undermount slide's data sheet states is asked for", () => {
  test("all of it stated and kept, nothing is raised", () => expect(found(job())).toEqual(ALL_CLEAR));

  test("none of it stated, one doubtful row names all of it", () => {
    const [row, ...more] = CHECKS(one, without(...STATED)).slice(1);
    expect(row!.slice(0, 2)).toEqual(["A", "doubtful"]);
    for (const name of STATED) expect(row![2]).toContain(name);
    expect(row![3]).toMatch(FROM_SHEET);
    expect(more).toEqual([]);
  });

  test.each(STATED)("%s is named where it alone is left out, as a blank, or as a 0 that may be one", (name) => {
    for (const standards of [without(name), job({ [name]: "" }), job({ [name]: 0 })]) {
      const rows = CHECKS(one, standards).slice(1);
      expect(rows.map((row) => row.slice(0, 3))).toEqual([
        ["A", "doubtful", `Nothing is given for ${name}, which undermount slides need.`],
      ]);
      expect(rows[0]![3]).toMatch(FROM_SHEET);
    }
  });

  test.each(STATED.filter((name) => !/hook (inset|height)/.test(name)))(
    "%s of none says that the data sheet asks for nothing",
    (name) => expect(found(job({ [name]: "none" }))).toEqual(ALL_CLEAR),
  );

  test("two openings that lack the same stand in one row", () => {
    const two = openings(["A", 18, 10, 20.5, 1], ["B", 18, 10, 20.5, 1]);
    expect(found(without("undermount space above"), two)).toEqual([
      ["A, B", "doubtful", "Nothing is given for undermount space above, which undermount slides need."],
    ]);
  });

  test("a back that stands on its bottom needs no notch, and one without hooks no place for their holes", () => {
    const notch = ["undermount notch width", "undermount notch height"];
    expect(found([...without(...notch), ["bottom fit", "under back"]])).toEqual(ALL_CLEAR);
    const hook = STATED.filter((name) => /hook (inset|height|depth)/.test(name));
    expect(found([...without("undermount hook hole", ...hook), ["undermount hook hole", "none"]])).toEqual(ALL_CLEAR);
  });

  test("other slides are asked for none of it, and held against none of it, which is told", () => {
    const own = { slide: "side-mount", "slide screw length": "1/2", "undermount thickest side": "1/4" };
    expect(found(job({ ...own, "undermount depth difference": "1" }))).toEqual([
      [
        "standards",
        "doubtful",
        expect.stringMatching(/^The standards undermount .* no opening has undermount slides\.$/),
      ],
    ]);
    expect(column(PLAN(one, job({ ...own, "undermount depth difference": "1" })), "Box depth")).toEqual([20]);
    expect(steps(job(own), "Back notches")).toEqual([]);
  });

  test("a recess that nobody stated is doubtful below what is common practice, and is called so", () => {
    const rows = CHECKS(one, [...without("undermount bottom recess", "groove offset"), ["groove offset", "7/16"]]);
    const little = rows.find((row) => /groove offset/.test(String(row[2])));
    expect(little!.slice(1, 3)).toEqual(["doubtful", "A groove offset of 7/16 in is little for an undermount slide."]);
    expect(little![3]).toMatch(/^Common practice is about 1\/2 in \(13 mm\).*data sheet/);
  });
});

describe("what it states is held against the box", () => {
  const wrong = (own: Own, table = one) => found(job(own), table);

  test("sides thicker than it takes are wrong, sides as thick are not", () => {
    expect(wrong({ "undermount thickest side": "19/32" })).toEqual(ALL_CLEAR);
    expect(wrong({ "undermount thickest side": "37/64" })).toEqual([
      ["A", "wrong", "The sides are 19/32 in thick, and the undermount slide takes 37/64 in at most."],
    ]);
  });

  test("less space than it asks for below or above a box in its zone is wrong", () => {
    expect(wrong({ "undermount space below": "9/16" })).toEqual([
      ["A1", "wrong", "The box has 1/2 in below it, and the undermount slide asks for 9/16 in."],
    ]);
    // The height step leaves more above the box than the standard asks for.
    expect(wrong({ "undermount space above": "5/16" })).toEqual([
      ["A1", "wrong", "The box has 1/4 in above it, and the undermount slide asks for 5/16 in."],
    ]);
    expect(wrong({ "undermount space above": "5/16", "height step": "1/2" })).toEqual(ALL_CLEAR);
  });

  test("a recess not as asked for, by more than a cut errs, is wrong either way", () => {
    const recess = (asked: string) => [
      "A",
      "wrong",
      `The bottom lies 1/2 in above the sides' lower edge, and the undermount slide asks for ${asked} in.`,
    ];
    expect(wrong({ "undermount bottom recess": "13 mm" })).toEqual(ALL_CLEAR);
    expect(wrong({ "undermount bottom recess": "33/64" })).toEqual(ALL_CLEAR);
    expect(wrong({ "undermount bottom recess": "17/32" })).toEqual([recess("17/32")]);
    expect(wrong({ "undermount bottom recess": "15/32" })).toEqual([recess("15/32")]);
  });

  test("an applied bottom has no recess, which is wrong unless none is asked for", () => {
    const applied = { "bottom fit": "applied", "groove offset": "3/8" };
    expect(wrong(applied)).toEqual([["A", "wrong", "An applied bottom leaves no recess for an undermount slide."]]);
    expect(wrong({ ...applied, "undermount bottom recess": "none" })).toEqual(ALL_CLEAR);
  });

  test("a box not as deep as its slide asks for is wrong", () => {
    expect(wrong({ "box depth": "20" })).toEqual(ALL_CLEAR);
    expect(wrong({ "box depth": "19 1/2" })).toEqual([
      ["A", "wrong", "The box is 19 1/2 in deep, and an undermount slide 18 in long asks for 18 in."],
    ]);
    expect(wrong({ "box depth": "19 5/8", "undermount depth difference": "3/8" })).toEqual(ALL_CLEAR);
    expect(wrong({ "box depth": "20", "undermount depth difference": "3/8" })).toEqual([
      ["A", "wrong", "The box is 20 in deep, and an undermount slide 20 in long asks for 19 5/8 in."],
    ]);
  });

  test("notches that do not reach the bottom, or cut into its groove, are doubtful", () => {
    expect(wrong({ "undermount notch height": "3/8" })).toEqual([
      ["A", "doubtful", "The back's notches, 3/8 in high, end 1/8 in below the bottom, in the slide's way."],
    ]);
    expect(wrong({ "undermount notch height": "5/8" })).toEqual([
      ["A", "doubtful", "The back's notches, 5/8 in high, cut 1/8 in into the bottom's groove."],
    ]);
  });

  test("notches that leave nothing of the back, and hook holes beside it, are wrong", () => {
    expect(wrong({ "undermount notch width": "8 3/16" })).toEqual([
      ["A", "wrong", "Notches 8 3/16 in wide from both sides leave nothing of a back 16 3/8 in long."],
    ]);
    expect(wrong({ "undermount hook inset": "1/8" })).toEqual(ALL_CLEAR);
    const off = ["A1", "wrong", expect.stringMatching(/^The hook holes, 1\/4 in wide, .* do not lie within the back/)];
    expect(wrong({ "undermount hook inset": "7/64" })).toEqual([off]);
    expect(wrong({ "undermount hook height": "1/16" })).toEqual([off]);
    expect(wrong({ "undermount hook height": "10" })).toEqual([off]);
    // Under a back that is on its bottom lies that bottom, and the hole may be drilled into its edge.
    expect(wrong({ "bottom fit": "under back", "bottom thickness": "5/16" })).toEqual(ALL_CLEAR);
    const both = { "bottom fit": "under back", "bottom thickness": "11/32" };
    expect(wrong(both)).toEqual([
      [
        "A1",
        "doubtful",
        "The hook holes, 1/4 in wide and 7/16 in above the underside of the bottom, meet a bottom 11/32 in thick under the back.",
      ],
    ]);
    expect(steps(job(both), "Hook holes")).toEqual([]);
  });

  test("hooks reach for a back that is flush with the sides' ends, which one in dadoes is not", () => {
    const dado = { "corner joint": "dado", "joint depth": "1/4" };
    const inset = [
      "A",
      "doubtful",
      "The back stands 1/4 in short of the sides' ends, where the slide's hooks reach for it.",
    ];
    expect(wrong(dado)).toEqual([inset]);
    expect(found([...without("undermount hook hole"), ...Object.entries(dado)])).toContainEqual(inset);
    expect(wrong({ ...dado, "undermount hook hole": "none" })).toEqual(ALL_CLEAR);
    expect(wrong({ ...dado, "corner joint": "rabbet" })).toEqual(ALL_CLEAR);
  });

  test("a fit that is unlikely is mended by the deduction, and not by a side clearance, which these slides have not", () => {
    const [row] = CHECKS(one, job({ "thickness tolerance": "1/32" })).slice(1);
    expect(row![2]).toMatch(/^The side space is likely/);
    expect(row![3]).toMatch(
      /A larger or smaller box is set by the undermount deduction, as the slide's data sheet allows/,
    );
    expect(row![3]).not.toMatch(/side clearance/);
  });

  test("hook holes as deep as the back is thick come out of its face", () => {
    expect(wrong({ "undermount hook depth": "19/32" })).toEqual([
      ["A", "doubtful", "The hook holes, 19/32 in deep, come through a back 19/32 in thick."],
    ]);
  });

  test("the same holds in millimeters, and of one opening alone", () => {
    const mm = Object.entries({
      unit: "mm",
      slide: "undermount",
      "side thickness": 15,
      "groove offset": 13,
      "space below": 14,
      "undermount deduction": 42,
      "undermount thickest side": 16,
      "undermount space below": 14,
      "undermount space above": 6,
      "undermount bottom recess": 13,
      "undermount depth difference": 10,
      "undermount notch width": 35,
      "undermount notch height": 13,
      "undermount hook hole": 6,
      "undermount hook inset": 7,
      "undermount hook height": 11,
      "undermount hook depth": 10,
    });
    const table = [
      [...openings()[0]!, "Side thickness", "Undermount thickest side", "Undermount space above"],
      ["A", 450, 300, 520, 1, "", "", ""],
      ["B", 450, 300, 520, 1, 18, "", 7],
      ["C", 450, 300, 520, 1, 18, 19, ""],
    ];
    expect(found(mm, table)).toEqual([
      ["B1", "wrong", "The box has 6 mm above it, and the undermount slide asks for 7 mm."],
      ["B", "wrong", "The sides are 18 mm thick, and the undermount slide takes 16 mm at most."],
    ]);
    expect(column(PLAN(table, mm), "Box depth")).toEqual([490, 490, 490]);
    expect(steps(mm, "Back notches", table)).toEqual([
      ["From either end inward", 35, 3, "Box back A1, B1, C1"],
      ["From the lower edge up", 13, 3, "Box back A1, B1, C1"],
    ]);
  });
});

describe("the box of an undermount slide", () => {
  test("is shorter than its slide by the data sheet's difference, and the slide is as much longer than an own depth", () => {
    const plan = (own: Own) => {
      const table = PLAN(one, job(own));
      return [column(table, "Box depth")[0], column(table, "Slide length")[0]];
    };
    expect(plan({})).toEqual([20, 20]);
    expect(plan({ "undermount depth difference": "3/8" })).toEqual([19.625, 20]);
    expect(plan({ "undermount depth difference": "3/8", "box depth": "17 5/8" })).toEqual([17.625, 18]);
    expect(working(job({ "undermount depth difference": "3/8" }), "Box depth")).toEqual([
      [19.625, "slide length 20 − undermount depth difference 3/8"],
    ]);
  });

  test("WORKING shows where its bottom rests, its notches and its hook holes", () => {
    expect(working(job(), "Bottom recess")).toEqual([[0.5, "groove offset 1/2"]]);
    expect(working(job(), "Underside of the bottom")).toEqual([[1, "box bottom 1/2 + groove offset 1/2"]]);
    expect(working(job(), "Back notch from the end")).toEqual([[1.375, "notch width 1 3/8"]]);
    expect(working(job(), "Hook hole from the back's lower edge")).toEqual([
      [0.9375, "groove offset 1/2 + hook height 7/16"],
    ]);
    const rabbet = job({ "corner joint": "rabbet", "joint depth": "1/4" });
    expect(working(rabbet, "Back notch from the end")).toEqual([[1.625, "notch width 1 3/8 + rabbet depth 1/4"]]);
    const behind = job({ "bottom fit": "under back" });
    expect(working(behind, "Hook hole from the back's lower edge")).toEqual([
      [7 / 32, "hook height 7/16 − bottom thickness 7/32"],
    ]);
    expect(working(behind, "Back notch from the end")).toEqual([]);
    expect(working(job({ slide: "side-mount" }), "Bottom recess")).toEqual([]);
  });
});

describe("SETUPS notches and drills the back before the box is glued", () => {
  test("notches and hook holes are set from the back's ends and its lower edge", () => {
    expect(steps(job(), "Back notches")).toEqual([
      ["From either end inward", 1.375, 1, "Box back A1"],
      ["From the lower edge up", 0.5, 1, "Box back A1"],
    ]);
    expect(steps(job(), "Hook holes")).toEqual([
      ["Bit", 0.25, 1, "Box back A1"],
      ["Depth stop", 0.375, 1, "Box back A1"],
      ["Fence, from the back's lower edge to the hole", 0.9375, 1, "Box back A1"],
      ["Stop block, from either end to the hole", 0.28125, 1, "Box back A1"],
    ]);
  });

  test.each([
    ["butt", 0],
    ["rabbet", 1 / 4],
    ["dado", 1 / 4],
    ["dovetail", 19 / 32],
    ["half-blind dovetail", 19 / 32],
    ["box joint", 19 / 32],
  ])("in a %s the back reaches %s past the side's inner face, and so much farther in they are", (joint, past) => {
    const standards = job({ "corner joint": joint, "joint depth": "1/4" });
    expect(steps(standards, "Back notches")[0]![1]).toBe(1.375 + past);
    expect(steps(standards, "Hook holes").at(-1)![1]).toBe(0.28125 + past);
  });

  test("a back on its bottom has no notch; its holes are lower by the bottom", () => {
    const standards = job({ "bottom fit": "under back" });
    expect(steps(standards, "Back notches")).toEqual([]);
    expect(steps(standards, "Hook holes")[2]![1]).toBe(7 / 32);
  });

  test("none of them where the data sheet asks for none; no depth stop where holes go through", () => {
    expect(steps(job({ "undermount notch width": "none" }), "Back notches")).toEqual([]);
    expect(steps(job({ "undermount hook hole": "none" }), "Hook holes")).toEqual([]);
    expect(steps(job({ "undermount hook depth": "none" }), "Hook holes").map(([setting]) => setting)).toEqual([
      "Bit",
      "Fence, from the back's lower edge to the hole",
      "Stop block, from either end to the hole",
    ]);
  });

  test("what no inch rule has says its millimeters, for data sheets are often metric", () => {
    const own = { "undermount hook hole": "6 mm", "undermount hook inset": "7 mm", "undermount hook depth": "10 mm" };
    const rows = steps(
      job({ ...own, "undermount notch width": "35 mm", "undermount hook height": "11 mm" }),
      "Hook holes",
    );
    expect(rows.map(([setting]) => setting)).toEqual([
      "Bit, 6 mm",
      "Depth stop, 10 mm",
      "Fence, from the back's lower edge to the hole, 23.7 mm",
      "Stop block, from either end to the hole, 7 mm",
    ]);
    expect(rows[0]![1]).toBeCloseTo(0.23622, 5);
    expect(steps(job({ "undermount notch width": "35 mm" }), "Back notches").map(([setting]) => setting)).toEqual([
      "From either end inward, 35 mm",
      "From the lower edge up",
    ]);
  });

  test("each kind of work has its caution before it, and what is not stated is asked for there", () => {
    const cautions = (standards: unknown[][]) =>
      SETUPS(one, standards).flatMap((row, i, rows) =>
        row[1] === "Caution" ? [`${rows[i + 1]?.[1]}: ${row[2]}`] : [],
      );
    const [notches, holes] = cautions(job()).slice(-3);
    expect(notches).toMatch(/^Back notches: .*clamp.*data sheet/i);
    expect(notches).toMatch(/What stands within a corner joint may stay\./);
    expect(holes).toMatch(/^Hook holes: .*clamp.*eye protection.*data sheet/i);
    expect(cautions(job()).some((words) => /not given/.test(words))).toBe(false);
    const asked = cautions(without("undermount notch width", "undermount hook inset")).filter((words) =>
      /not given/.test(words),
    );
    expect(asked).toHaveLength(1);
    expect(asked[0]).toMatch(/undermount notch width, undermount hook inset.*data sheet/);
  });

  test("every back goes through them once, also of copies", () => {
    const table = [
      [...openings()[0]!, "Quantity"],
      ["A", 18, 20, 20.5, 2, 3],
    ];
    const notch = SETUPS(table, job()).filter((row) => row[1] === "Back notches");
    expect(notch.map((row) => row[4])).toEqual([6, 6]);
    const backs = PIECES(table, job()).filter((row) => row[2] === "Box back");
    for (const back of backs)
      expect(String(back.at(-1)).split(", ")).toEqual(expect.arrayContaining([String(notch[0]![0])]));
  });
});

describe("HARDWARE lists locking devices", () => {
  test("a left and a right one for each undermount drawer, and none for others", () => {
    const rows = (standards: unknown[][], table = one) =>
      HARDWARE(table, standards).filter(([item]) => item === "Locking device");
    expect(rows(job())).toEqual([
      ["Locking device", "", 1, "pair", expect.stringMatching(/left and right.*box front.*data sheet/)],
    ]);
    const three = [
      [...openings()[0]!, "Quantity"],
      ["A", 18, 26, 20.5, 3, 2],
    ];
    expect(rows(job(), three)[0]![2]).toBe(6);
    expect(rows(job({ slide: "side-mount" }))).toEqual([]);
  });
});

describe("what is no such size is refused by its name", () => {
  const message = (name: string, value: unknown): string => {
    try {
      SETUPS(one, [...without(name), [name, value]]);
    } catch (error) {
      return (error as Error).message;
    }
    return "";
  };
  test.each(STATED)("%s", (name) => {
    expect(message(name, "half")).toMatch(new RegExp(`^standards, ${name} is "half", which is no length`));
    expect(message(name, -1)).toMatch(new RegExp(`^standards, ${name} is -1 in\\. It must be (0 or )?more`));
    expect(message(name, true)).toMatch(new RegExp(`^standards, ${name} is TRUE, which is no length`));
  });
  test("a difference as great as the slide leaves no box", () => {
    expect(message("undermount depth difference", 20)).toMatch(/^Opening A: box depth is 0 in/);
  });
});
