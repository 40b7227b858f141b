import { afterEach, describe, expect, test } from "vitest";
import { ALTERNATES, CHECKS, CUTS, FIT, LAYOUT, MOUNTING, PARTS, PIECES, PLAN, SETUPS } from "../../src/functions";
import { openings } from "../functions/tables";

afterEach(() => (globalThis.drawerHost = undefined));

const bench = (count: number, drawers = 10): unknown[][] =>
  openings(...Array.from({ length: count }, (_, i) => [`Bay ${i + 1}`, 18 + (i % 32) / 16, 40, 23.25, drawers]));

const parts = (count: number, name = "Shelf"): unknown[][] => [
  ["Part", "Length", "Width", "Qty"],
  ...Array.from({ length: count }, (_, i) => [`${name} ${i}`, 40, 40, 1]),
];
const STOCK = [
  ["Length", "Width"],
  [41, 41],
];
/** As long as a cell can hold, near enough. */
const LONG = "a label without end ".repeat(1_600);

/** What a call throws, as the cell shows it. */
function refusal(call: () => unknown): string {
  try {
    call();
  } catch (thrown) {
    const { code, message } = thrown as CustomFunctions.Error;
    return `${code} ${message}`;
  }
  return "nothing";
}

const TOO_LARGE =
  /^#VALUE! The answer has [\d,]+ rows, about [\d.]+ MB, and the spreadsheet may lose more than 2 MB\. Give fewer openings or parts a call, and let several calls stand one below the other \(PARTS is shorter grouped\)\.$/;
const TEXT_TOO_LONG =
  /^#VALUE! The answer's row \d+ has a text of [\d,]+ characters, and a cell holds at most 32,767\. Give fewer openings or parts a call, or shorter names\.$/;

describe("an answer that the spreadsheet may lose on its way is refused with what to do", () => {
  const jobs = bench(260);
  const labeled = openings(...Array.from({ length: 70 }, (_, i) => [`${LONG}${i}`, 18, 8, 23.25, 1]));
  const alternates = [
    ["", ...Array.from({ length: 70 }, (_, i) => `${LONG}${i}`)],
    ["side thickness", 0.5],
  ];
  const CALLS: [name: string, call: () => unknown][] = [
    ["PLAN", () => PLAN(jobs)],
    ["MOUNTING", () => MOUNTING(bench(320))],
    ["PARTS, one row a piece", () => PARTS(labeled, [], false)],
    ["FIT", () => FIT(labeled)],
    ["CHECKS", () => CHECKS(openings(...labeled.slice(1).map(([label]) => [label, "wide", 8, 23.25, 1])))],
    ["PIECES", () => PIECES(bench(160))],
    ["LAYOUT", () => LAYOUT(parts(70, LONG), STOCK, 0.125, 0, "quick" as never)],
    ["CUTS", () => CUTS(parts(70, LONG), STOCK, 0.125, 0, "quick" as never)],
    ["ALTERNATES", () => ALTERNATES(openings(["A", 18, 8, 23.25, 1]), alternates, STOCK)],
  ];

  test.each(CALLS)("%s", (_, call) => {
    globalThis.drawerHost = { showsNumberFormats: true };
    expect(refusal(call)).toMatch(TOO_LARGE);
  });
});

describe("a text longer than a cell holds is refused", () => {
  const label = LONG.repeat(2);
  const alike = openings(...Array.from({ length: 200 }, (_, i) => [`${"a".repeat(200)}${i}`, 18, 8, 23.25, 1]));
  const CALLS: [name: string, call: () => unknown][] = [
    ["PLAN, by a label", () => PLAN(openings([label, 18, 8, 23.25, 1]))],
    ["PARTS, by the list of drawers", () => PARTS(alike)],
    ["SETUPS, by the list of parts", () => SETUPS(alike)],
    ["CUTS, by a part's name", () => CUTS(parts(1, label), STOCK)],
    ["ALTERNATES, by a name", () => ALTERNATES(openings(["A", 18, 8, 23.25, 1]), [["", label, "B"]], STOCK)],
  ];

  test.each(CALLS)("%s", (_, call) => {
    expect(refusal(call)).toMatch(TEXT_TOO_LONG);
  });
});

test("the size is that of what is handed over: the same plan is carried where its numbers bring no formats", () => {
  const jobs = bench(260);
  expect(PLAN(jobs)).toHaveLength(2_601);
  globalThis.drawerHost = { showsNumberFormats: true };
  expect(refusal(() => PLAN(jobs))).toMatch(TOO_LARGE);
});

test("what is carried is never more than 2 MB, and what is refused is not far below", () => {
  globalThis.drawerHost = { showsNumberFormats: true };
  const sizes = Array.from({ length: 4 }, (_, i) => bench(190 + 20 * i)).map((jobs) => {
    let answer: unknown;
    const words = refusal(() => (answer = PLAN(jobs)));
    return { jobs, words, bytes: answer === undefined ? undefined : JSON.stringify(answer).length };
  });
  const carried = sizes.flatMap(({ bytes }) => bytes ?? []);
  expect(Math.max(...carried)).toBeLessThanOrEqual(2_000_000);
  expect(Math.max(...carried)).toBeGreaterThan(1_600_000);
  expect(carried.length).toBeLessThan(sizes.length);
});
