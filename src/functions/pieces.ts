import { piecesOf, type Piece } from "../core/drawer";
import type { Unit } from "../core/length";
import { cellFunction, openings, plannedOrFault, standards } from "./calls";
import { grainColumns, lengthResult, table, type CellResult } from "./cells";
import { edgesWords, pieceLabel } from "./words";

/**
 * Lists every physical piece of a job in a row of its own, with a label to stick on it and the set-ups that it goes through.
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @returns {any[][]} A table: Piece (its label; copies are counted), Drawer, Part, Length (with the grain), Width, Thickness, Material, Grain, Edges (to be banded), Set-ups (steps of SETUPS), and where fronts match Grain group and what else PARTS tells of it; cut sizes, in the unit
 * @throws #VALUE! or #N/A where a table cannot be read or any opening cannot be planned, or where there are more than 10,000 pieces
 * @example =DRAWER.PIECES({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,23.25,1}) // => {"Piece","Drawer","Part","Length","Width","Thickness","Material","Grain","Edges","Set-ups";"B1 left side","B1","Side",22,25.5,0.5,"Plywood","length","",…;…}
 * @source common practice: every piece is marked with its place as it comes off the saw
 */
export function PIECES(openings: any[][], standards?: any[][]): any[][] {
  return call([openings, standards]);
}

const call = cellFunction([openings, standards], ([, { job }], unit) => {
  const pieces = piecesOf(plannedOrFault(job), unit);
  const matched = grainColumns(
    pieces.map(({ part }) => part),
    unit,
  );
  return table(
    [...HEADINGS, ...matched.headings],
    pieces.map((piece) => [
      ...rowOf(piece, unit),
      // Each copy of an opening has a strip of its own.
      ...matched.cells({ ...piece.part, ...grainGroupOf(piece) }),
    ]),
  );
});

const grainGroupOf = ({ part: { grainGroup }, copy }: Piece): { grainGroup?: string } =>
  grainGroup !== undefined && copy ? { grainGroup: `${grainGroup}, copy ${copy.number}` } : {};

const HEADINGS = ["Piece", "Drawer", "Part", "Length", "Width", "Thickness", "Material", "Grain", "Edges", "Set-ups"];

function rowOf(piece: Piece, unit: Unit): CellResult[] {
  const { name, length, width, thickness, material, grain } = piece.part;
  return [
    pieceLabel(piece),
    piece.drawer,
    name,
    lengthResult(length, unit),
    lengthResult(width, unit),
    lengthResult(thickness, unit),
    material,
    grain,
    edgesWords(piece.bands, unit),
    piece.setUps.join(", "),
  ];
}
