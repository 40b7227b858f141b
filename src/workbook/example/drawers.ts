import type { RowDefinition, SheetDefinition } from "../author/index";
import { cell, gap, heading, row, tall } from "./cells";
import type { Style } from "./styles";

/** Rows that each opening has for its drawers; a longer list spills into the next heading, and says so. */
const ROOM = 6;
const COLUMNS = ["Front width", "Front height", "Lower edge", "Room", "Box height", "Box width", "Box depth"];

/** One opening's drawers, from the top. */
function opening(name: string, column: string, headingRow: number): RowDefinition<Style>[] {
  const first = headingRow + 1;
  const last = headingRow + ROOM;
  const one = (i: number): RowDefinition<Style> => {
    const r = first + i;
    const isThere = (formula: string): string => `=IF(C${r}="","",${formula})`;
    const result = (formula: string) => cell("result", isThere(formula));
    const upper = i === 0 ? `Bench!$${column}$8+Bench!$B$16-Bench!$B$18` : `D${r - 1}-Bench!$B$17`;
    // The room ends half-way into each gap, and never outside the opening.
    const top = i === 0 ? `Bench!$${column}$8` : `D${r - 1}-Bench!$B$17/2`;
    const bottom = `MAX(0,IF(C${r + 1}="",D${r},D${r}-Bench!$B$17/2))`;
    const box = `DRAWER.BOXHEIGHT(MINIFS(E$${first}:E$${last},C$${first}:C$${last},C${r}),Bench!$B$21,Bench!$B$22,Bench!$B$23)`;
    return row(
      cell("key", isThere(`"${name}${i + 1}"`)),
      result(`Bench!$${column}$37`),
      cell(
        "result",
        i === 0 ? `=DRAWER.FRONTHEIGHTS(Bench!${column}39,Bench!${column}10,Bench!$B$17,0,0,Bench!$B$24)` : null,
      ),
      result(`${upper}-C${r}`),
      result(`${top}-${i === ROOM - 1 ? `MAX(0,D${r})` : bottom}`),
      result(box),
      result(`Bench!$${column}$29`),
      result(`Bench!$${column}$30`),
      cell(
        "note",
        i === 0
          ? `=IF(ABS(SUM(C${r}#)+(ROWS(C${r}#)-1)*Bench!$B$17-Bench!${column}39)<0.0001,"Fronts and gaps fill the face.","Fronts and gaps do not fill the face.")`
          : null,
      ),
    );
  };
  return [heading(`Opening ${name}`, COLUMNS, ""), ...Array.from({ length: ROOM }, (_, i) => one(i)), gap()];
}

/** Every drawer's front and box. */
export const DRAWERS: SheetDefinition<Style> = {
  name: "Drawers",
  widths: [14, 13, 13, 13, 11, 12, 12, 12, 38],
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
