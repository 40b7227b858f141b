import type { Exact } from "./exact";
import { piecesOf, WAYS, type Cut, type Piece, type Solution } from "./solution";
import { apart, gapAfter } from "./grain-row";
import { isStacked, linesOf, rowsOf } from "./problem";

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

function* sheetFlaws(solution: Solution, { stock, piece }: Solution["sheets"][number]): Generator<string> {
  const { exact } = solution;
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
  for (const each of all) yield* cutFlaws(each, solution);
  for (const each of parts) yield* partFlaws(each, solution, stock);
  if (overlap(parts, exact.kerf)) yield "two parts overlap";
}

function* cutFlaws(piece: Piece, solution: Solution): Generator<string> {
  const { kerf } = solution.exact;
  const { cut, part } = piece;
  if (!(piece.length > 0 && piece.width > 0)) yield "a piece has no size";
  else if (cut && part) yield "a part is cut up";
  else if (cut) {
    const { at: axis, side, other } = WAYS[cut.kind];
    const across = WAYS[other];
    let at = piece[axis];
    const end = at + piece[side];
    for (const [i, child] of cut.into.entries()) {
      if (child[across.at] !== piece[across.at] || child[across.side] !== piece[across.side])
        yield "a cut does not run edge to edge";
      if (child[axis] !== at) yield "neighbors do not lie one kerf apart";
      at = child[axis] + child[side] + (apart(solution, child, cut.into[i + 1]) ?? kerf);
    }
    const lost = end - (at - kerf);
    if (lost < 0) yield "pieces reach beyond what they are cut from";
    if (lost > kerf || cut.into.length === 0) yield "something is left that is not listed";
    if (cut.into.length === 1 && lost === 0) yield "a cut takes nothing off";
  }
}

function* partFlaws(piece: Piece, { problem, exact }: Solution, stock: number): Generator<string> {
  const { stock: rows, parts } = problem;
  const { index, turned } = piece.part!;
  const [part, size] = [parts[index], exact.parts[index]];
  if (!part || !size) {
    yield "a piece is of no part";
    return;
  }
  const [length, width] = turned ? [size.width, size.length] : [size.length, size.width];
  if (piece.length !== length || piece.width !== width) yield `${part.name} has not its size`;
  const free =
    part.grain === "any" && (part.grainGroup === undefined || linesOf(parts, part.grainGroup).flat().length === 1);
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

/**
 * The parts of a group lie in rows, in their lines and order, as far apart as the saw or the grain wants, the lower or
 * left edges of a line in line.
 */
function* groupFlaws({ problem, exact, sheets }: Solution): Generator<string> {
  for (const group of new Set(problem.parts.map(({ grainGroup }) => grainGroup))) {
    if (group === undefined) continue;
    const lines = linesOf(problem.parts, group);
    const order = lines.flat();
    const rows = sheets.map(({ piece, stock }) => {
      const members = piecesOf(piece).filter(({ part }) => part && problem.parts[part.index]?.grainGroup === group);
      const main = isStacked(problem.parts, group) ? "rip" : "crosscut";
      const along = rowsAmong(members, lines, exact, main);
      const count = along * order.length;
      if (count === members.length || problem.stock[stock]?.grain !== "none") return along;
      return along + rowsAmong(members, lines, exact, WAYS[main].other, true);
    });
    const found = rows.reduce((sum, n) => sum + n, 0);
    if (found < rowsOf(problem.parts, group)) yield `the grain of group ${group} does not run on`;
  }
}

/**
 * How many whole rows lie among pieces, each piece counted in one row only.
 * @param isBack their lines lie the other way round: what lies turned is not mirrored
 */
function rowsAmong(
  pieces: readonly Piece[],
  lines: readonly (readonly number[])[],
  exact: Exact,
  way: Cut["kind"],
  isBack = false,
): number {
  const { at: axis, side: along, other } = WAYS[way];
  const { at: side, side: across } = WAYS[other];
  const ordered = isBack ? [...lines].reverse() : lines;
  const counted = new Set<Piece>();
  let rows = 0;
  for (const first of [...pieces].sort((a, b) => a[axis] - b[axis])) {
    const row: Piece[] = [];
    let from = first[side];
    const whole = ordered.every((line, k) => {
      let [at, most] = [first[axis], 0];
      const found = line.every((index) => {
        const next = pieces.find(
          (piece) => piece.part!.index === index && piece[axis] === at && piece[side] === from && !counted.has(piece),
        );
        if (!next) return false;
        row.push(next);
        at += next[along] + exact.gaps[index]!;
        most = Math.max(most, next[across]);
        return true;
      });
      from += most + gapAfter(isBack ? (ordered[k + 1] ?? []) : line, exact);
      return found;
    });
    if (!whole) continue;
    rows++;
    for (const piece of row) counted.add(piece);
  }
  return rows;
}
