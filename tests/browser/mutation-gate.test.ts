import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { UNDERSTOOD } from "../../src/workbook/browser/mutations";
import { lawWorkbooks } from "../workbook/support/law-workbooks";
import { openDesk, type Desk, type Visit } from "./desk";
import { INSIDE } from "./inside";

let desk: Desk;
let visit: Visit;

beforeAll(async () => {
  desk = await openDesk(INSIDE);
  visit = await desk.visit();
});
afterAll(() => desk.close());
beforeEach(async () => {
  const bytes = (await lawWorkbooks())["exceljs, full"]!;
  await visit.page.evaluate((bytes) => window.inside!.open(bytes, "bench.xlsx"), [...bytes]);
});
afterEach(() => expect(visit.faults).toEqual([]));

const registered = async (type: number): Promise<string[]> =>
  (await visit.page.evaluate(() => window.inside!.registered())).flatMap((one) => (one.type === type ? [one.id] : []));

/** Mutations that the list does not name. */
async function others(): Promise<string[]> {
  const all = await registered(2);
  expect(UNDERSTOOD.filter((id) => !all.includes(id))).toEqual([]);
  const found = all.filter((id) => !UNDERSTOOD.includes(id));
  expect(found.length).toBeGreaterThan(50);
  return found;
}

/** The commands that change sheets in the workbook itself; ./tabs.test.ts tries them. */
const SHEETS = ["insert-sheet", "remove-sheet", "set-worksheet-name", "set-worksheet-order"].map(
  (name) => `sheet.command.${name}`,
);

const WORDS = expect.stringContaining("Only what stands in cells is changed here");

test("every mutation of the grid's library is understood, or refused in words before anything changes", async () => {
  const ids = await others();
  expect(await visit.page.evaluate((ids) => window.inside!.tryMutations(ids), ids)).toEqual(
    ids.map((id) => ({
      id,
      result: false,
      isAsBefore: true,
      isStep: false,
      a1: "Part",
      words: WORDS,
      disagreement: null,
    })),
  );
});

test.each(["one by one", "as a sequence"] as const)(
  "a command that comes to a refused mutation changes nothing, before or after it, run %s",
  async (how) => {
    const ids = await others();
    expect(await visit.page.evaluate(([ids, how]) => window.inside!.tryAmid(ids, how), [ids, how] as const)).toEqual(
      ids.map((id) => ({
        id,
        result: false,
        isAsBefore: true,
        isStep: false,
        a1: "Part",
        words: WORDS,
        disagreement: null,
      })),
    );
  },
);

test("every command of the grid's library changes contents that are understood, or nothing", async () => {
  const ids = (await registered(0)).filter((id) => !SHEETS.includes(id));
  expect(ids.length).toBeGreaterThan(250);
  const found = await visit.page.evaluate((ids) => window.inside!.tryCommands(ids), ids);
  // The library complains of a command without a text to work on, and of nothing else.
  visit.faults.splice(0, visit.faults.filter((fault) => fault.includes("[DocClipboardController]")).length);
  expect(found.filter(({ isAsBefore, disagreement }) => !isAsBefore || disagreement !== null)).toEqual([]);
  const refused = found.filter(({ words }) => words !== "");
  expect(refused.every(({ result }) => result === false)).toBe(true);
  for (const kind of ["insert", "delete", "remove", "move", "merge", "hidden", "frozen", "order", "cut", "name"])
    expect(refused.filter(({ id }) => id.includes(kind))).not.toEqual([]);
});
