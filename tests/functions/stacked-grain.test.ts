import { describe, expect, test } from "vitest";
import { CUTS, LAYOUT, PARTS, PIECES, SETUPS, SHEETS } from "../../src/functions";
import { num, records, SET_ASIDE } from "../laws/jobs";
import { shown } from "../cell";
import { openings } from "./tables";

const table = openings(["A", 21, 24, 21.5, "1 part; 1 part; 2 parts"]);
const HORIZONTAL = [
  ["front match", "opening"],
  ["front grain", "horizontal"],
];
const STOCK = [
  ["Thickness", "Length", "Width"],
  [0.25, 96, 48],
  [0.5, 96, 48],
  [0.75, 96, 48],
];
const quick = "quick" as never;
const fronts = (parts: unknown[][]) =>
  records(LAYOUT(parts, STOCK, "1/8", 0, quick))
    .filter((row) => /^Front$|\d front/.test(String(row["Part"])))
    .sort((a, b) => num(a["From bottom"]) - num(b["From bottom"]) || num(a["From left"]) - num(b["From left"]));

/** Common practice: grain that runs on over several fronts is that of one strip, cut in the order in which they hang. */
describe("matched fronts whose grain runs from side to side", () => {
  const parts = PARTS(table, HORIZONTAL);
  const rows = records(parts).filter((row) => row["Part"] === "Front");

  test("are stacked, as they hang: PARTS says so", () => {
    expect(rows.map((row) => [row["Drawer"], row["Grain"], row["Grain group"], row["Grain row"]])).toEqual(
      ["A1", "A2", "A3"].map((drawer) => [drawer, "length", "A", "stacked"]),
    );
    const upright = records(PARTS(table, HORIZONTAL.slice(0, 1)));
    expect(upright[0]).not.toHaveProperty("Grain row");
  });

  test("LAYOUT stacks them across the sheet in their order, with SETUPS' strip between the outer edges", () => {
    const laid = fronts(parts);
    expect(laid.map((row) => [row["Drawer"], row["Turned"]])).toEqual([
      ["A1", false],
      ["A2", false],
      ["A3", false],
    ]);
    expect(new Set(laid.map((row) => `${row["Sheet"]} ${row["From left"]}`)).size).toBe(1);
    laid.slice(1).forEach((row, i) => {
      expect(num(row["From bottom"]) - num(laid[i]!["From bottom"]) - num(laid[i]!["Width"])).toBe(0.125);
    });
    const strip = records(SETUPS(table, HORIZONTAL)).find((row) => SET_ASIDE.test(String(row["Setting"])))!;
    const [first, last] = [laid[0]!, laid[2]!];
    expect(num(last["From bottom"]) + num(last["Width"]) - num(first["From bottom"])).toBe(strip["Value"]);
  });

  test("CUTS crosscuts the stack once, and rips it in order", () => {
    const sheet = fronts(parts)[0]!["Sheet"];
    const gives = records(CUTS(parts, STOCK, "1/8", 0, quick)).filter((row) => row["Sheet"] === sheet);
    const kept = gives.filter((row) => /^Front \(A\d\)/.test(String(row["Gives"])));
    expect(kept.map((row) => row["Cut"])).toEqual(kept.map(() => "rip"));
    const order = gives.flatMap((row) => [...String(row["Gives"]).matchAll(/Front \((A\d)\)/g)].map(([, one]) => one));
    expect(order).toEqual(["A1", "A2", "A3"]);
  });

  test("equal fronts stack too, copies each in a stack of their own", () => {
    const equal = [
      [...table[0]!, "Quantity"],
      ["A", 21, 24, 21.5, 2, 2],
    ];
    const laid = fronts(PARTS(equal, HORIZONTAL));
    expect(laid).toHaveLength(4);
    const stacks = new Map<unknown, string[]>();
    for (const row of laid) {
      const key = `${row["Sheet"]} ${row["From left"]}`;
      stacks.set(key, [...(stacks.get(key) ?? []), String(row["Drawer"])]);
    }
    for (const order of stacks.values()) expect(order.join(" ")).toMatch(/^(A1 A2 ?)+$/);
  });

  test("a stack that no sheet takes is named; the same fronts end to end fit", () => {
    const narrow = [
      ["Length", "Width"],
      [96, 20],
    ];
    const list = (row: unknown) => [
      ["Part", "Length", "Width", "Qty", "Grain", "Grain group", "Grain row"],
      ["Front", 22, 12, 1, "length", "A", row],
      ["Front", 22, 12, 1, "length", "A", row],
    ];
    expect(shown(() => SHEETS(list("stacked"), narrow, "1/8"))).toBe(
      '#N/A The parts of grain group "A" in one piece fit no sheet of their stock.',
    );
    expect(SHEETS(list(""), narrow, "1/8")[1]![3]).toBe(1);
    expect(SHEETS(list("end to end"), narrow, "1/8")[1]![3]).toBe(1);
    expect(SHEETS(list(0), narrow, "1/8")[1]![3]).toBe(1);
    expect(shown(() => SHEETS(list("piled"), narrow, "1/8"))).toMatch(
      /^#VALUE! parts, row 2, Grain row is "piled"\. .*end to end.*stacked/,
    );
  });

  test("stock without grain takes a stack either way, and its order stays", () => {
    const free = [
      ["Length", "Width", "Grain"],
      [60, 23, "none"],
    ];
    const list = [
      ["Part", "Length", "Width", "Qty", "Grain", "Grain group", "Grain row"],
      ["F1", 22, 12, 1, "length", "A", "stacked"],
      ["F2", 22, 20, 1, "length", "A", "stacked"],
    ];
    const laid = records(LAYOUT(list, free, "1/8", 0, quick));
    expect(laid.map((row) => [row["Part"], row["From left"], row["From bottom"], row["Turned"]])).toEqual([
      ["F1", 0, 0, true],
      ["F2", 12.125, 0, true],
    ]);
  });
});

