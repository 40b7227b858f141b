import type { RowDefinition, SheetDefinition } from "../author/definition";
import { cell, gap, heading, row, tall } from "./cells";
import { fixed, inches, OPENINGS, STANDARDS } from "./job";
import type { Style } from "./styles";

/** Rows that each opening has for its drawers; a longer list says so, and stands on the sheet Plan. */
const ROOM = 6;
const COLUMNS = ["Front width", "Front height", "Lower edge", "Room", "Box height", "Box width", "Box depth"];

/** Where the plan's drawers stand, and in which columns the sizes that are shown here. */
const PLANNED = "$6:$105";
const planned = (letter: string): string => `Plan!$${letter}${PLANNED.replace(":", `:$${letter}`)}`;
const SIZES = ["C", "D", "E", "", "G", "F", "H"];

/** One opening's drawers, from the top. */
function opening(name: string, benchColumn: string, headingRow: number): RowDefinition<Style>[] {
  const first = headingRow + 1;
  const heights = `C${first}:C${headingRow + ROOM}`;
  const one = (i: number): RowDefinition<Style> => {
    const r = first + i;
    const label = `${name}${i + 1}`;
    // An opening that cannot be planned has one row with its own label; a job that cannot be read has none.
    const missing = i === 0 ? `IF(ISERROR(Plan!$A$5),Plan!$A$5,"${name}")` : '""';
    const size = (letter: string): string =>
      letter === ""
        ? `INDEX(DRAWER.WORKING(${fixed(OPENINGS)},$A${r},${fixed(STANDARDS)}),MATCH("Zone height",INDEX(DRAWER.WORKING(${fixed(OPENINGS)},$A${r},${fixed(STANDARDS)}),0,1),0),2)`
        : `INDEX(${planned(letter)},MATCH($A${r},${planned("A")},0))`;
    return row(
      cell("key", `=IF(COUNTIF(${planned("A")},"${label}")>0,"${label}",${missing})`),
      ...SIZES.map((letter) => cell("result", `=IF($A${r}="","",${size(letter)})`)),
      cell("note", i === 0 ? said(name, r, heights, `Bench!$${benchColumn}$39`) : null),
    );
  };
  return [heading(`Opening ${name}`, COLUMNS, ""), ...Array.from({ length: ROOM }, (_, i) => one(i)), gap()];
}

/** Whether fronts and gaps add up to the face, by a native sum. */
const said = (name: string, r: number, heights: string, face: string): string =>
  `=IF(ISERROR(C${r}),"",IF(COUNTIF(${planned("B")},"${name}")>${ROOM},"More drawers than rows here: see the sheet Plan.",` +
  `IF(ABS(SUM(${heights})+(COUNT(${heights})-1)*${inches("front gap")}-${face})<0.0001,` +
  `"Fronts and gaps fill the face.","Fronts and gaps do not fill the face.")))`;

/** Every drawer's front and box. */
export const DRAWERS: SheetDefinition<Style> = {
  name: "Drawers",
  widths: [14, 13, 13, 13, 11, 12, 12, 12, 48],
  selected: "C5",
  merged: ["A1:I1", "A2:I2"],
  rows: [
    tall(36, cell("title", "Drawer by drawer")),
    row(
      cell(
        "subtitle",
        "Heights in inches up from the opening’s floor. Boxes behind equal fronts take the least of their rooms. Up to six drawers an opening.",
      ),
    ),
    gap(),
    ...opening("A", "B", 4),
    ...opening("B", "C", 12),
    ...opening("C", "D", 20),
  ],
};
