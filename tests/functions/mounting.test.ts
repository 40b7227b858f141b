import { describe, expect, test } from "vitest";
import { MOUNTING } from "../../src/functions";
import { expectValueError } from "../cell";
import { column, messageOf, openings } from "./tables";

const HEADINGS = [
  "Drawer",
  "Box spacer",
  "Slide spacer",
  "Slide centerline",
  "Front bottom",
  "Front past box left",
  "Front past box right",
  "Front below box",
  "Pull height",
  "Pull from left",
  "Second pull",
  "Front screws",
];
const three = openings(["B", 24, 26.25, 23.25, 3]);
const at = (table: unknown[][], drawer: string, heading: string) =>
  table.find(([label]) => label === drawer)![HEADINGS.indexOf(heading)];

describe("MOUNTING(openings, standards)", () => {
  test("has one row a drawer under the headings of the contract", () => {
    const table = MOUNTING(three, [["height step", "1/4"]]);
    expect(table[0]).toEqual(HEADINGS);
    expect(column(table, "Drawer")).toEqual(["B1", "B2", "B3"]);
  });

  test("box spacers stand on the box below, slide spacers on the floor", () => {
    const table = MOUNTING(three, [["height step", "1/4"]]);
    expect(column(table, "Box spacer")).toEqual([1.75, 0.9375, 0.5]);
    expect(column(table, "Slide spacer")).toEqual([21.0625, 11.8125, 3.375]);
    expect(column(table, "Slide centerline")).toEqual([21.9375, 12.6875, 4.25]);
  });

  test("undermount slides have neither spacer nor centerline", () => {
    const table = MOUNTING(three, [
      ["slide", "undermount"],
      ["undermount deduction", "1 5/8"],
    ]);
    expect(column(table, "Slide spacer")).toEqual(["", "", ""]);
    expect(column(table, "Slide centerline")).toEqual(["", "", ""]);
    expect(at(table, "B3", "Box spacer")).toBe(0.5);
  });

  test("says where the front lies on its box, left, right and below", () => {
    const table = MOUNTING(openings(["A", 18, 20, 20.5, 1], ["B", 24, 20, 20.5, 1]), [["right reveal", "-1/2"]]);
    // Over the carcase's end 3/4 − 1/16 and the side space 1/2; over half a partition less the gap, 5/16, and 1/2.
    expect(["left", "right"].map((side) => at(table, "A1", `Front past box ${side}`))).toEqual([1.1875, 0.8125]);
    expect(["left", "right"].map((side) => at(table, "B1", `Front past box ${side}`))).toEqual([0.8125, 1.75]);
    expect(at(table, "A1", "Front below box")).toBe(1.25);
  });

  test("an inset front may stay behind its box's sides", () => {
    const table = MOUNTING(openings(["A", 18, 20, 20.5, 1]), [
      ["front style", "inset"],
      ["slide", "wood runner"],
    ]);
    expect(at(table, "A1", "Front past box left")).toBe(0.0625 - 0.09375);
  });

  test("one pull in the middle, two at the quarters of a wide front, none where none is asked for", () => {
    const table = MOUNTING(openings(["A", 18, 20, 20.5, 1], ["B", 24, 20, 20.5, 1]));
    expect([at(table, "A1", "Pull from left"), at(table, "A1", "Second pull")]).toEqual([9.5, ""]);
    expect([at(table, "B1", "Pull from left"), at(table, "B1", "Second pull")]).toEqual([6.25, 18.75]);
    const none = MOUNTING(openings(["A", 18, 20, 20.5, 1]), [["pulls per front", "none"]]);
    expect(["Pull height", "Pull from left", "Second pull"].map((heading) => at(none, "A1", heading))).toEqual([
      "",
      "",
      "",
    ]);
  });

  test("pull height is the front's middle, or a length down from its upper edge", () => {
    const one = openings(["A", 18, 20, 20.5, 1]);
    expect(at(MOUNTING(one), "A1", "Pull height")).toBe(-0.75 + 21.375 / 2);
    expect(at(MOUNTING(one, [["pull height", 3]]), "A1", "Pull height")).toBe(20.625 - 3);
  });

  test("pull line puts pulls over one another across columns and fronts of different width", () => {
    // Cabinets' left outer edge to the fronts': A 1/16, B 3/4 + 18 + 3/4 − 5/16 = 19 3/16.
    const table = openings(["A", 18, 20, 20.5, 1], ["B", 24, 20, 20.5, 2]);
    const mounted = MOUNTING(table, [["pull line", "8; 26; 36"]]);
    expect([at(mounted, "A1", "Pull from left"), at(mounted, "A1", "Second pull")]).toEqual([7.9375, ""]);
    expect([at(mounted, "B1", "Pull from left"), at(mounted, "B1", "Second pull")]).toEqual([6.8125, 16.8125]);
    expect(at(mounted, "B2", "Pull from left")).toBe(6.8125);
  });

  test("the order in which the places of pull line are typed does not matter", () => {
    const table = openings(["A", 30, 20, 20.5, 1]);
    const pulls = (line: string) => {
      const mounted = MOUNTING(table, [["pull line", line]]);
      return [column(mounted, "Pull from left")[0], column(mounted, "Second pull")[0]];
    };
    // The front's left edge is 1/16 in from the cabinet's.
    expect([pulls("22; 8"), pulls("8; 22")]).toEqual([
      [7.9375, 21.9375],
      [7.9375, 21.9375],
    ]);
  });

  test("pull line that falls three times on a front, or behind a face frame, is refused for that opening alone", () => {
    const table = openings(["A", 18, 20, 20.5, 1], ["B", 24, 20, 20.5, 1]);
    const rows = MOUNTING(table, [["pull line", "8; 22; 26; 36"]]);
    expect(at(rows, "A1", "Pull from left")).toBe(7.9375);
    expect(messageOf(rows[2]![1])).toBe(
      "#VALUE! Opening B: 3 places of pull line fall on one front, which takes 2 pulls at most.",
    );
    const framed = MOUNTING(table, [
      ["pull line", 8],
      ["construction", "face frame"],
    ]);
    expect(messageOf(framed[1]![1])).toMatch(/^#VALUE! Opening A: pull line is measured from the cabinet's outer edge/);
  });

  test("two screws hold a front, four a wide one, or as many as the standard says", () => {
    const table = openings(["A", 18, 20, 20.5, 1], ["B", 24, 20, 20.5, 1]);
    expect(column(MOUNTING(table), "Front screws")).toEqual([2, 4]);
    expect(column(MOUNTING(table, [["four screws from", 30]]), "Front screws")).toEqual([2, 2]);
    expect(column(MOUNTING(table, [["front screws", 6]]), "Front screws")).toEqual([6, 6]);
  });

  test("an opening that cannot be planned gives one row of errors, and the others are right", () => {
    const table = MOUNTING(openings(["A", 18, 20, 9, 2], ["B", 18, 20, 20.5, 1]));
    expect(table.length).toBe(3);
    expect(table[1]![0]).toBe("A");
    expect(new Set(table[1]!.slice(1).map(messageOf))).toEqual(
      new Set([
        "#N/A Opening A: No slide fits: an inside depth of 9 in leaves 8 1/2 in, and the shortest slide is 10 in.",
      ]),
    );
    expect(at(table, "B1", "Box spacer")).toBe(0.5);
  });

  test("a table that cannot be read fails the call", () => {
    expectValueError(
      () => MOUNTING(three, [["pull lines", 8]]),
      'standards, row 1 has the name "pull lines", which is none. The nearest is "pull line".',
    );
  });
});
