import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { parseCell } from "../../../src/workbook/address";
import { CellError, type Scalar } from "../../../src/workbook/engine/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { openingCell, rateCell } from "../support/bench-places";
import { PARTS_BENCH, partsBenchDraft } from "../support/parts-bench";

let bytes: Uint8Array;
let workbook: EditedWorkbook;
beforeAll(() => void (bytes = partsBenchDraft()));
beforeEach(() => void (workbook = new EditedWorkbook(bytes)));

const sheetNumber = (name: string): number => PARTS_BENCH.sheets.findIndex((sheet) => sheet.name === name);

/** All that the formula in a cell gives. */
function spilled(sheet: string, cell: string): Scalar[][] {
  const { row, column } = parseCell(cell)!;
  const isHere = (one: { sheet: number; row: number; column: number }) =>
    one.sheet === sheetNumber(sheet) && one.row === row && one.column === column;
  return workbook.calculate().results.find(isHere)!.values;
}

const value = (sheet: string, cell: string): Scalar => spilled(sheet, cell)[0]![0]!;

function put(sheet: string, cell: string, content: string | number | null): void {
  workbook.put({ sheet: sheetNumber(sheet), ...parseCell(cell)!, content });
}

const cents = (amount: Scalar): number => Math.round((amount as number) * 100);
const quoteLines = (): Scalar[][] => spilled("Quote", "A5").slice(1);
const amount = (section: string, item?: string): number =>
  cents(quoteLines().find((line) => line[0] === section && (item === undefined || line[1] === item))![5]!);

describe("the sheet Quote", () => {
  test("adds up: lines to subtotals, and all of them to the total", () => {
    const lines = quoteLines();
    for (const section of ["Sheets", "Hardware", "Finish", "Labor", "Extras"]) {
      const own = lines.filter(([of, item, , , , sum]) => of === section && item !== "Subtotal" && sum !== "");
      expect(own.length).toBeGreaterThan(0);
      expect(amount(section, "Subtotal")).toBe(own.reduce((sum, line) => sum + cents(line[5]!), 0));
    }
    const sums = lines.filter(
      ([section, item]) => item === "Subtotal" || ["Overhead", "Margin"].includes(String(section)),
    );
    expect(amount("Price")).toBe(sums.reduce((sum, line) => sum + cents(line[5]!), 0));
    expect(amount("Total")).toBe(amount("Price") + amount("Tax"));
  });

  test("stands ready for a list that is longer, and says so where it has no room", () => {
    const room = PARTS_BENCH.sheets[sheetNumber("Quote")]!.rows.length - 5;
    expect(quoteLines().length).toBeLessThan(room);
    put("Quote", "B12", "in the way");
    expect((value("Quote", "A5") as CellError).code).toBe("#SPILL!");
  });

  test("follows the bench and the rates", () => {
    const before = amount("Total");
    put("Job", openingCell("B", "Drawers"), 4);
    expect(amount("Total")).toBeGreaterThan(before);
    expect(value("Client quote", "A9")).toBe("9 drawers. A: 3 drawers; B: 4 drawers; C: 2 drawers");
    put("Job", openingCell("B", "Drawers"), 3);
    put("Prices", rateCell("extra delivery"), null);
    expect(amount("Total")).toBeLessThan(before);
  });

  test.each([
    ["pull price", null, 'rates lacks "pull price"'],
    ["overhead", 0.12, "overhead is 0.12"],
    ["overhead", "twelve", 'overhead is "twelve"'],
    ["markup", 10, 'both "markup" and "margin"'],
  ])("names what is wrong: %s, %j", (name, content, words) => {
    put("Prices", rateCell(name), content);
    const error = value("Quote", "A5") as CellError;
    expect([error.code, error.message]).toEqual(["#VALUE!", expect.stringContaining(words)]);
  });

  test("tells its reader in one line who to ask about tax, labor law and contracts", () => {
    const texts = PARTS_BENCH.sheets[sheetNumber("Quote")]!.rows.flatMap(({ cells }) =>
      cells.map((cell) => cell?.content),
    );
    expect(texts.filter((text) => /tax, labor law and .*contracts.* adviser/.test(String(text)))).toHaveLength(1);
  });
});

