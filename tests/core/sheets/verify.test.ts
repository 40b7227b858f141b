import { describe, expect, test } from "vitest";
import { ratio } from "../../../src/core/length";
import { flaws, piecesOf, type Part, type Piece, type Solution } from "../../../src/core/sheets";
import { checked } from "../../../src/core/sheets/verify";
import { eighths, piece, single, workedAnswer } from "./worked";

/** An answer that may be spoilt. */
type Spoilable = { -readonly [K in keyof Solution]: Solution[K] } & { sheets: Solution["sheets"][number][] };

const root = (answer: Solution): Piece => answer.sheets[0]!.piece;
const partOf = (answer: Solution, index: number): Piece =>
  [...piecesOf(root(answer))].find(({ part }) => part?.index === index)!;
const strips = (answer: Solution): Piece[] => root(answer).cut!.into as Piece[];
/** Takes a row of the problem, to be changed. */
const open = <T>(row: T): { -readonly [K in keyof T]: T[K] } => row;

describe("flaws(solution)", () => {
  test("finds nothing in an answer that can be cut", () => expect(flaws(workedAnswer())).toEqual([]));

  test.each<[string, (answer: Spoilable) => unknown]>([
    ["sheet 1: it is of no stock", (a) => (a.sheets[0]!.stock = 7)],
    ["sheet 1: it is not the trimmed sheet", (a) => (root(a).length += 1)],
    ["sheet 2: it is not the trimmed sheet", (a) => (a.sheets[1]!.piece.x = 1)],
    ["sheet 1: it is not the trimmed sheet", (a) => (open(a.exact).trim = 4)],
    ["sheet 1: a piece has no size", (a) => strips(a).push(piece(0, 48, 96, 0))],
    ["sheet 1: a part is cut up", (a) => (partOf(a, 1).cut = { kind: "rip", into: [piece(0, 0, 40, 20)] })],
    ["sheet 1: a cut does not run edge to edge", (a) => (strips(a)[2]!.length -= eighths(10))],
    ["sheet 1: a cut does not run edge to edge", (a) => (strips(a)[2]!.x += eighths(10))],
    ["sheet 1: neighbors do not lie one kerf apart", (a) => (strips(a)[2]!.y -= 1)],
    ["sheet 1: pieces reach beyond what they are cut from", (a) => (strips(a)[2]!.width += 1)],
    ["sheet 1: something is left that is not listed", (a) => strips(a).pop()],
    ["sheet 1: something is left that is not listed", (a) => (strips(a)[2]!.width -= 2)],
    ["sheet 1: something is left that is not listed", (a) => (root(a).cut = { kind: "rip", into: [] })],
    [
      "sheet 1: a cut takes nothing off",
      (a) => (strips(a)[2]!.cut = { kind: "crosscut", into: [piece(0, "36 1/4", 96, "11 3/4")] }),
    ],
    ["sheet 1: a piece is of no part", (a) => (partOf(a, 1).part!.index = 9)],
    ["sheet 1: Back has not its size", (a) => (partOf(a, 1).width -= 1)],
    ["sheet 1: Back has not its size", (a) => (partOf(a, 1).part!.turned = true)],
    ["sheet 1: Side has not its size", (a) => (partOf(a, 2).part = { index: 0, turned: false })],
    ["sheet 1: Side lies against the grain", (a) => (partOf(a, 0).part!.turned = true)],
    ["sheet 1: Tall lies against the grain", (a) => (partOf(a, 2).part!.turned = false)],
    ["sheet 2: Back is cut from stock that it may not be cut from", (a) => (open(a.problem.parts[1]!).from = [0])],
    ["sheet 1: two parts overlap", (a) => (partOf(a, 0).x -= 2)],
    ["sheet 1: two parts overlap", (a) => (partOf(a, 2).y -= eighths(6))],
    ["Tall is there 0 times, not 1", (a) => delete partOf(a, 2).part],
    ["Back is there 2 times, not 3", (a) => (open(a.problem.parts[1]!).quantity = 3)],
    ["Side is there 4 times, not 2", (a) => a.sheets.push(a.sheets[0]!)],
    ["more of cutoff is cut than there is", (a) => (open(a.problem.stock[1]!).available = 0)],
    ["more of cutoff is cut than there is", (a) => a.sheets.push(a.sheets[1]!)],
  ])("finds that %s", (flaw, spoil) => {
    const answer = workedAnswer() as Spoilable;
    spoil(answer);
    expect(flaws(answer)).toContain(flaw);
  });

  test("a part that may turn, or that is cut from stock without grain, lies as it likes", () => {
    const answer = workedAnswer();
    open(answer.problem.parts[2]!).grain = "any";
    expect(flaws(answer)).toEqual([]);
    open(answer.problem.parts[2]!).grain = "length";
    expect(flaws(answer)).toEqual(["sheet 1: Tall lies against the grain"]);
    open(answer.problem.stock[0]!).grain = "none";
    expect(flaws(answer)).toEqual([]);
  });

  test("less than a kerf may be lost at the end of a piece, and so may a kerf", () => {
    const part = { name: "Top", quantity: 1, length: ratio(96), grain: "length" } as const;
    const cut = (width: string, left: Piece[]): Solution => {
      const top = { ...piece(0, 0, 96, width), part: { index: 0, turned: false } };
      return single({ ...part, width: ratio(eighths(width), 8) }, piece(0, 0, 96, 48, "rip", [top, ...left]));
    };
    expect(flaws(cut("47 7/8", []))).toEqual([]);
    expect(flaws(cut("47 3/4", []))).toEqual(["sheet 1: something is left that is not listed"]);
    expect(flaws(cut("47 3/4", [piece(0, "47 7/8", 96, "1/8")]))).toEqual([]);
  });
});

