import { afterAll, beforeAll, expect, test } from "vitest";
import { lawWorkbooks } from "../workbook/support/law-workbooks";
import { comparedWithLibreOffice } from "../workbook/support/read-by-libreoffice";
import { openLawDesk, type LawDesk } from "./page-law";

/** `npm run fuzz -- page` tries more workbooks, and compares the saved file after every step. */
const NAMES = [
  "a blank sheet as the spreadsheet program writes it",
  "an empty sheet",
  "a shop's workbook with names, a table, rules and a chart",
  "spilled and older array formulas",
];
/** Sequences with each workbook. */
const SEQUENCES = 50;
const STEPS = 30;
const EVERY = 10;

let desk: LawDesk;
const written: Uint8Array[] = [];
beforeAll(async () => {
  desk = await openLawDesk();
});
afterAll(() => desk.close());

test(
  "after whatever is typed, deleted, pasted, filled, undone or refused in the page, grid, engine and saved file say the same",
  { timeout: 1_800_000 },
  async () => {
    const known = await lawWorkbooks();
    const books = NAMES.map((name) => [name, known[name]!] as const);
    const all: Record<string, number> = {};
    for (const [i, [name, bytes]] of books.entries()) {
      const seeds = Array.from({ length: SEQUENCES }, (_, at) => 1 + i * SEQUENCES + at);
      const { broken, counts, saved } = await desk.try(bytes, { seeds, steps: STEPS, every: EVERY });
      expect(broken.map(({ seed, fault, steps }) => `${name}, seed ${seed}: ${fault}\n${steps.join("\n")}`)).toEqual(
        [],
      );
      for (const [kind, count] of Object.entries(counts)) all[kind] = (all[kind] ?? 0) + count;
      for (const file of saved.slice(0, 6)) written.push(Buffer.from(file, "base64"));
    }
    const steps = Object.values(all).reduce((sum, count) => sum + count, 0);
    expect(steps).toBe(books.length * SEQUENCES * STEPS);
    for (const kind of [
      ...["type", "delete", "undo", "redo", "copy", "paste", "paste from elsewhere", "fill", "insert"],
      ...["add a sheet", "rename a sheet", "move a sheet", "delete a sheet"],
    ])
      expect(all[kind], kind).toBeGreaterThan(50);
    console.log(
      `${books.length * SEQUENCES} sequences, seeds 1 to ${books.length * SEQUENCES}, ${JSON.stringify(all)}`,
    );
  },
);

test("LibreOffice reads the same from what was saved after them", { timeout: 600_000 }, () => {
  const { same, others } = comparedWithLibreOffice(written);
  expect(others).toEqual([]);
  expect(same).toBeGreaterThan(150);
});
