import { describe, expect, test } from "vitest";
import { CHECKS, QUOTE, SHEETS } from "../../src/functions";
import { shown } from "../cell";
import { openings } from "./tables";

const STOCK = ["Material", "Thickness", "Price", "Sold by", "Waste", "Length", "Width"];
const boards = (...thicknesses: unknown[]) => [
  STOCK,
  ...thicknesses.map((thickness) => ["Cherry", thickness, 9, "board foot", "", "", ""]),
];
/** One piece of 144 × 1: a board foot for every inch of thickness. */
const parts = (...thicknesses: unknown[]) => [
  ["Part", "Length", "Width", "Thickness", "Material", "Qty"],
  ...thicknesses.map((thickness, i) => [`P${i + 1}`, 144, 1, thickness, "Cherry", 1]),
];
const expectNotAvailable = (call: () => unknown, message: RegExp): void =>
  expect(shown(call)).toMatch(new RegExp(`^#N/A .*${message.source}`));
/** Thickness and quantity of each row of stock that is bought. */
const bought = (stock: unknown[][], of: unknown[][], unit?: string) =>
  SHEETS(of, stock, "1/8", 0, "quick" as never, unit as never)
    .slice(1)
    .map((row) => [row[1], row[3]]);

describe("solid stock sold by the board foot", () => {
  test("is tallied at its rough thickness: 3/4 parts come from 4/4", () => {
    expect(bought(boards(1), parts("3/4"))).toEqual([[1, 1]]);
    expect(bought(boards("1 1/4"), parts(1))).toEqual([[1.25, 1.25]]);
    expect(bought(boards(2), parts("1 3/4"))).toEqual([[2, 2]]);
  });

  test("yields parts up to 3/8 in thinner, and no thinner ones", () => {
    expect(bought(boards(1), parts("5/8"))).toEqual([[1, 1]]);
    expectNotAvailable(() => bought(boards(1), parts("9/16")), /no stock/);
    // Nor thicker ones.
    expectNotAvailable(() => bought(boards(1), parts("1 1/16")), /no stock/);
  });

  test("of several quarters the thinnest that leaves something to plane is taken, whatever their order", () => {
    for (const stock of [boards(1, "1 1/4", "1 1/2", 2), boards(2, "1 1/2", "1 1/4", 1)]) {
      const taken = (thickness: unknown) => bought(stock, parts(thickness))[0]![0];
      // 4/4 ends at 13/16, 5/4 at 1 1/16, 6/4 at 1 5/16, 8/4 at 1 3/4: National Hardwood Lumber Association, rules for
      // surfaced lumber; from memory.
      expect(["5/8", "3/4", "13/16", "7/8", 1, "1 1/16", "1 1/4", "1 5/16", "1 5/8", "1 3/4"].map(taken)).toEqual([
        1, 1, 1, 1.25, 1.25, 1.25, 1.5, 1.5, 2, 2,
      ]);
    }
    // Boards of other thicknesses lie nearer together: both of these leave something to plane.
    for (const stock of [boards(1, "15/16"), boards("15/16", 1)])
      expect(bought(stock, parts("3/4"))).toEqual([[0.9375, 1]]);
    expect(bought(boards(1, "1 1/4"), parts("3/4", 1))).toEqual([
      [1, 1],
      [1.25, 1.25],
    ]);
  });

  test("that is sold planed to the part's own thickness is nearest", () => {
    expect(bought(boards(1, "3/4"), parts("3/4"))[0]![0]).toBe(0.75);
  });

  test("under 1 in counts as 1 in, as lumberyards tally (National Hardwood Lumber Association, from memory)", () => {
    expect(bought(boards("3/4"), parts("3/4"))).toEqual([[0.75, 1]]);
    expect(bought(boards("13/16"), parts("3/4"))).toEqual([[0.8125, 1]]);
    const cubic = [STOCK, ["Cherry", 20, 9000, "cubic meter", "", "", ""]];
    const metric = [parts()[0]!, ["P", 2000, 500, 20, "Cherry", 5]];
    expect(bought(cubic, metric, "mm")).toEqual([[20, 0.1]]);
  });

  test("sheets stay within 1/32 in of their parts", () => {
    const sheets = [STOCK, ["Cherry", 1, 60, "", "", 150, 48]];
    for (const thin of ["3/4", "61/64"]) expectNotAvailable(() => bought(sheets, parts(thin)), /no stock/);
    expect(bought([...sheets, boards(1)[1]!], parts("31/32"))[0]!.slice(0, 2)).toEqual([1, 1]);
  });

  test("in millimeters parts up to 10 mm thinner are cut from it", () => {
    const cubic = [STOCK, ["Oak", 27, 2000, "cubic meter", 10, "", ""]];
    const oak = (thickness: number) => [parts()[0]!, ["P", 1000, 100, thickness, "Oak", 10]];
    expect(bought(cubic, oak(20), "mm")[0]![1]).toBeCloseTo(0.0297, 12);
    expect(bought(cubic, oak(17), "mm")[0]![1]).toBeCloseTo(0.0297, 12);
    expectNotAvailable(() => bought(cubic, oak(16), "mm"), /no stock/);
  });

  test("QUOTE charges what SHEETS tallies", () => {
    const plywood = ["Plywood", "", 60, "", "", 96, 48];
    const rates = [
      ["slide price", 18],
      ["pull price", 6],
      ["screw price", 0.1],
    ];
    const standards = [["front material", "Cherry"]];
    const line = (thickness: unknown) =>
      QUOTE(openings(["A", 18, 12, 21.5, 1]), standards, [STOCK, boards(thickness)[1]!, plywood], rates).find(
        ([section]) => section === "Solid stock",
      )!;
    const [rough, finished] = [line(1), line("")];
    expect(rough.slice(0, 2)).toEqual(["Solid stock", "Cherry, 1 in"]);
    expect(rough[2]).toBeCloseTo(((finished[2] as number) * 4) / 3, 12);
  });
});

