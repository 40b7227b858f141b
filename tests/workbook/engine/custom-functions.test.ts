import { describe, expect, it } from "vitest";
import { createEngine } from "../../../src/workbook/engine";
import { fakes } from "../support/fakes";
import { bookOf, value } from "../support/sheet";

const functions = fakes;
const seen = (args: string, given = {}) =>
  JSON.parse(value(`_xldudf_DRAWER_SEEN(${args})`, given, { functions }) as string) as unknown;

describe("a custom function receives", () => {
  it("a single cell as its value, a range as a table, blanks as null", () => {
    expect(seen("A1,A1:B2,C9", { A1: 4, B2: "Side" })).toEqual([
      4,
      [
        [4, null],
        [null, "Side"],
      ],
      null,
    ]);
  });

  it("a range that many formulas read as one table, which nobody changes", () => {
    const tables: unknown[][][] = [];
    const keep = (table: unknown[][]): number => tables.push(table);
    const keeping = "=_xldudf_DRAWER_KEEP(A1:A2)";
    createEngine({ functions: { KEEP: keep } }).calculate(bookOf({ A1: 4, C1: keeping, C2: keeping, C3: keeping }));
    // What is asked for once is not kept.
    expect(tables[2]).toBe(tables[1]);
    expect(tables.every((table) => [table, ...table].every(Object.isFrozen))).toBe(true);
  });

  it("an omitted argument as null", () => {
    expect(seen("1,,2")).toEqual([1, null, 2]);
  });

  it("length texts as they were typed, never as a date", () => {
    expect(seen('A1,"7/16"', { A1: "23 7/16" })).toEqual(["23 7/16", "7/16"]);
  });

  it("error values as their text", () => {
    expect(seen("1/0,A1:A2", { A1: 1, A2: "=NA()" })).toEqual(["#DIV/0!", [[1], ["#N/A"]]]);
  });

  it("a lone cell as a table, and a range item by item, where its metadata says so", () => {
    const options = { functions, dimensions: { SEEN: ["matrix"], BOXWIDTH: ["scalar", "scalar"] } as const };
    expect(value("_xldudf_DRAWER_SEEN(A1)", { A1: 4 }, options)).toBe("[[[4]]]");
    expect(value("{=_xldudf_DRAWER_BOXWIDTH(A1:A2)", { A1: 20, A2: 30 }, options)).toEqual([[19], [29]]);
  });
});

it.each(["TOLD()+1", "TOLD()+2-0.5", "2-TOLD()", "TOLD()*2"])("a custom function is called once: =%s", (sum) => {
  let calls = 0;
  const told = (): number => ++calls;
  value(sum.replace("TOLD", "_xldudf_DRAWER_TOLD"), {}, { functions: { TOLD: told } });
  expect(calls).toBe(1);
});

describe("a custom function gives", () => {
  it("a number, a text, a table that spills", () => {
    expect(value("_xldudf_DRAWER_BOXWIDTH(20)", {}, { functions })).toBe(19);
    expect(value("{=_xldudf_DRAWER_COUNTDOWN(3)", {}, { functions })).toEqual([[3], [2], [1]]);
  });

  it("the host's error, whose message reaches the result", () => {
    const book = bookOf({ A1: '=_xldudf_DRAWER_BOXWIDTH("wide")', A2: "=_xldudf_DRAWER_SLIDELENGTH(4)" });
    const { results } = createEngine({ functions }).calculate(book);
    expect(results.map(({ values }) => values[0]![0])).toMatchObject([
      { code: "#VALUE!", message: "opening_width: “wide” is no length." },
      { code: "#N/A", message: "No slide is so short." },
    ]);
  });

  it.each([
    ["_xldudf_DRAWER_BOXWIDTH(24,mm)", "mm"],
    ["_xldudf_DRAWER_BOXWIDTH(24,side-mount)", "side"],
  ])("what to type where a word stands without its quotes: %s", (formula, word) => {
    const { results } = createEngine({ functions }).calculate(bookOf({ A1: `=${formula}` }));
    expect(results[0]!.values[0]![0]).toMatchObject({
      code: "#NAME?",
      message: `The workbook has no name ${word}. A word in a formula wants quotes: "${word}".`,
    });
  });

  it("errors inside a table, and the rest of it is right", () => {
    expect(value("{=_xldudf_DRAWER_PLAN(A1:B2)", { A1: "A", B1: 18, A2: "B" }, { functions })).toEqual([
      ["Drawer", "Width"],
      ["A", 17],
      ["B", "#VALUE!"],
    ]);
  });

  it.each<[string, unknown, unknown]>([
    ["nothing", null, ""],
    ["an infinite number", Infinity, "#NUM!"],
    ["a number with its own format", { type: "Double", basicValue: 0.5, numberFormat: "# ??/16" }, 0.5],
    ["a promise", Promise.resolve(1), "#VALUE!"],
    ["an empty table", [], "#CALC!"],
  ])("%s", (_, given, expected) => {
    expect(value("_xldudf_DRAWER_F()", {}, { functions: { F: () => given } })).toBe(expected);
  });

  it("an error value where it throws something that is no error of the host", () => {
    const functions = {
      F: () => {
        throw new TypeError("x is undefined");
      },
    };
    expect(value("_xldudf_DRAWER_F()", {}, { functions })).toBe("#VALUE!");
  });
});
