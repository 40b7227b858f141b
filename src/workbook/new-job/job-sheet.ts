import { STANDARD_GROUPS, STANDARDS_HELP, usualInWords } from "../../guide/index";
import type { RowDefinition, SheetDefinition } from "../author/index";
import { cell, gap, row, tall } from "../example/cells";
import type { Style } from "../example/styles";
import type { Choices } from "./choices";

const COLUMNS: [heading: string, style: Style][] = [
  ["Opening", "inputText"],
  ["Width", "input"],
  ["Height", "input"],
  ["Depth", "input"],
  ["Drawers", "input"],
  ["Cabinet", "inputWord"],
  ["Quantity", "inputCount"],
];
/** One opening to begin with, which is typed over. */
const FIRST = { in: ["A", "18", "28", "22 3/4", "4"], mm: ["A", "450", "700", "560", "4"] };
const ROOM = 12;
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

/** The tables as formulas of other sheets name them. */
export const OPENINGS = `Job!$A$${TOP}:$${String.fromCharCode(64 + COLUMNS.length)}$${BOTTOM}`;
/** With the row of the unit, which stands in the first group. */
const STANDARDS_BOTTOM = STANDARDS_TOP + ROWS.length + 1;
export const STANDARDS = `Job!$A$${STANDARDS_TOP}:$B$${STANDARDS_BOTTOM}`;

const rowOf = (name: Name): number => STANDARDS_TOP + 2 + ROWS.findIndex((one) => "name" in one && one.name === name);

/** Where a standard is typed. */
export const standardCell = (name: Name): string => `Job!$B$${rowOf(name)}`;
export const UNIT_CELL = `Job!$B$${STANDARDS_TOP + 2}`;

/** All that a person types about a job: its openings, and whatever the shop does otherwise than usual. */
export function jobSheet(choices: Choices): SheetDefinition<Style> {
  const { unit } = choices;
  return {
    name: "Job",
    widths: [28, 17, 17, 17, 22, 12, 11],
    selected: `B${TOP + 1}`,
    merged: ["A1:G1", "A2:G2", "A3:G3", `A${STANDARDS_TOP - 1}:G${STANDARDS_TOP - 1}`],
    lists: [
      { area: `B${STANDARDS_TOP + 2}`, words: ["in", "mm"] },
      ...ROWS.flatMap((one) => {
        const words = "name" in one && STANDARDS_HELP[one.name].choices;
        return words ? [{ area: `B${rowOf(one.name)}`, words }] : [];
      }),
    ],
    rows: [
      tall(36, cell("title", "The job")),
      row(
        cell(
          "subtitle",
          "Type over the first opening, and add yours below it; everything on the other sheets follows at once. Clear sizes, measured.",
        ),
      ),
      row(
        cell(
          "subtitle",
          "Several measurements stand in one cell: 18; 17 15/16. Drawers: a number, or heights and parts from the top: 5; 1 part; 2 parts.",
        ),
      ),
      gap(),
      tall(27, ...COLUMNS.map(([name, style]) => cell(style === "inputText" ? "columnText" : "column", name))),
      ...Array.from({ length: ROOM }, (_, i) => openingRow(i === 0 ? FIRST[unit] : [])),
      gap(),
      row(
        cell(
          "subtitle",
          `Your standards. Leave one empty and the usual holds; write none for zero. Plain numbers are ${unit === "in" ? "inches" : "millimeters"}.`,
        ),
      ),
      tall(27, cell("columnText", "Standard"), cell("column", "Value"), cell("column", "If left empty"), meaning("")),
      ...ROWS.flatMap((one, i) =>
        "group" in one ? [groupRow(one.group), ...(i === 0 ? [unitRow(unit)] : [])] : [standardRow(one.name, choices)],
      ),
    ],
  };
}

const openingRow = (values: readonly string[]): RowDefinition<Style> =>
  row(...COLUMNS.map(([, style], i) => cell(style, values[i] ?? null)));

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
    cell("resultWord", usualInWords(name, choices.unit)),
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
