import { expect, test } from "vitest";
import { leastSheets, type Plain } from "./exhaustive";

const times = (n: number, length: number, width: number, turns = false): Plain[] =>
  Array.from({ length: n }, () => ({ length, width, turns }));

test.each<[string, number, Plain[], [number, number, number]]>([
  ["four squares fill a square", 1, times(4, 4, 4), [8, 8, 0]],
  ["a kerf leaves room for one of them", 4, times(4, 4, 4), [8, 8, 1]],
  ["a small kerf does so too", 4, times(4, 4, 4), [8, 8, 1 / 8]],
  ["four squares and two small kerfs fill a square larger by one", 1, times(4, 4, 4), [8 + 1 / 8, 8 + 1 / 8, 1 / 8]],
  // Four 3 × 2 pieces round a middle of 1 × 1 lie in 5 × 5, but no edge-to-edge cut parts them.
  ["no pinwheel is cut edge to edge", 2, times(4, 3, 2, true), [5, 5, 0]],
  ["six pieces in two columns of three", 1, times(6, 6, 2), [12, 6, 0]],
  ["six pieces in two columns of two, and two left", 2, times(6, 6, 2), [12, 5, 0]],
  ["turned, three lie where one did", 1, times(3, 2, 6, true), [6, 6, 0]],
  ["not turned, a part that is too wide fits no sheet", Infinity, times(1, 2, 6), [6, 5, 0]],
])("the plain solver knows cases worked by hand: %s", (_, sheets, parts, [length, width, kerf]) => {
  expect(leastSheets(parts, length, width, kerf)).toBe(sheets);
});
