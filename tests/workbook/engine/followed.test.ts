import { describe, expect, it } from "vitest";
import { cellKey, CellError, createEngine, type Cell, type Outcome } from "../../../src/workbook/engine";
import type { Book } from "../../../src/workbook/engine/engine";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { cellName } from "../../../src/workbook/address";
import { chanceOf, type Chance } from "../support/random-edits";
import { bookOf, sheetOf, type Given } from "../support/sheet";

const engine = createEngine({ functions: OWN_FUNCTIONS, now: new Date(2026, 3, 1) });

describe("a book that is followed cell by cell", () => {
  it("comes out after each of 1,000 edits as if all of it were worked out", () => {
    const chance = chanceOf(19);
    const book = startBook();
    const followed = engine.follow(book);
    let before = followed.calculate();
    let [steps, whole] = [0, 0];
    for (let edit = 0; edit < 1_000; edit++) {
      const changed = mending(before, chance) ?? randomEdits(chance);
      for (const [sheet, address, content] of changed) put(book, sheet, address, content);
      const now = followed.update(changed.map(([sheet, address]) => ({ sheet, ...placeOf(address) })));
      const [followedTo, all] = [shown(now), shown(engine.calculate(book))];
      // Quicker than the comparison that tells what differs.
      if (JSON.stringify(followedTo) !== JSON.stringify(all))
        expect(followedTo, `${edit}: ${JSON.stringify(changed)}`).toEqual(all);
      // Results that were not worked out anew are told as they were.
      if (now.results.some((result) => before.results.includes(result))) steps++;
      else whole++;
      before = now;
    }
    expect(steps).toBeGreaterThan(400);
    expect(whole).toBeGreaterThan(100);
  }, 300_000);

  it("works out what hangs on a change, and nothing else", () => {
    const calls: string[] = [];
    const counting = createEngine({
      functions: {
        TOLD: (name: string, value: number) => {
          calls.push(name);
          return Math.min(value, 5);
        },
      },
    });
    const book = bookOf({
      A1: 1,
      A2: 2,
      A9: 0,
      B1: '=_xldudf_DRAWER_TOLD("B1",A1)',
      B2: '=_xldudf_DRAWER_TOLD("B2",A2)',
      C1: '=_xldudf_DRAWER_TOLD("C1",B1)',
      C2: '=_xldudf_DRAWER_TOLD("C2",SUM(B:B))',
      D1: '=_xldudf_DRAWER_TOLD("D1",INDIRECT("A"&A3))',
      D2: '=_xldudf_DRAWER_TOLD("D2",IF(A3=1,NOW(),1))',
    });
    const followed = counting.follow(book);
    followed.calculate();
    const edit = (address: string, content: Given[string]): string[] => {
      calls.length = 0;
      put(book, 0, address, content);
      followed.update([{ sheet: 0, ...placeOf(address) }]);
      return [...calls].sort();
    };
    expect(edit("A1", 3)).toEqual(["B1", "C1", "C2"]);
    expect(edit("A1", 9)).toEqual(["B1", "C1", "C2"]);
    // B1 is 5 as it was.
    expect(edit("A1", 8)).toEqual(["B1"]);
    expect(edit("A3", 2)).toEqual(["D1", "D2"]);
    expect(edit("A2", 3)).toEqual(["B2", "C2", "D1"]);
    expect(edit("A3", 1)).toEqual(["D1", "D2"]);
    // Whatever asks for the moment is worked out at every change.
    expect(edit("A2", 4)).toEqual(["B2", "C2", "D2"]);
  });
});

/** A corner of two sheets in which cells meet, names that lead there, and a cell further down that keeps it small. */
function startBook(): Book {
  const first = sheetOf("Bench", { A1: 1, B1: "=A1+1", F20: 0 });
  const second = sheetOf("Cuts", { A1: "=Bench!B1", T30: 1 });
  return {
    ...bookOf({}),
    sheets: [first, second],
    names: [
      { name: "RATE_", text: "Bench!$A$1" },
      { name: "ALL_", text: "Bench!$A:$B" },
      { name: "LEFT_", text: "Bench!A1" },
    ],
  };
}