describe("PIECES of fronts that match", () => {
  test("carry their grain group, copy by copy, so that sheets cut from pieces match as those cut from parts do", () => {
    const twice = [
      [...table[0]!, "Quantity"],
      ["A", 21, 24, 21.5, 2, 2],
    ];
    for (const standards of [HORIZONTAL, HORIZONTAL.slice(0, 1)]) {
      const pieces = records(PIECES(twice, standards)).filter((row) => row["Part"] === "Front");
      expect(pieces.map((row) => [row["Piece"], row["Grain group"]])).toEqual([
        ["A1 front, copy 1 of 2", "A, copy 1"],
        ["A1 front, copy 2 of 2", "A, copy 2"],
        ["A2 front, copy 1 of 2", "A, copy 1"],
        ["A2 front, copy 2 of 2", "A, copy 2"],
      ]);
      const strips = (from: unknown[][]) =>
        fronts(from).map((row) => [row["Sheet"], row["From left"], row["From bottom"], row["Length"], row["Width"]]);
      expect(strips(PIECES(twice, standards))).toEqual(strips(PARTS(twice, standards)));
    }
    const [one] = records(PIECES(table, HORIZONTAL)).filter((row) => row["Part"] === "Front");
    expect([one!["Grain group"], one!["Grain row"]]).toEqual(["A", "stacked"]);
  });

  test("have the columns alone where nothing matches", () => {
    expect(PIECES(table)[0]!.slice(-2)).toEqual(["Edges", "Set-ups"]);
  });

  test("keep what is cut away between two fronts", () => {
    const apart = [...HORIZONTAL, ["front gap", "1/4"]];
    const pieces = records(PIECES(table, apart)).filter((row) => row["Part"] === "Front");
    expect(pieces.map((row) => row["Grain gap"])).toEqual([0.25, 0.25, 0.25]);
  });
});
