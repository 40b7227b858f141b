import { describe, expect, test } from "vitest";
import { parseLength, toDouble, type Unit } from "../../src/core/length";
import { loadBundle } from "../build/load-bundle";
import { BENCH, CHEST, type WorkedBox } from "./bench";

const bundle = loadBundle();
const call = (name: string, ...args: unknown[]): unknown => bundle.get(name)!(...args);
const exact = (text: string, unit: Unit = "in"): number => toDouble(parseLength(text, unit));
const inColumn = (...texts: string[]): number[][] => texts.map((text) => [exact(text)]);

describe.each([
  ["a bicycle workshop's parts bench", BENCH, "in" as Unit],
  ["a tea merchant's sample chest", CHEST, "mm" as Unit],
])("worked example: %s, through the built functions", (_, boxes, unit) => {
  test.each(boxes.map((box) => [box.drawer, box] as const))("drawer %s", (_, box) => expectBox(box, unit));
});

function expectBox(worked: WorkedBox, unit: Unit): void {
  const { opening, zone, step, depth, side, groove, fit, setback, box } = worked;
  const of = (text: string) => exact(text, unit);
  const slide = call("SLIDELENGTH", depth, undefined, setback, undefined, unit);
  expect(slide).toBe(of(box.depth));
  expect(call("BOXWIDTH", opening, undefined, unit)).toBe(of(box.width));
  expect(call("BOXHEIGHT", zone, undefined, undefined, step, unit)).toBe(of(box.height));
  expect(call("SIDELENGTH", slide, side, undefined, undefined, unit)).toBe(of(box.depth));
  expect(call("ENDLENGTH", box.width, side, undefined, undefined, unit)).toBe(of(worked.ends));
  expect(call("BOTTOMWIDTH", box.width, side, groove, undefined, unit)).toBe(of(worked.bottom.width));
  expect(call("BOTTOMDEPTH", box.depth, side, groove, undefined, fit, unit)).toBe(of(worked.bottom.depth));
}

describe("worked example: the fronts of the bench", () => {
  const fronts = (drawers: string) => call("FRONTHEIGHTS", "27 5/8", [[drawers]], undefined, 0, 0, "1/16");

  test("opening A: a fixed front and two that share", () => {
    expect(fronts("5 1/2; 1 part; 1 part")).toEqual(inColumn("5 1/2", "10 15/16", "10 15/16"));
  });

  test("opening B: three equal fronts", () => {
    expect(fronts("3")).toEqual(inColumn("9 1/8", "9 1/8", "9 1/8"));
    expect(call("FRONTHEIGHT", "27 5/8", 3)).toBe(9.125);
  });

  test("opening C: 9 1/6 and 18 1/3, down to sixteenths, the whole step that is left to the lowest", () => {
    expect(call("FRONTHEIGHTS", "27 5/8", [["1 part; 2 parts"]])).toEqual(inColumn("9 1/6", "18 1/3"));
    expect(fronts("1 part; 2 parts")).toEqual(inColumn("9 1/8", "18 3/8"));
  });

  test("across: 19, 24 5/8, 31 and two gaps are the carcase less its end reveals", () => {
    const [a, b, c] = [19, 24.625, 31];
    expect(a + b + c + 2 * 0.125).toBe(75 - 2 * 0.0625);
    expect((call("FRONTWIDTH", 75, 3, "1/8", "1/16", "1/16") as number) * 3).toBe(a + b + c);
  });

  test("the chest's fronts: 140, 168 1/3 and 336 2/3 in an opening of 655 with a gap of 2 round them", () => {
    expect(call("FRONTHEIGHTS", 651, [["140; 1 part; 2 parts"]], 3, 0, 0, 0, "mm")).toEqual([
      [140],
      [exact("168 1/3", "mm")],
      [exact("336 2/3", "mm")],
    ]);
  });
});

describe("worked examples: single sums", () => {
  test("a groove in a 3/4 in side for a 1/2 in bottom: four passes, fence at 1/4, 3/8, 1/2, 5/8, blade 1/4 high", () => {
    const table = call("GROOVEPASSES", "1/2", "1/8", "1/4", "1/4") as unknown[][];
    expect(table.slice(1)).toEqual([1, 2, 3, 4].map((pass) => [pass, 0.125 + pass / 8, 0.25]));
  });

  test("GRADUATED(28, 4, arithmetic, 3/4, 1/8): 5 25/32, 6 17/32, 7 9/32, 8 1/32", () => {
    const heights = call("GRADUATED", 28, 4, "arithmetic", "3/4", "1/8");
    expect(heights).toEqual(inColumn("5 25/32", "6 17/32", "7 9/32", "8 1/32"));
  });

  test("15/32 stock with 1/4 in rabbets in an opening of 18: ends 16 9/16, bottom 16 1/2 × 19 23/32", () => {
    expect(call("ENDLENGTH", call("BOXWIDTH", 18), "15/32", "rabbet", "1/4")).toBe(exact("16 9/16"));
    expect(call("SLIDELENGTH", "20 1/2")).toBe(20);
    expect(call("BOXHEIGHT", "6 3/4", undefined, undefined, "1/8")).toBe(6);
    expect(call("BOTTOMWIDTH", 17, "15/32", "1/4")).toBe(exact("16 1/2"));
    expect(call("BOTTOMDEPTH", 20, "15/32", "1/4", undefined, "under back")).toBe(exact("19 23/32"));
  });

  test("half-blind dovetails, box 16 1/4 × 21, all stock 5/8, sockets 3/8: sides 20 1/2, ends 16 1/4, bottom 15 7/16 × 20 3/16", () => {
    expect(call("SIDELENGTH", 21, "5/8", "half-blind dovetail", "3/8")).toBe(20.5);
    expect(call("ENDLENGTH", "16 1/4", "5/8", "half-blind dovetail")).toBe(16.25);
    expect(call("BOTTOMWIDTH", "16 1/4", "5/8", "1/4")).toBe(exact("15 7/16"));
    expect(call("BOTTOMDEPTH", 21, "5/8", "1/4")).toBe(exact("20 3/16"));
  });
});
