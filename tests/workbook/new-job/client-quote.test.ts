import { beforeAll, describe, expect, test } from "vitest";
import { writeWorkbook } from "../../../src/workbook/author/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { CellError, type Scalar } from "../../../src/workbook/engine/index";
import { parseCell } from "../../../src/workbook/address";
import { openingCell, standardCell } from "../support/bench-places";
import { partsBenchDraft } from "../support/parts-bench";
import { freeze } from "../../../src/workbook/freeze/index";
import { DEFAULT_CHOICES, newJob, type Choices } from "../../../src/workbook/new-job/index";
import { readByLibreOffice } from "../support/read-by-libreoffice";

const at = (workbook: EditedWorkbook, name: string): number =>
  workbook.sheets.findIndex((sheet) => sheet.name === name);

/** All that a sheet shows, by its cells. */
function shown(workbook: EditedWorkbook, name: string): Map<string, Scalar> {
  const sheet = at(workbook, name);
  const found = new Map<string, Scalar>();
  for (const { row, column, value, formula } of workbook.cells(sheet))
    if (!formula) found.set(`${row} ${column}`, value);
  for (const result of workbook.calculate().results)
    if (result.sheet === sheet)
      result.values.forEach((line, y) =>
        line.forEach((value, x) => found.set(`${result.area.top + y} ${result.area.left + x}`, value)),
      );
  return found;
}

/** What stands beside a word in the last column, in cents. */
function amount(workbook: EditedWorkbook, name: string, word: string, column: number): number {
  const cells = shown(workbook, name);
  const [place] = [...cells].findLast(([key, value]) => key.endsWith(" 0") && value === word)!;
  return Math.round((cells.get(`${place.split(" ")[0]} ${column}`) as number) * 100);
}

function rate(workbook: EditedWorkbook, name: string, content: string | number | null): void {
  const prices = at(workbook, "Prices");
  const found = [...workbook.cells(prices)].find(({ column, value }) => column === 0 && value === name)!;
  workbook.put({ sheet: prices, row: found.row, column: 1, content });
}

/** The first value that reads so. */
const told = (workbook: EditedWorkbook, sheet: string, pattern: RegExp): Scalar | undefined =>
  [...shown(workbook, sheet).values()].find((value) => pattern.test(String(value)));

const fill = (workbook: EditedWorkbook, opening: string, heading: string, content: number | string | null): void =>
  void workbook.put({ sheet: at(workbook, "Job"), ...parseCell(openingCell(opening, heading))!, content });

const JOBS: Record<string, () => Uint8Array> = {
  bench: partsBenchDraft,
  inches: () => writeWorkbook(newJob(DEFAULT_CHOICES.in)),
  millimeters: () => writeWorkbook(newJob(DEFAULT_CHOICES.mm)),
  cabinets: () => writeWorkbook(newJob({ ...DEFAULT_CHOICES.in, from: "cabinets" } as Choices)),
};

