import { LETTERS, textRoom, type Paper } from "./paper";
import { spread } from "./spread";

/** A size between two edges, as it is to be shown. */
export interface Dimension {
  from: number;
  to: number;
  text: string;
  /** The table's name of it. */
  of: string;
  /** Of what is measured, where it is to stand beside its size. */
  name?: string;
}

/** How far a dimension line stands off, its extension lines pass it, and its oblique ends reach (ISO 129-1, from memory). */
const PAST = 1;
const TICK = 0.9;

/**
 * Heights beside what they measure: one dimension line, and the sizes at its right, apart from each other as far as
 * they need.
 * @param edge where what is measured ends
 * @param x of the dimension line
 */
export function heightsAtRight(paper: Paper, edge: number, x: number, dimensions: readonly Dimension[]): void {
  if (dimensions.length === 0) return;
  const { height } = textRoom("0");
  const middles = dimensions.map(({ from, to }) => (from + to) / 2);
  const places = spread(middles, height);
  for (const at of edges(dimensions)) extension(paper, [edge, at], [x, at]);
  dimensions.forEach(({ from, to, text, of, name }, i) => {
    paper.line("thin", [x, from], [x, to]);
    const [middle, y] = [middles[i]!, places[i]!];
    const isMoved = Math.abs(middle - y) > 0.2;
    if (isMoved) paper.line("thin", [x, middle], [x + LEADER - 0.5, y]);
    const at = x + (isMoved ? LEADER : CLEAR);
    const named = name === undefined ? {} : { after: name, room: textRoom(`${text} `).width + NAME };
    paper.label(text, at, y, { anchor: "start", of, ...named });
  });
}

const LEADER = 4;
/** Past the oblique ends of the dimension line. */
const CLEAR = 1.5;
/** The most that a name takes there. */
const NAME = 20;

/** A height at the left, its size along the dimension line, or beside it where it is longer. */
export function heightAtLeft(paper: Paper, edge: number, x: number, { from, to, text, of }: Dimension): void {
  for (const at of [from, to]) extension(paper, [edge, at], [x, at]);
  paper.line("thin", [x, from], [x, to]);
  const { width, height } = textRoom(text);
  const middle = (from + to) / 2;
  if (width > Math.abs(to - from)) paper.label(text, x - PAST, middle, { anchor: "end", of });
  else paper.label(text, x - height / 2 - 0.3, middle, { isTurned: true, of });
}

/**
 * Widths under, or over, what they measure: one dimension line, and the sizes in as many rows as they need.
 * @param edge where what is measured ends
 * @param y of the dimension line
 * @returns where the last row ends
 */
export function widthsAt(paper: Paper, edge: number, y: number, dimensions: readonly Dimension[]): number {
  const { height } = textRoom("0");
  const away = Math.sign(y - edge) || 1;
  for (const at of edges(dimensions)) extension(paper, [at, edge], [at, y]);
  const rows: number[] = [];
  for (const { from, to, text, of, name } of [...dimensions].sort((a, b) => a.from + a.to - b.from - b.to)) {
    paper.line("thin", [from, y], [to, y]);
    const middle = (from + to) / 2;
    const half = textRoom(name === undefined ? text : `${text} ${name}`).width / 2 + 0.5;
    let row = rows.findIndex((end) => end <= middle - half);
    if (row < 0) row = rows.length;
    rows[row] = middle + half;
    const at = y + away * (height * (row + 0.5) + PAST);
    paper.label(text, middle, at, { of, ...(name !== undefined && { after: name }) });
  }
  return y + away * (height * rows.length + PAST);
}

const edges = (dimensions: readonly Dimension[]): number[] => [
  ...new Set(dimensions.flatMap(({ from, to }) => [from, to])),
];

type Point = readonly [number, number];

/** From an edge past the dimension line, with the oblique end that bounds it there. */
function extension(paper: Paper, [ax, ay]: Point, [bx, by]: Point): void {
  const [dx, dy] = [Math.sign(bx - ax), Math.sign(by - ay)];
  paper.line("thin", [ax + dx * GAP, ay + dy * GAP], [bx + dx * PAST, by + dy * PAST]);
  paper.line("thin", [bx - TICK, by + TICK], [bx + TICK, by - TICK]);
}

const GAP = 0.8;

/** Lines of text under a drawing. */
export function notes(paper: Paper, x: number, lines: readonly { text: string; of?: string; room?: number }[]): void {
  const { height } = textRoom("0", LETTERS.usual);
  let y = paper.box.bottom + height;
  for (const { text, of, room } of lines) {
    paper.label(text, x, y, { anchor: "start", ...(of !== undefined && { of }), ...(room !== undefined && { room }) });
    y += height;
  }
}
