import { book, named, STORED, type Given, type HostileCase } from "./hostile-case";
import { INTO_ITSELF, CIRCLE } from "./reasons";

/** Workbooks of many cells or names. */
export const HOSTILE_CHAINS: HostileCase[] = [
  {
    title: "names that double forty times",
    make: () =>
      named(
        doubling(40, "1", (name) => `${name}+${name}`),
        { A1: "=step_40" },
      ),
    expect: { A1: /^kept: / },
  },
  {
    title: "names that double an array forty times",
    make: () =>
      named(
        doubling(40, "Bench!$B$1:$B$9", (name) => `${name},${name}`),
        { A1: "=SUM(step_40)", B1: 1 },
      ),
    expect: { A1: /^kept: / },
  },
  {
    title: "5,000 names, each of the one before",
    make: () =>
      named(
        doubling(5_000, "7", (name) => `${name}+1`),
        { A1: "=step_5000" },
      ),
    expect: { A1: INTO_ITSELF },
  },
  {
    title: "names in a circle",
    make: () =>
      named(
        [
          ["one", "two+1"],
          ["two", "three+1"],
          ["three", "one+1"],
        ],
        { A1: "=one", A2: "=SUM(two,1)" },
      ),
    expect: { A1: INTO_ITSELF, A2: INTO_ITSELF },
  },
  {
    title: "a name that calls itself",
    make: () => named([["f", "_xlfn.LAMBDA(_xlpm.n,f(_xlpm.n)+f(_xlpm.n))"]], { A1: "=f(1)" }),
    expect: { A1: INTO_ITSELF },
  },
  {
    title: "a chain of 10,000 cells",
    make: () => book({ ...chain(10_000, (row) => `B${row - 1}+1`), A1: "=B10000" }),
    expect: { A1: 10_000 },
  },
  {
    title: "a chain of 5,000 cells that find one another by their names",
    make: () => book({ ...chain(5_000, () => `INDIRECT("B"&ROW()-1)+1`), A1: "=B5000" }),
    expect: { A1: 5_000 },
  },
  {
    title: "a chain of 5,000 cells that find one another by their places",
    make: () => book({ ...chain(5_000, (row) => `OFFSET(C$1,${row - 2},-1)+1`), A1: "=B5000" }),
    expect: { A1: 5_000 },
  },
  {
    title: "5,000 cells, each the sum of all above it",
    make: () => book({ ...chain(5_000, (row) => `MOD(SUM(B$1:B${row - 1}),7)`), A1: "=B5000" }),
    expect: { A1: 1 },
  },
  {
    title: "a circle of 4,000 cells",
    make: () => book({ ...chain(4_000, (row) => `B${row - 1}+1`, "=B4000"), A1: "=B3000" }),
    expect: { A1: STORED, B1: CIRCLE, B3999: CIRCLE },
  },
  {
    title: "a circle of 3,000 cells that find one another by their names",
    make: () => book({ ...chain(3_000, () => `INDIRECT("B"&ROW()-1)+1`, '=INDIRECT("B3000")'), A1: "=B5" }),
    expect: { A1: STORED, B1: CIRCLE, B2: CIRCLE, B1500: CIRCLE, B3000: CIRCLE },
  },
  {
    title: "texts that double from cell to cell",
    make: () => book({ ...chain(64, (row) => `B${row - 1}&B${row - 1}`, "ab"), A1: "=LEN(B64)" }),
    expect: { A1: "#VALUE!" },
  },
  {
    title: "formulas that spill where others spill",
    make: () =>
      book(Object.fromEntries(Array.from({ length: 400 }, (_, i) => [`B${i + 1}`, `{=_xlfn.SEQUENCE(400,400)`]))),
    expect: { B1: "#SPILL!" },
  },
  {
    title: "a formula that spills as far as it has spilled",
    make: () => book({ B1: "{=_xlfn.SEQUENCE(1+COUNT(B1:B5000))" }),
    expect: { B1: CIRCLE },
  },
  {
    title: "a table of 100,000 openings",
    make: () =>
      book({
        A1: "{=_xldudf_DRAWER_PLAN(B1:F100001)",
        B1: "Width",
        C1: "Height",
        D1: "Depth",
        E1: "Drawers",
        ...Object.fromEntries(Array.from({ length: 100_000 }, (_, i) => [`B${i + 2}`, 24])),
      }),
    expect: { A1: "#VALUE!" },
  },
  {
    title: "20 faults of 30 kB each",
    make: () =>
      book(
        Object.fromEntries(
          Array.from({ length: 20 }, (_, i) => [`B${i + 1}`, `{=_xldudf_DRAWER_BOXWIDTH(REPT("x",30000))`]),
        ),
      ),
    expect: { B1: "#VALUE!" },
  },
  {
    title: "headings of 32,767 characters",
    make: () =>
      book({
        A5: "{=_xldudf_DRAWER_CHECKS(B1:H2)",
        ...Object.fromEntries(
          "BCDEFGH".split("").flatMap((letter, i) => [
            [`${letter}1`, `${"Wdith ".repeat(5_400)}${i}`],
            [`${letter}2`, i + 1],
          ]),
        ),
      }),
    expect: { A5: /./ },
  },
];

/** A column of formulas, each made from the row before. */
const chain = (length: number, make: (row: number) => string, first: number | string = 1): Given => ({
  B1: first,
  ...Object.fromEntries(Array.from({ length: length - 1 }, (_, i) => [`B${i + 2}`, `=${make(i + 2)}`])),
});

const doubling = (count: number, first: string, twice: (name: string) => string): [string, string][] => [
  ["step_0", first],
  ...Array.from({ length: count }, (_, i): [string, string] => [`step_${i + 1}`, twice(`step_${i}`)]),
];
