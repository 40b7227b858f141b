import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CellError, type Scalar } from "../../../src/workbook/engine";
import { bookOf, results, value, type Given } from "../support/sheet";

const ROWS = 40;
/** Numbers that are equal to fifteen digits, texts that read as numbers, letters beyond the plain ones, and what is neither. */
const VALUES: Scalar[] = [
  ...[0, 1, 2, 0.1 + 0.2, 0.3, -7, 50, 1e15],
  ...[
    "1",
    " 2 ",
    "50%",
    "5000%",
    "1e0",
    "oak",
    "OAK",
    "oak veneer",
    "élan",
    "ÉLAN",
    "straße",
    "",
    "TRUE",
    "#N/A",
    "~x",
    "a*",
  ],
  ...[true, false, null, new CellError("#N/A"), new CellError("#DIV/0!")],
];
const CRITERIA = [
  "1",
  "2",
  "0.3",
  "-7",
  "0.5",
  '"oak"',
  '"=OAK"',
  '"<>oak"',
  '"oak*"',
  '"?ak"',
  '"élan"',
  '"STRASSE"',
  '""',
  '"="',
  '"1"',
];
const MORE = [
  '"=1"',
  '">1"',
  '"<=50"',
  '">oak"',
  "TRUE",
  '"TRUE"',
  '"=FALSE"',
  '"#N/A"',
  "NA()",
  '"~~x"',
  '"a~*"',
  '"50%"',
  '"1e15"',
  "B41",
];
const WANTED = ["1", "0.3", "0.25", "-8", "60", '"oak"', '"Oak veneer"', '"p"', '"ÉLAN"', "TRUE", '"*"'];

const formulas = [
  ...[...CRITERIA, ...MORE].flatMap((wanted) => [
    `COUNTIF(A1:A${ROWS},${wanted})`,
    `SUMIF(A1:A${ROWS},${wanted},B1:B${ROWS})`,
    `AVERAGEIFS(B1:B${ROWS},C1:C${ROWS},">3",A1:A${ROWS},${wanted})`,
    `COUNTIFS(A1:B${ROWS},${wanted},C1:D${ROWS},"<5")`,
  ]),
  ...WANTED.flatMap((wanted) => [
    ...[-1, 0, 1].flatMap((mode) => [1, -1].map((way) => `_xlfn.XMATCH(${wanted},A1:A${ROWS},${mode},${way})`)),
    `_xlfn.XMATCH(${wanted},A1:A${ROWS},2,-1)`,
    `MATCH(${wanted},A1:A${ROWS},0)`,
  ]),
  ...[1, 2, 0.3, 7, 0].flatMap((number) => [
    `RANK(${number},C1:C${ROWS})`,
    `RANK(${number},(C1:C${ROWS},D1:D${ROWS}),1)`,
    `_xlfn.RANK.AVG(${number},D1:D${ROWS})`,
  ]),
];

const column = (items: fc.Arbitrary<Scalar>) => fc.array(items, { minLength: ROWS, maxLength: ROWS });
const number = fc.integer({ min: 0, max: 9 });

describe("what thousands of formulas look for in one range", () => {
  it("is found among many formulas as it is by one alone", () => {
    fc.assert(
      fc.property(column(fc.constantFrom(...VALUES)), column(number), column(number), column(number), (a, b, c, d) => {
        const given: Given = {};
        for (let i = 0; i < ROWS; i++)
          for (const [name, items] of Object.entries({ A: a, B: b, C: c, D: d })) given[`${name}${i + 1}`] = items[i]!;
        const cells = Object.fromEntries(formulas.map((formula, i) => [`Y${i + 1}`, `=${formula}`]));
        const all = results(bookOf({ ...given, ...cells }));
        formulas.forEach((formula, i) => expect([formula, all[`Y${i + 1}`]]).toEqual([formula, value(formula, given)]));
      }),
      { seed: 19, numRuns: 8 },
    );
  });
});
