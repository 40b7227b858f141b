import { showLength, showNumber, type SafeSizes, type Unit } from "../core/length";
import {
  offcuts,
  placements,
  sawCuts,
  type Offcut,
  type PartToCut,
  type Placement,
  type SheetStock,
  type Solution,
} from "../core/sheets";
import { Asides } from "./asides";
import { cutNumbers } from "./cut-numbers";
import { heightAtLeft, notes, widthsAt } from "./dimensions";
import type { Drawing } from "./drawing";
import { Paper, textRoom } from "./paper";
import { key } from "./key";
import { pieceLabel, type PieceText } from "./piece-label";
import { scaleFor, type Scale } from "./scale";

/** What a sheet may take on the paper, in millimeters. */
interface SheetRoom {
  length: number;
  width: number;
}

/** Letter and A4 lie across with its sizes beside it. */
const ROOM: SheetRoom = { length: 210, width: 140 };

/** What is cut from sheets of one kind, and how. */
export interface CutGroup {
  parts: readonly PartToCut[];
  stock: readonly SheetStock[];
  solution: Solution;
}

/**
 * One sheet as it is laid out: its pieces with their names, sizes and grain, and its cuts with their numbers in the order
 * in which they are made. What has no room for its name has a letter, and stands under the sheet.
 * @param sheet its number in the group, from 1
 * @param number that it is called by, where there are several groups
 */
export function sheetLayout(
  { parts, stock, solution }: CutGroup,
  sheet: number,
  number: number,
  unit: Unit,
  safe: SafeSizes,
  room = ROOM,
): Drawing {
  const row = stock[solution.sheets[sheet - 1]!.stock]!;
  const scale = scaleFor(
    [
      [row.length, room.length],
      [row.width, room.width],
    ],
    unit,
  );
  const paper = new Paper();
  const here = <T extends { sheet: number }>(all: readonly T[]): T[] => all.filter((one) => one.sheet === sheet);
  const pieces = here(placements(solution));
  const waste = here(offcuts(solution));
  const rectangle = (of: Offcut | Placement, line: "visible" | "thin"): void =>
    paper.rectangle(
      line,
      scale.of(of.fromLeft),
      -scale.of(of.fromBottom) - scale.of(of.width),
      scale.of(of.length),
      scale.of(of.width),
    );
  paper.rectangle("visible", 0, -scale.of(row.width), scale.of(row.length), scale.of(row.width), "paper");
  for (const offcut of waste) rectangle(offcut, "thin");
  for (const piece of pieces) rectangle(piece, "visible");

  const asides = new Asides();
  pieces.forEach((piece, i) =>
    pieceLabel(paper, scale, piece, textOf(piece, parts[piece.part]!, `Sheet ${number} piece ${i + 1}`, unit), asides),
  );
  for (const offcut of waste) {
    const size = `${showNumber(offcut.length, unit)} × ${showNumber(offcut.width, unit)}`;
    pieceLabel(paper, scale, offcut, { name: "offcut", size, of: `Sheet ${number} offcut` });
  }
  const cuts = here(sawCuts(solution, safe));
  cutNumbers(paper, scale, cuts, solution.exact, row, asides);
  const hasGrain = row.grain !== "none";
  if (hasGrain) {
    for (const piece of pieces) if (parts[piece.part]!.grain !== "any") grainArrow(paper, scale, piece);
  }
  asides.write(paper, paper.box.right + 3);
  const { bottom, left } = paper.box;
  heightAtLeft(paper, left, left - 4, {
    from: -scale.of(row.width),
    to: 0,
    text: showLength(row.width, unit),
    of: `Sheet ${number} width`,
  });
  widthsAt(paper, bottom, bottom + 4, [
    { from: 0, to: scale.of(row.length), text: showLength(row.length, unit), of: `Sheet ${number} length` },
  ]);
  const material = row.material || parts[pieces[0]!.part]!.material;
  const thickness = row.thickness ?? parts[pieces[0]!.part]!.thickness;
  notes(paper, paper.box.left, [
    {
      text: `Sheet ${number}${material && `, ${material}`}${thickness ? `, ${showLength(thickness, unit)}` : ""}`,
      of: `Sheet ${number} material`,
      room: scale.of(row.length) + 20,
    },
    {
      text: `${hasGrain ? "Grain runs along the length" : "Pieces may turn"}; sizes in ${unit === "in" ? "inches" : "millimeters"}`,
    },
    ...(cuts.length > 0 ? [{ text: "Rings: cuts in their order, each at the edge that it cuts free" }] : []),
    ...unnumbered(asides.unnumbered, room.length - 60),
    { text: `Scale ${scale.name}`, of: "scale" },
  ]);
  key(paper, asides.key, paper.box.left, scale.of(row.length) + 20);
  return paper.finish(`Layout of sheet ${number}`, about(pieces, parts, unit, cuts.length));
}

function textOf({ length, width }: Placement, part: PartToCut, of: string, unit: Unit): PieceText {
  return { name: nameOf(part), size: `${showNumber(length, unit)} × ${showNumber(width, unit)}`, of };
}

/** A piece with the drawers that it may go to. */
const nameOf = ({ name, drawer, labeled }: PartToCut): string => (labeled || !drawer ? name : `${name} ${drawer}`);

/** Cuts that are not to be seen in so small a drawing, as many in a line as go in. */
function unnumbered(steps: readonly number[], most: number): { text: string; of: string }[] {
  const lines: string[] = [];
  for (const step of steps) {
    const last = lines[lines.length - 1];
    const longer = last === undefined ? `No room at their edges: cuts ${step}` : `${last}, ${step}`;
    if (last !== undefined && textRoom(`${longer},`).width > most) lines.push(String(step));
    else lines[Math.max(0, lines.length - 1)] = longer;
  }
  return lines.map((text, i) => ({ text: i < lines.length - 1 ? `${text},` : text, of: "cuts" }));
}

/** Where there is room: for the eye, since all that has grain lies along the sheet's. */
function grainArrow(paper: Paper, scale: Scale, { fromLeft, fromBottom, length, width }: Placement): void {
  const [left, bottom] = [scale.of(fromLeft), -scale.of(fromBottom)];
  const [long, high] = [scale.of(length), scale.of(width)];
  const half = ARROW.length / 2;
  const [x, low] = [left + long / 2, bottom - ARROW.height];
  const places = [low, bottom - high + ARROW.height].flatMap((y) =>
    [x, left + half + 1, left + long - half - 1].map((at) => [at, y] as const),
  );
  const box = ([x, y]: readonly [number, number]) => ({
    left: x - half,
    right: x + half,
    top: y - ARROW.height / 2,
    bottom: y + ARROW.height / 2,
  });
  const place = places.find((at) => paper.isFree(box(at)));
  if (!place || long < ARROW.length + 2 || high < 2 * ARROW.height) return;
  paper.keep(box(place));
  const [at, y] = place;
  paper.line("thin", [at - half, y], [at + half, y]);
  for (const [tip, back] of [
    [at - half, 1.2],
    [at + half, -1.2],
  ] as const) {
    paper.line("thin", [tip + back, y - 0.5], [tip, y], [tip + back, y + 0.5]);
  }
}

const ARROW = { length: 7, height: 1.6 };

const about = (pieces: readonly Placement[], parts: readonly PartToCut[], unit: Unit, cuts: number): string => {
  const said = pieces.map(
    ({ part, length, width }) => `${nameOf(parts[part]!)} ${showNumber(length, unit)} × ${showNumber(width, unit)}`,
  );
  return `${pieces.length} pieces, ${cuts} cuts. From the lower left: ${said.join("; ")}.`;
};