const LETTERS = ["B", "C", "D", "E", "F", "G"];
const PRICE_ROWS = [15, 16, 17, 18, 19];
const ROOM_ROWS = [22, 23, 24, 25, 26];

/** Every choice of the grid: its drawers, width, price and room. */
const choices = () =>
  PRICE_ROWS.flatMap((row, i) =>
    LETTERS.map((letter, j) => ({
      drawers: 2 + i,
      width: 15 + 3 * j,
      price: value("Price grid", `${letter}${row}`) as number,
      room: value("Price grid", `${letter}${ROOM_ROWS[i]}`) as number,
    })),
  );

type Choice = ReturnType<typeof choices>[0];
const inWords = ({ drawers, width, price, room }: Choice): string =>
  `${drawers} drawers at ${width}": ${price.toLocaleString("en", { minimumFractionDigits: 2, maximumFractionDigits: 2 })}, ${room.toFixed(1)} cubic feet`;
const least = (all: Choice[], score: (choice: Choice) => number): Choice =>
  all.reduce((best, choice) => (score(choice) < score(best) ? choice : best));

describe("the sheet Price grid", () => {
  test("names the choices that a search through the grid finds", () => {
    const all = choices();
    const found = ["B8", "B9", "B10", "B11"].map((cell) => value("Price grid", cell));
    expect(found).toEqual([
      inWords(least(all, ({ price }) => price)),
      inWords(least(all, ({ room }) => -room)),
      inWords(
        least(
          all.filter(({ price }) => price <= 700),
          ({ room }) => -room,
        ),
      ),
      inWords(least(all, ({ price, room }) => price / room)),
    ]);
    expect(new Set(found.slice(0, 3)).size).toBe(3);
  });

  test("has in each cell the total of a quote for that opening alone", () => {
    const { row, column } = parseCell("H30")!;
    const own =
      '=DRAWER.QUOTE(CHOOSE({1,2,3,4;5,6,7,8},"Width","Height","Depth","Drawers",24,26.25,23.25,4),standards,stock,rates)';
    workbook.put({ sheet: sheetNumber("Price grid"), row, column, content: { formula: own } });
    expect(spilled("Price grid", "H30").at(-1)![5]).toBe(value("Price grid", "E17"));
  });

  test("goes on with what can be priced where a width is too small, and says none where nothing is left", () => {
    put("Price grid", "B14", 0.5);
    expect(value("Price grid", "B15")).toBeInstanceOf(CellError);
    expect(value("Price grid", "B8")).toBe(
      inWords(
        least(
          choices().filter(({ width }) => width > 15),
          ({ price }) => price,
        ),
      ),
    );
    put("Price grid", "B6", 1);
    expect(value("Price grid", "B10")).toBe("None.");
    put("Prices", rateCell("pull price"), null);
    expect(value("Price grid", "B8")).toBe("No price yet: select one below to read why.");
  });
});

const alternateRow = (standard: string): number =>
  PARTS_BENCH.sheets[sheetNumber("Alternates")]!.rows.findIndex(({ cells }) => cells[0]?.content === standard) + 1;

describe("the sheet Alternates", () => {
  test("compares what is named, with the first as the base", () => {
    const [, base, ...others] = spilled("Alternates", "A5");
    expect([base, ...others].map((line) => line![0])).toEqual(["As it is", "3/4 sides", "Inset fronts"]);
    for (const line of others) expect(cents(line[4]!)).toBe(cents(line[3]!) - cents(base![3]!));
  });

  test("has in its base the bench's price, with what single openings have of their own", () => {
    expect(cents(spilled("Alternates", "A5")[1]![3]!)).toBe(amount("Total"));
    put("Job", openingCell("C", "Side thickness"), null);
    expect(cents(spilled("Alternates", "A5")[1]![3]!)).toBe(amount("Total"));
  });

  test("takes in one more", () => {
    put("Alternates", "E11", "Short boxes");
    put("Alternates", `E${alternateRow("height step")}`, 2);
    expect(spilled("Alternates", "A5").at(-1)![0]).toBe("Short boxes");
  });
});