/** Circles and what blocks a spilled range are undone soon, for a book that has them is worked out whole. */
function mending({ kept, results }: Outcome, chance: Chance): ReturnType<typeof randomEdits> | undefined {
  const blocked = results.filter(
    ({ values }) => values[0]?.[0] instanceof CellError && values[0][0].code === "#SPILL!",
  );
  const all = [...kept, ...blocked];
  if (all.length === 0 || chance(3) === 0) return undefined;
  const { sheet, row, column } = all[chance(all.length)]!;
  return [[sheet, cellName(row, column), null]];
}

const SIZE = { rows: 8, columns: 6 };

function randomEdits(chance: Chance): [sheet: number, address: string, content: Given[string]][] {
  const one = (): [number, string, Given[string]] => [
    chance(3) === 0 ? 1 : 0,
    cellName(chance(SIZE.rows), chance(SIZE.columns)),
    randomContent(chance),
  ];
  return Array.from({ length: chance(4) === 0 ? 3 : 1 }, one);
}

function randomContent(chance: Chance): Given[string] {
  const pick = <T>(...items: T[]): T => items[chance(items.length)]!;
  const cell = (): string => pick("", "", "Cuts!") + cellName(chance(SIZE.rows), chance(SIZE.columns));
  const range = (): string => {
    const [row, column] = [chance(SIZE.rows), chance(SIZE.columns)];
    return `${pick("", "", "Bench!")}${cellName(row, column)}:${cellName(row + chance(4), column + chance(2))}`;
  };
  switch (chance(24)) {
    case 0:
    case 1:
    case 2:
    case 3:
      return null;
    case 4:
    case 5:
    case 6:
    case 7:
    case 8:
      return pick<Given[string]>(chance(6), chance(6), "oak", true, chance(100) / 8, new CellError("#N/A"));
    case 9:
      return `=${cell()}+${cell()}`;
    case 10:
      return `=IF(${cell()}>2,${cell()},${cell()}*2)`;
    case 11:
      return `=SUM(${range()})`;
    case 12:
      return `=COUNTIF(${pick("A:A", "B:C", range())},${pick('">1"', '""', cell())})`;
    case 13:
      return `=INDIRECT("${pick("A", "B", "Cuts!C")}"&MOD(IFERROR(INT(${cell()}),1),8)+1)`;
    case 14:
      return `=IFERROR(SUM(OFFSET(${cell()},1,0,${1 + chance(3)},1)),-1)`;
    case 15:
      return `{=_xlfn.SEQUENCE(IFERROR(MIN(4,MAX(1,INT(${cell()}))),2))`;
    case 16:
      return `{=${range()}*2`;
    case 17:
      return `{=_xlfn._xlws.SORT(${range()})`;
    case 18:
      return `=SUM(_xlfn.ANCHORARRAY(${cell()}))`;
    case 19:
      return pick("=RATE_*2", "=SUM(ALL_)", "=LEFT_&1", "=COUNTA(ALL_)");
    case 20:
      return `=VLOOKUP(${cell()},${range()},1,FALSE)`;
    case 21:
      return `=SUMIF(${range()},">1",${cell()})`;
    case 22:
      return `=_xldudf_DRAWER_BOXWIDTH(12+IFERROR(${cell()}*1,0))`;
    default:
      return `=IFERROR(INDEX(${range()},${1 + chance(3)},1),ISFORMULA(${cell()}))`;
  }
}

function put(book: Book, sheet: number, address: string, content: Given[string]): void {
  const { row, column } = placeOf(address);
  const { cells } = book.sheets[sheet]!;
  const cell: Cell | undefined =
    content === null ? undefined : [...sheetOf("", { [address]: content }).cells.values()][0];
  if (cell) cells.set(cellKey(row, column), cell);
  else cells.delete(cellKey(row, column));
}

const placeOf = (address: string): { row: number; column: number } => {
  const [, letters, row] = /^([A-Z])(\d+)$/.exec(address)!;
  return { row: Number(row) - 1, column: letters!.charCodeAt(0) - 65 };
};

/** Results by their places, with what was kept and why. */
function shown({ results, kept }: Outcome): Record<string, unknown> {
  const all: Record<string, unknown> = {};
  for (const { sheet, row, column, ...result } of results) all[`${sheet}!${cellName(row, column)}`] = result;
  for (const { sheet, row, column, ...why } of kept) all[`${sheet}!${cellName(row, column)}`] = why;
  return Object.fromEntries(Object.entries(all).sort(([a], [b]) => (a < b ? -1 : 1)));
}