describe("CHECKS of solid stock", () => {
  const found = (thickness: unknown, front: unknown = "3/4") =>
    CHECKS(
      openings(["A", 18, 12, 21.5, 1]),
      [
        ["front material", "Cherry"],
        ["front thickness", front],
      ],
      [...boards(thickness), ["Plywood", "", "", "", "", 96, 48]],
    )
      .slice(1)
      .filter(([where, , words]) => where === "stock" || /no stock/.test(String(words)))
      .map((row) => row.slice(1));

  test("without a thickness it is tallied as thin as the finished parts, which yards do not", () => {
    expect(found("")).toEqual([
      [
        "doubtful",
        "Cherry is sold by the board foot, and its row has no thickness: it is tallied as thick as its finished parts.",
        "Give its rough thickness, as yards tally it: 1 in for 4/4, which yields up to 13/16 in.",
      ],
    ]);
    expect(found(1)).toEqual([]);
  });

  test("stock that names no material is told by what is cut from it; a cubic meter is of finished wood", () => {
    const cherry = ["side material", "bottom material", "front material"].map((name) => [name, "Cherry"]);
    const said = (soldBy: string) =>
      CHECKS(openings(["A", 18, 12, 21.5, 1]), cherry, [
        ["Price", "Sold by"],
        [9, soldBy],
      ])
        .slice(1)
        .filter(([where]) => where === "stock")
        .map(([, , finding]) => finding);
    expect(said("board foot")).toEqual([
      "Cherry is sold by the board foot, and its row has no thickness: it is tallied as thick as its finished parts.",
    ]);
    expect(said("cubic meter")).toEqual([]);
  });

  test("rough stock that leaves nothing to plane is doubtful", () => {
    const [row] = found(1, "7/8");
    expect(row).toEqual([
      "doubtful",
      "Parts 7/8 in thick from Cherry 1 in thick: that leaves 1/8 in to plane.",
      "Rough stock loses about 3/16 in until it is flat: take the next quarter, unless it is sold planed.",
    ]);
    expect(found("7/8", "7/8")).toEqual([]);
    expect(found("1 1/4", 1)).toEqual([]);
  });

  test("the remedy for parts that find none tells how thick boards may be", () => {
    expect(found(2)[0]![2]).toBe(
      "Add a row of stock of that material, as thick to within 1/32 in (0.8 mm), or solid stock up to 3/8 in (10 mm) thicker.",
    );
  });

  test.each([0, "thick", -1])("a thickness of %j is read as a blank or refused in words", (thickness) => {
    const rows = found(thickness);
    if (thickness === 0) expect(rows[0]![1]).toMatch(/its row has no thickness/);
    else expect(rows[0]!.slice(0, 2)).toEqual(["wrong", expect.stringMatching(/^stock, row 2, Thickness is/)]);
  });
});
