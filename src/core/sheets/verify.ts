import type { Exact } from "./exact";
import { piecesOf, type Piece, type Solution } from "./solution";
import { memberOf, runsOn } from "./grain-row";
import { isStacked, rowOf, rowsOf, type Problem } from "./problem";

/**
 * What is wrong with an answer, whichever algorithm made it: nothing, if it can be cut as it says. Reads only the
 * problem, its exact sizes and the tree; knows nothing of models and drafts.
 */
export const flaws = (solution: Solution): string[] => [...flawsOf(solution)];

/**
 * An answer in which nothing is wrong, as it is.
 * @throws Error where something is: then an algorithm is to blame, never the problem
 */
export function checked(solution: Solution): Solution {
  const [flaw] = flaws(solution);
  if (flaw) throw new Error(`An answer cannot be cut as it says: ${flaw}.`);
  return solution;
}

function* flawsOf(solution: Solution): Generator<string> {
  for (const [number, sheet] of solution.sheets.entries())
    for (const flaw of sheetFlaws(solution, sheet)) yield `sheet ${number + 1}: ${flaw}`;
  yield* quantityFlaws(solution);
  yield* stockFlaws(solution);
  yield* groupFlaws(solution);
}

function* sheetFlaws({ problem, exact }: Solution, { stock, piece }: Solution["sheets"][number]): Generator<string> {
  const row = exact.stock[stock];
  if (!row) {
    yield "it is of no stock";
    return;
  }
  const { trim } = exact;
  const inside =
    piece.x === trim &&
    piece.y === trim &&
    piece.length === row.length - 2 * trim &&
    piece.width === row.width - 2 * trim;
  if (!inside) yield "it is not the trimmed sheet";
  const all = piecesOf(piece);
  const parts = all.filter(({ part }) => part);
  for (const each of all) yield* cutFlaws(each, problem, exact);
  for (const each of parts) yield* partFlaws(each, problem, exact, stock);
  if (overlap(parts, exact.kerf)) yield "two parts overlap";
}

function* cutFlaws(piece: Piece, problem: Problem, exact: Exact): Generator<string> {
  const { kerf } = exact;
  const { cut, part } = piece;
  if (!(piece.length > 0 && piece.width > 0)) yield "a piece has no size";
  else if (cut && part) yield "a part is cut up";
  else if (cut) {
    const rip = cut.kind === "rip";
    let at = rip ? piece.y : piece.x;
    const end = rip ? piece.y + piece.width : piece.x + piece.length;
    for (const [i, child] of cut.into.entries()) {
      const edge = rip
        ? child.x === piece.x && child.length === piece.length
        : child.y === piece.y && child.width === piece.width;
      if (!edge) yield "a cut does not run edge to edge";
      if ((rip ? child.y : child.x) !== at) yield "neighbors do not lie one kerf apart";
      const next = cut.into[i + 1];
      at = rip ? child.y + child.width : child.x + child.length;
      at += next ? apart(child, next, problem, exact) : kerf;
    }
    const lost = end - (at - kerf);
    if (lost < 0) yield "pieces reach beyond what they are cut from";
    if (lost > kerf || cut.into.length === 0) yield "something is left that is not listed";
    if (cut.into.length === 1 && lost === 0) yield "a cut takes nothing off";
  }
}

/** What lies between two neighbors: a kerf, or what keeps the grain running on from one to the next of its group. */
const apart = (piece: Piece, next: Piece, { parts }: Problem, { kerf, gaps }: Exact): number =>
  runsOn(parts, piece, next) ? gaps[memberOf(piece)!]! : kerf;

