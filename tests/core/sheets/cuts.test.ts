import { describe, expect, test } from "vitest";
import { add, ratio, subtract, showNumber, type Rational } from "../../../src/core/length";
import { sawCuts, type Part, type SawCut, type SawPiece } from "../../../src/core/sheets";
import { inches, piece, single, workedAnswer } from "./worked";

const SAFE = { length: ratio(6), width: ratio(3) };

const text = (value: Rational): string => showNumber(value, "in");
const said = ({ is, part, piece: number, length, width }: SawPiece): string =>
  `${is}${part !== undefined ? ` ${part}` : ""}${number !== undefined ? ` ${String.fromCharCode(63 + number)}` : ""} ${text(length)} × ${text(width)}`;
/** One line a cut; pieces are lettered in the order in which they first come off. */
const lines = (cuts: readonly SawCut[]): string[] =>
  cuts.map(
    ({ sheet, step, kind, setting, from, gives }) =>
      `${sheet}.${step} ${kind} ${text(setting)}: ${said(from)} → ${gives.map(said).join(", ")}`,
  );
const wanted = (length: number | string, width: number | string): Part => ({
  name: "Top",
  quantity: 1,
  length: inches(length),
  width: inches(width),
  grain: "length",
});

describe("sawCuts(solution, safe)", () => {
  test("finishes each stage before the next, rips first, equal settings together and the largest first", () => {
    expect(lines(sawCuts(workedAnswer(), SAFE))).toEqual([
      "1.1 rip 20: sheet 96 × 48 → piece A 96 × 20, sheet 96 × 27 7/8",
      "1.2 rip 16: sheet 96 × 27 7/8 → piece B 96 × 16, offcut 96 × 11 3/4",
      "1.3 crosscut 40: piece A 96 × 20 → part 1 40 × 20, piece A 55 7/8 × 20",
      "1.4 crosscut 40: piece B 96 × 16 → part 2 40 × 16, piece B 55 7/8 × 16",
      "1.5 crosscut 30: piece A 55 7/8 × 20 → piece C 30 × 20, offcut 25 3/4 × 20",
      "1.6 crosscut 30: piece B 55 7/8 × 16 → part 0 30 × 16, offcut 25 3/4 × 16",
      "1.7 rip 16: piece C 30 × 20 → part 0 30 × 16, offcut 30 × 3 7/8",
    ]);
  });

  test("a sheet that is one part needs no cut", () => {
    expect(sawCuts(workedAnswer(), SAFE).filter(({ sheet }) => sheet === 2)).toEqual([]);
  });

  test("trims the long edges and then the short ones, each by the trim, before anything else", () => {
    const root = { ...piece("1/2", "1/2", 95, 47), part: { index: 0, turned: false } };
    expect(lines(sawCuts(single(wanted(95, 47), root, { trim: inches("1/2") }), SAFE))).toEqual([
      "1.1 rip 47 1/2: sheet 96 × 48 → sheet 96 × 47 1/2",
      "1.2 rip 47: sheet 96 × 47 1/2 → sheet 96 × 47",
      "1.3 crosscut 95 1/2: sheet 96 × 47 → sheet 95 1/2 × 47",
      "1.4 crosscut 95: sheet 95 1/2 × 47 → part 0 95 × 47",
    ]);
  });

  test("what is narrower than the kerf is lost in it, and the last of the piece still needs its cut", () => {
    // 48 − 47 15/16 = 1/16 in, less than the kerf of 1/8 in.
    const root = piece(0, 0, 96, 48, "rip", [
      { ...piece(0, 0, 96, 48), width: 47.9375 * 16, length: 96 * 16, part: { index: 0, turned: false } },
    ]);
    const sixteenths = { ...root, length: 96 * 16, width: 48 * 16 };
    expect(lines(sawCuts(single(wanted(96, "47 15/16"), sixteenths), SAFE))).toEqual([
      "1.1 rip 47 15/16: sheet 96 × 48 → part 0 96 × 47 15/16",
    ]);
  });

  test("sets the fence to what is kept, a part or a piece that holds one, and leaves the offcut, however large", () => {
    // One part of 40 × 40: crosscut 40 in off the sheet, then rip 40 in off that.
    const root = piece(0, 0, 96, 48, "crosscut", [
      piece(0, 0, 40, 48, "rip", [
        { ...piece(0, 0, 40, 40), part: { index: 0, turned: false } },
        piece(0, "40 1/8", 40, "7 7/8"),
      ]),
      piece("40 1/8", 0, "55 7/8", 48),
    ]);
    expect(lines(sawCuts(single(wanted(40, 40), root), SAFE))).toEqual([
      "1.1 crosscut 40: sheet 96 × 48 → piece A 40 × 48, offcut 55 7/8 × 48",
      "1.2 rip 40: piece A 40 × 48 → part 0 40 × 40, offcut 40 × 7 7/8",
    ]);
  });

  test.each<[string, [string, string], "rip" | "crosscut", string, SawCut["caution"]]>([
    ["that a crosscut keeps short, whatever is in hand", ["40", "20"], "crosscut", "5 7/8", "short"],
    ["that a rip keeps narrow, whatever is in hand", ["40", "20"], "rip", "2 7/8", "narrow"],
    ["that is ripped, and narrow", ["40", "2 7/8"], "rip", "1", "narrow"],
    ["that is ripped, and short along the fence", ["5 7/8", "20"], "rip", "4", "short"],
    ["both: short is said", ["5 7/8", "20"], "rip", "2", "short"],
    ["just long enough in a rip", ["6", "20"], "rip", "4", undefined],
    ["just long enough in a crosscut", ["40", "20"], "crosscut", "6", undefined],
    ["just wide enough in a rip", ["40", "20"], "rip", "3", undefined],
    ["narrow on the sled", ["40", "2"], "crosscut", "8", undefined],
  ])("warns of a piece %s", (_, [length, width], kind, kept, caution) => {
    const rip = kind === "rip";
    const left = (side: string): string => text(subtract(subtract(inches(side), inches(kept)), inches("1/8")));
    const root = piece(0, 0, length, width, kind, [
      { ...piece(0, 0, rip ? length : kept, rip ? kept : width), part: { index: 0, turned: false } },
      rip
        ? piece(0, text(add(inches(kept), inches("1/8"))), length, left(rip ? width : length))
        : piece(text(add(inches(kept), inches("1/8"))), 0, left(rip ? width : length), width),
    ]);
    const answer = single(wanted(rip ? length : kept, rip ? kept : width), root, {
      stock: [{ name: "small", length: inches(length), width: inches(width) }],
    });
    expect(sawCuts(answer, SAFE).map((cut) => cut.caution)).toEqual([caution]);
  });
});
