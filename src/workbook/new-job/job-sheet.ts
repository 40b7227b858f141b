import { STANDARDS_HELP, usualInWords } from "../../guide/index";
import { columnLetters } from "../address";
import type { RowDefinition, SheetDefinition } from "../author/definition";
import { cell, gap, row, tall } from "./cells";
import type { Style } from "./styles";
import type { Choices } from "./choices";
import { byUnit, jobPlaces, STANDARD_ROWS, TOP, type StandardName } from "./job-places";
import { filledOf, jobRows, jobTable } from "./job-table";
import { pageOf } from "./page";
import { CHECKS, plannedOf, QUOTE } from "./sheet-tables";

/** All that a person types about a job: its openings, and whatever the shop does otherwise than usual. */
export function jobSheet(choices: Choices): SheetDefinition<Style> {
  const { columns, words } = jobTable(choices);
  const { standardsTop, rowOf, unit } = jobPlaces(choices);
  const ownUnit = unit.replace("Job!", "");
  const last = columnLetters(columns.length - 1);
  return {
    name: "Job",
    widths: columns.map(([name], i) => [28, 17, 17, 12, 22][i] ?? NARROW[name] ?? name.length + 4),
    selected: `B${TOP + 1}`,
    merged: [...[1, 2, 3, 4].map((r) => `A${r}:${last}${r}`), `A${standardsTop - 1}:G${standardsTop - 1}`],
    page: pageOf(choices),
    lists: [
      { area: `B${standardsTop + 2}`, words: ["in", "mm"] },
      ...STANDARD_ROWS.flatMap((one) => {
        const words = "name" in one && STANDARDS_HELP[one.name].choices;
        return words ? [{ area: `B${rowOf(one.name)}`, words }] : [];
      }),
    ],
    rows: [
      tall(36, cell("title", filledOf(choices)?.title ?? "The job")),
      ...words.map((text) => row(cell("subtitle", text))),
      tall(27, cell("bareKey", comeTo(choices))),
      tall(27, ...columns.map(([name, style]) => cell(style === "inputText" ? "columnText" : "column", name))),
      ...jobRows(choices).map((cells) => row(...cells)),
      gap(),
      row(
        cell(
          "subtitle",
          `="Your standards. Leave one empty and the usual holds; write none for zero. Plain numbers are "&IF(${ownUnit}="mm","millimeters.","inches.")`,
        ),
      ),
      tall(27, cell("columnText", "Standard"), cell("column", "Value"), cell("column", "If left empty"), meaning("")),
      ...STANDARD_ROWS.flatMap((one, i) =>
        "group" in one
          ? [groupRow(one.group), ...(i === 0 ? [unitRow(choices.unit)] : [])]
          : [standardRow(one.name, choices, ownUnit)],
      ),
    ],
  };
}

/** Characters of columns that take a count or a short name. */
const NARROW: Readonly<Record<string, number>> = { Cabinet: 11, Quantity: 10, Columns: 11 };

const counted = (level: string): string => `COUNTIF(INDEX(${CHECKS},0,2),"${level}")`;

/** What the plan, its checks and the quote come to, in sight of whoever types. */
function comeTo(choices: Choices): string {
  const planned = plannedOf(choices);
  return (
    `=IF(ISERROR(Plan!$A$5),"Not planned yet: select Plan!A5 to read why.",` +
    `"Planned: "&${planned}&IF(${planned}=1," drawer"," drawers")&". Checks: "&` +
    `IF(${counted("wrong")}+${counted("doubtful")}=0,"nothing found",${counted("wrong")}&" wrong, "&${counted("doubtful")}&" doubtful")&". "&` +
    `IFERROR("Total: "&TEXT(INDEX(${QUOTE},MATCH("Total",INDEX(${QUOTE},0,1),0),6),"#,##0.00"),"No price yet")&".")`
  );
}

const meaning = (text: string) => cell("remark", text);

const groupRow = (name: string): RowDefinition<Style> => tall(24, null, null, null, cell("bareKey", name));

const unitRow = (unit: string): RowDefinition<Style> =>
  row(
    cell("label", "unit"),
    cell("input", unit),
    cell("resultWord", "in"),
    cell("note", "Of plain numbers: in or mm."),
  );

function standardRow(name: StandardName, choices: Choices, unit: string): RowDefinition<Style> {
  const { meaning, choices: words } = STANDARDS_HELP[name];
  const said = words ? `${meaning} ${listed(words)}.` : meaning;
  return row(
    cell("label", name),
    cell("input", chosen(name, choices)),
    cell("resultWord", byUnit(usualInWords(name, "in"), usualInWords(name, "mm"), unit)),
    cell("note", said),
  );
}

const listed = (words: readonly string[]): string => `${words.slice(0, -1).join(", ")} or ${words[words.length - 1]!}`;

/** What was chosen stands in its cell even where it is the usual, for it was chosen. */
function chosen(name: StandardName, choices: Choices): string | null {
  const { construction, slide, sideThickness, dataSheet } = choices;
  if (name === "construction") return construction;
  if (name === "slide") return slide;
  if (name === "side thickness") return sideThickness || null;
  return dataSheet[name] || filledOf(choices)?.standards[name] || null;
}
