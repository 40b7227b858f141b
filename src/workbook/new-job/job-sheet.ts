import { STANDARD_GROUPS, STANDARDS_HELP, usualInWords } from "../../guide/index";
import type { RowDefinition, SheetDefinition } from "../author/index";
import { cell, gap, row, tall } from "../example/cells";
import type { Style } from "../example/styles";
import type { Choices } from "./choices";
import { jobRows, jobTable, ROOM } from "./job-table";
import { pageOf } from "./page";

/** The row of the headings. */
const TOP = 5;
const BOTTOM = TOP + ROOM;
const STANDARDS_TOP = BOTTOM + 3;

type Name = keyof typeof STANDARDS_HELP;

/** Every row of the standards: a group's name, or a standard. */
const ROWS: ({ group: string } | { name: Name })[] = [
  { group: "The job" },
  ...STANDARD_GROUPS.flatMap((group) => [
    { group },
    ...(Object.keys(STANDARDS_HELP) as Name[])
      .filter((name) => STANDARDS_HELP[name].group === group)
      .map((name) => ({ name })),
  ]),
];

/** The table that is typed, as formulas of other sheets name it. */
export const typedTable = (choices: Choices): string =>
  `Job!$A$${TOP}:$${String.fromCharCode(64 + jobTable(choices).columns.length)}$${BOTTOM}`;

/** With the row of the unit, which stands in the first group. */
const STANDARDS_BOTTOM = STANDARDS_TOP + ROWS.length + 1;
export const STANDARDS = `Job!$A$${STANDARDS_TOP}:$B$${STANDARDS_BOTTOM}`;

const rowOf = (name: Name): number => STANDARDS_TOP + 2 + ROWS.findIndex((one) => "name" in one && one.name === name);

/** The standards in their order, as the sheet lists them. */
export const STANDARD_NAMES: readonly Name[] = ROWS.flatMap((one) => ("name" in one ? [one.name] : []));

/** Where a standard is typed. */
export const standardCell = (name: Name): string => `Job!$B$${rowOf(name)}`;
export const UNIT_CELL = `Job!$B$${STANDARDS_TOP + 2}`;

/** What is said of either unit, whichever is typed in the end. */
export const byUnit = (inches: string, millimeters: string, unit = UNIT_CELL): string =>
  inches === millimeters ? inches : `=IF(${unit}="mm","${millimeters}","${inches}")`;

/** All that a person types about a job: its openings, and whatever the shop does otherwise than usual. */
export function jobSheet(choices: Choices): SheetDefinition<Style> {
  const { columns, words } = jobTable(choices);
  const last = String.fromCharCode(64 + columns.length);
  return {
    name: "Job",
    widths: [28, 17, 17, 17, 22, 12, 11, ...columns.slice(7).map(() => 16)],
    selected: `B${TOP + 1}`,
    merged: [...[1, 2, 3].map((r) => `A${r}:${last}${r}`), `A${STANDARDS_TOP - 1}:G${STANDARDS_TOP - 1}`],
    page: pageOf(choices),
    lists: [
      { area: `B${STANDARDS_TOP + 2}`, words: ["in", "mm"] },
      ...ROWS.flatMap((one) => {
        const words = "name" in one && STANDARDS_HELP[one.name].choices;
        return words ? [{ area: `B${rowOf(one.name)}`, words }] : [];
      }),
    ],
    rows: [
      tall(36, cell("title", "The job")),
      ...words.map((text) => row(cell("subtitle", text))),
      gap(),
      tall(27, ...columns.map(([name, style]) => cell(style === "inputText" ? "columnText" : "column", name))),
      ...jobRows(choices).map((cells) => row(...cells)),
      gap(),
      row(
        cell(
          "subtitle",
          `="Your standards. Leave one empty and the usual holds; write none for zero. Plain numbers are "&IF(${UNIT}="mm","millimeters.","inches.")`,
        ),
      ),
      tall(27, cell("columnText", "Standard"), cell("column", "Value"), cell("column", "If left empty"), meaning("")),
      ...ROWS.flatMap((one, i) =>
        "group" in one
          ? [groupRow(one.group), ...(i === 0 ? [unitRow(choices.unit)] : [])]
          : [standardRow(one.name, choices)],
      ),
    ],
  };
}

const UNIT = UNIT_CELL.replace("Job!", "");

const meaning = (text: string) => cell("remark", text);

const groupRow = (name: string): RowDefinition<Style> => tall(24, null, null, null, cell("bareKey", name));

const unitRow = (unit: string): RowDefinition<Style> =>
  row(
    cell("label", "unit"),
    cell("inputWord", unit),
    cell("resultWord", "in"),
    cell("note", "Of plain numbers: in or mm."),
  );

function standardRow(name: Name, choices: Choices): RowDefinition<Style> {
  const { meaning, choices: words } = STANDARDS_HELP[name];
  const said = words ? `${meaning} ${listed(words)}.` : meaning;
  return row(
    cell("label", name),
    cell("inputWord", chosen(name, choices)),
    cell("resultWord", byUnit(usualInWords(name, "in"), usualInWords(name, "mm"), UNIT)),
    cell("note", said),
  );
}

const listed = (words: readonly string[]): string => `${words.slice(0, -1).join(", ")} or ${words.at(-1)!}`;

/** What was chosen stands in its cell even where it is the usual, for it was chosen. */
function chosen(name: Name, { construction, slide, sideThickness, dataSheet }: Choices): string | null {
  if (name === "construction") return construction;
  if (name === "slide") return slide;
  if (name === "side thickness") return sideThickness || null;
  return dataSheet[name] || null;
}