describe.each(Object.keys(JOBS))("the client's quote of a job: %s", (job) => {
  let workbook: EditedWorkbook;
  beforeAll(() => void (workbook = new EditedWorkbook(JOBS[job]!())));

  test("has the shop's price and total to the cent, whatever tax, extras, markup or margin", () => {
    const cases: Record<string, string | number | null>[] = [
      {},
      { tax: 7, "tax on": "materials" },
      { tax: 8.375, "tax on": "all" },
      { "tax on": "none" },
      { tax: null, "extra delivery": 120.5 },
      { "extra delivery": -33.33, margin: 40, tax: 6.5, "tax on": "all" },
      { margin: null, markup: 18, "charge sheets": "used" },
      { markup: null, margin: null, overhead: null },
    ];
    for (const [i, rates] of cases.entries()) {
      for (const [name, content] of Object.entries(rates)) rate(workbook, name, content);
      const own = (word: string) => amount(workbook, "Client quote", word, 3);
      const shop = (word: string) => amount(workbook, "Quote", word, 5);
      expect(own("Total"), String(i)).toBe(shop("Total"));
      expect(own("Price"), String(i)).toBe(shop("Price"));
      expect(own("Price") + own("Tax"), String(i)).toBe(own("Total"));
      expect(own("Total"), String(i)).toBeGreaterThan(0);
    }
  });

  test("shows no hours, overhead, margin, rates or costs: its amounts are its price, tax and total alone", () => {
    const cells = [...shown(workbook, "Client quote").values()];
    const texts = cells.filter((value) => typeof value === "string").join("\n");
    expect(texts).not.toMatch(/hour|labor|overhead|markup|margin|\brates?\b|cost|subtotal|%|finish/i);
    expect(cells.filter((value) => typeof value === "number")).toHaveLength(3);
    expect(cells.filter((value) => value instanceof CellError)).toEqual([]);
  });

  test("tells what is built: every opening with its drawers, what boxes and fronts are made of, what they run on", () => {
    const texts = [...shown(workbook, "Client quote").values()].filter((value) => typeof value === "string").join("\n");
    expect(texts).toMatch(/\d drawers\. .+: \d drawers?/);
    expect(texts).toMatch(/Boxes: plywood, (\d+\/\d+"|\d+ mm)/);
    expect(texts).toMatch(/Fronts: plywood/);
    expect(texts).toMatch(/Hung on side-mount slides/);
  });
});

test("false fronts are no drawers, and an opening that has no others is not told of", () => {
  const workbook = new EditedWorkbook(partsBenchDraft());
  const job = at(workbook, "Job");
  const fixed = (content: number | string) =>
    workbook.put({ sheet: job, ...parseCell(standardCell("false fronts"))!, content });
  expect(told(workbook, "Client quote", /drawers\. /)).toBe("8 drawers. A: 3 drawers; B: 3 drawers; C: 2 drawers");
  fixed(1);
  expect(told(workbook, "Client quote", /drawers\. /)).toBe("5 drawers. A: 2 drawers; B: 2 drawers; C: 1 drawer");
  expect(told(workbook, "Job", /^Planned/)).toMatch(/^Planned: 5 drawers\. /);
  fixed(2);
  expect(told(workbook, "Client quote", /drawers\. /)).toBe("2 drawers. A: 1 drawer; B: 1 drawer");
  expect(told(workbook, "Job", /^Planned/)).toMatch(/^Planned: 2 drawers\. /);
});

test("drawers are counted as often as their openings are built", () => {
  const workbook = new EditedWorkbook(partsBenchDraft());
  for (const opening of ["A", "B", "C"]) fill(workbook, opening, "Quantity", 2);
  expect(told(workbook, "Client quote", /drawers\. /)).toBe("16 drawers. A: 6 drawers; B: 6 drawers; C: 4 drawers");
  expect(told(workbook, "Job", /^Planned/)).toMatch(/^Planned: 16 drawers\. /);
  ["A", "B", "C"].forEach((opening, i) => fill(workbook, opening, "Cabinet", i + 1));
  fill(workbook, "A", "Quantity", 1);
  fill(workbook, "B", "Quantity", null);
  expect(told(workbook, "Client quote", /drawers\. /)).toBe("10 drawers. A: 3 drawers; B: 3 drawers; C: 4 drawers");
  // One that cannot be planned is built no time at all.
  fill(workbook, "A", "Width", "broad");
  expect(told(workbook, "Job", /^Planned/)).toMatch(/^Planned: 7 drawers\. /);
});

test("drawers of a cabinet are counted as often as it is built", () => {
  const workbook = new EditedWorkbook(JOBS.cabinets!());
  expect(told(workbook, "Job", /^Planned/)).toMatch(/^Planned: 3 drawers\. /);
  const [heading] = [...shown(workbook, "Job")].find(([, value]) => value === "Quantity")!;
  const [row, column] = heading.split(" ").map(Number) as [number, number];
  workbook.put({ sheet: at(workbook, "Job"), row: row + 1, column, content: 4 });
  expect(told(workbook, "Job", /^Planned/)).toMatch(/^Planned: 12 drawers\. /);
  expect(told(workbook, "Client quote", /drawers\. /)).toMatch(/^12 drawers\. \S.*: 12 drawers$/);
});

test("an error of the shop's quote is one of the client's, and a quote of nothing has a total of nothing", () => {
  const workbook = new EditedWorkbook(partsBenchDraft());
  rate(workbook, "pull price", null);
  const cells = [...shown(workbook, "Client quote").values()];
  expect(cells.filter((value) => value instanceof CellError)).toHaveLength(3);
});

/** The example, all of it built twice. */
function twice(bytes: Uint8Array): Uint8Array {
  const workbook = new EditedWorkbook(bytes);
  for (const opening of ["A", "B", "C"]) fill(workbook, opening, "Quantity", 2);
  return workbook.save();
}

test("LibreOffice finds the same scope, price, tax and total from the shop's tables by the sheet's own formulas", () => {
  const files = [partsBenchDraft(), twice(partsBenchDraft()), JOBS.inches!(), JOBS.cabinets!()].map(
    (bytes) => freeze(bytes, { functions: OWN_FUNCTIONS }, { date: "2026-05-04", version: "1.2.3" }).bytes,
  );
  readByLibreOffice(files).forEach((read, i) => {
    const workbook = new EditedWorkbook(files[i]!);
    const formulas = [...workbook.cells(at(workbook, "Client quote"))].filter(({ formula }) => formula);
    expect(formulas.length).toBeGreaterThanOrEqual(5);
    const ours = shown(workbook, "Client quote");
    for (const { row, column } of formulas) {
      const { v } = read.Sheets["Client quote"]![`${"ABCD"[column]}${row + 1}`] as { v: unknown };
      const own = ours.get(`${row} ${column}`);
      if (typeof own === "number") expect(v).toBeCloseTo(own, 6);
      else expect(v).toBe(own);
    }
  });
});
