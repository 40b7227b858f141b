import type { RowDefinition, SheetDefinition } from "../author/definition";
import { cell, gap, row, tall } from "./cells";
import type { Style } from "./styles";

const COLUMNS = ["Opening", "Width", "Height", "Depth", "Drawers", "Side thickness", "Bottom thickness", "Bottom fit"];

/** The sheet Bench's columns for the openings, in order. */
const BENCH = ["B", "C", "D"];
const OPENING_TOP = 4;
const STANDARD_TOP = 10;

/**
 * Standards by the cells that they are typed into, and what a blank there stands for, as everywhere. On the other sheets
 * they come from here alone, so that no sheet speaks of another job.
 */
const FROM: [name: string, cell: string, usual: number][] = [
  ["cabinet thickness", "Bench!B16", 0.75],
  ["front gap", "Bench!B17", 0.125],
  ["top reveal", "Bench!B18", 0.125],
  ["bottom reveal", "Bench!B19", 0],
  ["end reveal", "Bench!B20", 0.0625],
  ["space below", "Bench!B21", 0.5],
  ["space above", "Bench!B22", 0.25],
  ["height step", "Bench!B23", 0.125],
  ["front step", "Bench!B24", 0.0625],
  ["groove depth", "Bench!B25", 0.25],
  ["kerf", "Saw!B5", 0.125],
  ["groove offset", "Saw!B6", 0.375],
];

/** A zero that was typed, as a text: some programs hand an empty cell over as the number. */
const standard = ([name, from, usual]: (typeof FROM)[number]): [string, string] => [
  name,
  `=IF(${from}="",${usual === 0 ? '"0 in"' : usual},IF(${from}=0,"0 in",${from}))`,
];

const SLIDE = "Bench!B26";

/** The standards, from the sheet's eleventh row on. The slide's cell takes a word or a clearance. */
export const STANDARD_ROWS: [name: string, formula: string][] = [
  ...FROM.map(standard),
  ["slide", `=IF(${SLIDE}="","side-mount",IF(${SLIDE}=0,"",IF(ISERROR(DRAWER.LENGTH(${SLIDE})),${SLIDE},"")))`],
  ["side clearance", `=IF(${SLIDE}="","",IF(${SLIDE}=0,"0 in",IF(ISERROR(DRAWER.LENGTH(${SLIDE})),"",${SLIDE})))`],
];

export const STANDARD_TOP_ROW = STANDARD_TOP + 1;
const rowOf = (name: string): number => STANDARD_TOP_ROW + STANDARD_ROWS.findIndex(([one]) => one === name);

/** Names of standards that native formulas reckon with. */
export type StandardName = "cabinet thickness" | "front gap" | "top reveal" | "bottom reveal" | "end reveal";

/** A standard as the tables have it, for functions of ours. */
export const typed = (name: string): string => `Job!$B$${rowOf(name)}`;
/** The same as a number, for native formulas. */
export const inches = (name: StandardName): string => `Job!$C$${rowOf(name)}`;

/** What stands in an opening's row: as the table has it, or the measurement that counts as a number. */
export const opening = (index: number, what: (typeof COLUMNS)[number] | "width" | "height" | "depth"): string => {
  const least = ["width", "height", "depth"].indexOf(what);
  const letter = String.fromCharCode(65 + (least < 0 ? COLUMNS.indexOf(what) : LEAST + least));
  return `Job!$${letter}$${OPENING_TOP + 1 + index}`;
};

/** The column, from 0, of the first measurement that counts. */
const LEAST = 9;

/** The bench as the two tables that plan whole cabinets take. */
export const OPENINGS = `Job!A${OPENING_TOP}:H${OPENING_TOP + BENCH.length}`;
export const STANDARDS = `Job!A${STANDARD_TOP}:B${STANDARD_TOP + STANDARD_ROWS.length}`;
export const fixed = (range: string): string => range.replace(/([A-Z])(\d)/g, "$$$1$$$2");

/** The measured openings one a row, and the standards as two columns: tables for the functions of whole plans. */
export const JOB: SheetDefinition<Style> = {
  name: "Job",
  widths: [21, 13, 11, 11, 24, 17, 19, 13, 4, 13, 13, 13],
  selected: "A4",
  merged: ["A1:H1", "A2:L2"],
  rows: [
    tall(36, cell("title", "The job as tables")),
    row(
      cell(
        "subtitle",
        "Taken from the sheets Bench and Saw; a blank there is the usual here. All other sheets are worked out from these two. To the right, what is reckoned with in inches.",
      ),
    ),
    gap(),
    tall(
      27,
      cell("columnText", COLUMNS[0]!),
      ...COLUMNS.slice(1).map((name) => cell("column", name)),
      null,
      ...["Least width", "Least height", "Least depth"].map((name) => cell("column", name)),
    ),
    ...BENCH.map(openingRow),
    gap(),
    gap(),
    tall(27, cell("columnText", "Standard"), cell("column", "Value"), cell("column", "Inches")),
    ...STANDARD_ROWS.map(([name, formula]) => {
      const at = `B${rowOf(name)}`;
      const reads = FROM.some(([one]) => one === name) ? `=DRAWER.LENGTH(${at})` : null;
      return row(
        cell("label", name),
        cell(name === "slide" ? "resultWord" : "result", formula),
        reads ? cell("result", reads) : null,
      );
    }),
  ],
};

/** A thickness of 0 counts as a blank, as in every table of openings. */
function openingRow(column: string, i: number): RowDefinition<Style> {
  const from = (style: Style, bench: number) => cell(style, `=Bench!${column}${bench}`);
  const or = (bench: number, usual: number) =>
    cell("result", `=IF(OR(Bench!${column}${bench}="",Bench!${column}${bench}=0),${usual},Bench!${column}${bench})`);
  const label = "ABC"[i]!;
  const sizes = `DRAWER.WORKING(${fixed(OPENINGS).slice(4)},"${label}1",${fixed(STANDARDS).slice(4)})`;
  return row(
    cell("key", label),
    from("result", 7),
    from("result", 8),
    from("result", 9),
    from("resultWord", 10),
    or(11, 0.5),
    or(12, 0.25),
    cell("resultWord", `=IF(Bench!${column}13="","grooved",Bench!${column}13)`),
    null,
    ...[2, 3, 4].map((r) => cell("result", `=INDEX(${sizes},${r},2)`)),
  );
}