function* partFlaws(piece: Piece, { stock: rows, parts }: Problem, exact: Exact, stock: number): Generator<string> {
  const { index, turned } = piece.part!;
  const [part, size] = [parts[index], exact.parts[index]];
  if (!part || !size) {
    yield "a piece is of no part";
    return;
  }
  const [length, width] = turned ? [size.width, size.length] : [size.length, size.width];
  if (piece.length !== length || piece.width !== width) yield `${part.name} has not its size`;
  const free = part.grain === "any" && (part.grainGroup === undefined || rowOf(parts, part.grainGroup).length === 1);
  const grained = rows[stock]!.grain !== "none" && !free && length !== width;
  if (grained && turned !== (part.grain === "width")) yield `${part.name} lies against the grain`;
  if (part.from && !part.from.includes(stock)) yield `${part.name} is cut from stock that it may not be cut from`;
}

/** Independent of the tree: whether two parts of a sheet overlap, or no kerf lies between them. */
function overlap(parts: readonly Piece[], kerf: number): boolean {
  const sorted = [...parts].sort((a, b) => a.x - b.x);
  for (let i = 0; i < sorted.length; i++) {
    const a = sorted[i]!;
    for (let j = i + 1; j < sorted.length && sorted[j]!.x < a.x + a.length + kerf; j++) {
      const b = sorted[j]!;
      if (b.y < a.y + a.width + kerf && a.y < b.y + b.width + kerf) return true;
    }
  }
  return false;
}

function* quantityFlaws({ problem, sheets }: Solution): Generator<string> {
  const counts = problem.parts.map(() => 0);
  for (const { piece } of sheets) for (const { part } of piecesOf(piece)) if (part) counts[part.index]!++;
  for (const [p, { name, quantity }] of problem.parts.entries())
    if (counts[p] !== quantity) yield `${name} is there ${counts[p]} times, not ${quantity}`;
}

function* stockFlaws({ problem, sheets }: Solution): Generator<string> {
  for (const [s, { name, available = Infinity }] of problem.stock.entries())
    if (sheets.filter(({ stock }) => stock === s).length > available) yield `more of ${name} is cut than there is`;
}

/** The parts of a group lie in rows, in their order, as far apart as the saw or the grain wants, their lower or left edges in line. */
function* groupFlaws({ problem, exact, sheets }: Solution): Generator<string> {
  for (const group of new Set(problem.parts.map(({ grainGroup }) => grainGroup))) {
    if (group === undefined) continue;
    const order = rowOf(problem.parts, group);
    const rows = sheets.map(({ piece, stock }) => {
      const members = piecesOf(piece).filter(({ part }) => part && problem.parts[part.index]?.grainGroup === group);
      const [main, other] = isStacked(problem.parts, group) ? (["y", "x"] as const) : (["x", "y"] as const);
      const along = rowsAmong(members, order, exact.gaps, main);
      const count = along * order.length;
      if (count === members.length || problem.stock[stock]?.grain !== "none") return along;
      return along + rowsAmong(members, order, exact.gaps, other);
    });
    const found = rows.reduce((sum, n) => sum + n, 0);
    if (found < rowsOf(problem.parts, group)) yield `the grain of group ${group} does not run on`;
  }
}

/** How many whole rows lie among pieces, each piece counted in one row only. */
function rowsAmong(
  pieces: readonly Piece[],
  order: readonly number[],
  gaps: readonly number[],
  axis: "x" | "y",
): number {
  const side = axis === "x" ? "y" : "x";
  const end = (piece: Piece): number => (axis === "x" ? piece.x + piece.length : piece.y + piece.width);
  const left = [...pieces].sort((a, b) => a[axis] - b[axis]);
  let rows = 0;
  while (left.length > 0) {
    const row = [left[0]!];
    for (const index of order.slice(1)) {
      const last = row[row.length - 1]!;
      const next = left.find(
        (piece) =>
          piece.part!.index === index &&
          piece[axis] === end(last) + gaps[last.part!.index]! &&
          piece[side] === last[side],
      );
      if (next) row.push(next);
    }
    const whole = row.length === order.length && row[0]!.part!.index === order[0];
    if (whole) rows++;
    for (const piece of whole ? row : row.slice(0, 1)) left.splice(left.indexOf(piece), 1);
  }
  return rows;
}