describe("checked(solution)", () => {
  test("hands back an answer that can be cut", () => {
    const answer = workedAnswer();
    expect(checked(answer)).toBe(answer);
  });

  test("throws at one that cannot, and says what is wrong first", () => {
    const answer = workedAnswer();
    partOf(answer, 0).part!.turned = true;
    expect(() => checked(answer)).toThrow("An answer cannot be cut as it says: sheet 1: Side has not its size.");
  });
});

describe("flaws(solution) of a grain group", () => {
  const front = (name: string): Part => ({
    name,
    quantity: 1,
    length: ratio(10),
    width: ratio(name === "F2" ? 18 : 20),
    grain: "length",
    grainGroup: "A",
  });
  /** Three fronts 10 in long side by side: 0, 10 1/8, 20 1/4; the second 18 in wide, with a strip beside it. */
  const row = (): Solution =>
    single(
      front("F1"),
      piece(0, 0, 96, 48, "rip", [
        piece(0, 0, 96, 20, "crosscut", [
          { ...piece(0, 0, 10, 20), part: { index: 0, turned: false } },
          piece("10 1/8", 0, 10, 20, "rip", [
            { ...piece("10 1/8", 0, 10, 18), part: { index: 1, turned: false } },
            piece("10 1/8", "18 1/8", 10, "1 7/8"),
          ]),
          { ...piece("20 1/4", 0, 10, 20), part: { index: 2, turned: false } },
          piece("30 3/8", 0, "65 5/8", 20),
        ]),
        piece(0, "20 1/8", 96, "27 7/8"),
      ]),
      { parts: [front("F1"), front("F2"), front("F3")] },
    );
  const strip = (answer: Solution): Piece[] => answer.sheets[0]!.piece.cut!.into[0]!.cut!.into as Piece[];
  const BROKEN = "the grain of group A does not run on";

  test("finds nothing in a row in the order of the table", () => expect(flaws(row())).toEqual([]));

  test("finds members in another order", () => {
    const answer = row();
    strip(answer)[0]!.part!.index = 2;
    strip(answer)[2]!.part!.index = 0;
    expect(flaws(answer)).toEqual([BROKEN]);
  });

  test("finds a member that is no neighbor, though it can be cut so", () => {
    const answer = row();
    // The third front goes to the far end of the strip: 96 − 10 = 86; what was behind it now lies before it.
    const [first, second, third, rest] = strip(answer) as [Piece, Piece, Piece, Piece];
    third.x = eighths(86);
    rest.x = eighths("20 1/4");
    answer.sheets[0]!.piece.cut!.into[0]!.cut = { kind: "crosscut", into: [first, second, rest, third] };
    expect(flaws(answer)).toEqual([BROKEN]);
  });

  test("finds a member out of line", () => {
    const answer = row();
    // The narrower front lies at the upper edge of its slice: 1 7/8 below it, and the kerf.
    const [member, beside] = strip(answer)[1]!.cut!.into as [Piece, Piece];
    beside.y = 0;
    member.y = eighths(2);
    strip(answer)[1]!.cut = { kind: "rip", into: [beside, member] };
    expect(flaws(answer)).toEqual([BROKEN]);
  });

  /** Two lines of two, 10 × 20 each, a kerf apart, the upper line from the left in the order F3, F4. */
  const panel = (upper: [number, number], lower: [number, number] = [0, 1]): Solution =>
    single(
      front("F1"),
      piece(0, 0, 96, 48, "crosscut", [
        piece(0, 0, "20 1/8", 48, "rip", [
          ...[lower, upper].map((line, k) =>
            piece(0, k === 0 ? 0 : "20 1/8", "20 1/8", 20, "crosscut", [
              ...line.map((index, i) => ({
                ...piece(i === 0 ? 0 : "10 1/8", k === 0 ? 0 : "20 1/8", 10, 20),
                part: { index, turned: false },
              })),
            ]),
          ),
          piece(0, "40 1/4", "20 1/8", "7 3/4"),
        ]),
        piece("20 1/4", 0, "75 3/4", 48),
      ]),
      { parts: [1, 1, 2, 2].map((grainLine, i) => ({ ...front(`F${i + 1}`), width: ratio(20), grainLine })) },
    );

  test("finds nothing in a panel whose lines lie one above another in their order", () =>
    expect(flaws(panel([2, 3]))).toEqual([]));

  test("finds a panel that is mirrored, upside down, or whose lines have changed places", () => {
    expect(flaws(panel([3, 2]))).toEqual([BROKEN]);
    expect(flaws(panel([0, 1], [2, 3]))).toEqual([BROKEN]);
    expect(flaws(panel([3, 2], [1, 0]))).toEqual([BROKEN]);
  });

  test("finds lines that lie nearer than their line gap", () => {
    const answer = panel([2, 3]);
    open(answer.problem.parts[0]!).lineGap = ratio(1, 4);
    (answer.exact.lineGaps as number[])[0]! *= 2;
    expect(flaws(answer)).toContain("sheet 1: neighbors do not lie one kerf apart");
    expect(flaws(answer)).toContain(BROKEN);
  });

  test("a row across the sheet is none, unless the stock has no grain", () => {
    const fronts = [0, 1, 2].map((index) => ({
      ...piece(0, ["0", "10 1/8", "20 1/4"][index]!, 20, 10),
      part: { index, turned: true },
    }));
    const parts = ["F1", "F2", "F3"].map((name) => ({ ...front(name), width: ratio(20) }));
    const across = (grain: "length" | "none"): Solution =>
      single(
        front("F1"),
        piece(0, 0, 96, 48, "crosscut", [
          piece(0, 0, 20, 48, "rip", [...fronts, piece(0, "30 3/8", 20, "17 5/8")]),
          piece("20 1/8", 0, "75 7/8", 48),
        ]),
        { parts, stock: [{ name: "sheet", length: ratio(96), width: ratio(48), grain }] },
      );
    expect(flaws(across("none"))).toEqual([]);
    expect(flaws(across("length"))).toContain(BROKEN);
  });
});
