import type { Exact } from "./exact";
import { piecesOf, type Piece, type Solution } from "./solution";
import { rowOf, rowsOf, type Part } from "./problem";

/**
 * What is wrong with an answer, whichever algorithm made it: nothing, if it can be cut as it says. Reads only the
 * problem, its exact sizes and the tree; knows nothing of models and drafts.
 */
export function flaws(solution: Solution): string[] {
  return [
    ...solution.sheets.flatMap((sheet, number) =>
      sheetFlaws(solution, sheet).map((flaw) => `sheet ${number + 1}: ${flaw}`),
    ),
    ...quantityFlaws(solution),
    ...stockFlaws(solution),
    ...groupFlaws(solution),
  ];
}

function sheetFlaws({ problem, exact }: Solution, { stock, piece }: Solution["sheets"][number]): string[] {
  const row = exact.stock[stock];
  if (!row) return ["it is of no stock"];
  const { trim } = exact;
  const inside =
    piece.x === trim &&
    piece.y === trim &&
    piece.length === row.length - 2 * trim &&
    piece.width === row.width - 2 * trim;
  const all = [...piecesOf(piece)];
  const parts = all.filter(({ part }) => part);
  return [
    ...(inside ? [] : ["it is not the trimmed sheet"]),
    ...all.flatMap((each) => cutFlaws(each, exact)),
    ...parts.flatMap((each) => partFlaws(each, problem.parts[each.part!.index], exact, stock, problem)),
    ...overlaps(parts, exact.kerf),
  ];
}

function cutFlaws(piece: Piece, { kerf }: Exact): string[] {
  const { cut, part } = piece;
  if (!(piece.length > 0 && piece.width > 0)) return ["a piece has no size"];
  if (!cut) return [];
  if (part) return ["a part is cut up"];
  const rip = cut.kind === "rip";
  let at = rip ? piece.y : piece.x;
  const end = rip ? piece.y + piece.width : piece.x + piece.length;
  const wrong: string[] = [];
  for (const child of cut.into) {
    const edge = rip
      ? child.x === piece.x && child.length === piece.length
      : child.y === piece.y && child.width === piece.width;
    if (!edge) wrong.push("a cut does not run edge to edge");
    if ((rip ? child.y : child.x) !== at) wrong.push("neighbours do not lie one kerf apart");
    at = (rip ? child.y + child.width : child.x + child.length) + kerf;
  }
  const lost = end - (at - kerf);
  if (lost < 0) wrong.push("pieces reach beyond what they are cut from");
  if (lost > kerf || cut.into.length === 0) wrong.push("something is left that is not listed");
  if (cut.into.length === 1 && lost === 0) wrong.push("a cut takes nothing off");
  return wrong;
}

function partFlaws(
  piece: Piece,
  part: Part | undefined,
  exact: Exact,
  stock: number,
  { stock: rows, parts }: Solution["problem"],
): string[] {
  const { index, turned } = piece.part!;
  const size = exact.parts[index];
  if (!part || !size) return ["a piece is of no part"];
  const right = turned
    ? piece.length === size.width && piece.width === size.length
    : piece.length === size.length && piece.width === size.width;
  const free = part.grain === "any" && (part.grainGroup === undefined || rowOf(parts, part.grainGroup).length === 1);
  const grained = rows[stock]!.grain !== "none" && !free;
  const square = size.length === size.width;
  const astray = grained && !square && turned !== (part.grain === "width");
  return [
    ...(right ? [] : [`${part.name} has not its size`]),
    ...(astray ? [`${part.name} lies against the grain`] : []),
    ...(part.from && !part.from.includes(stock) ? [`${part.name} is cut from stock that it may not be cut from`] : []),
  ];
}

/** Independent of the tree: no two parts of a sheet overlap, and a kerf lies between them one way or the other. */
function overlaps(parts: readonly Piece[], kerf: number): string[] {
  const sorted = [...parts].sort((a, b) => a.x - b.x);
  for (let i = 0; i < sorted.length; i++) {
    const a = sorted[i]!;
    for (let j = i + 1; j < sorted.length && sorted[j]!.x < a.x + a.length + kerf; j++) {
      const b = sorted[j]!;
      if (b.y < a.y + a.width + kerf && a.y < b.y + b.width + kerf) return ["two parts overlap"];
    }
  }
  return [];
}

function quantityFlaws({ problem, sheets }: Solution): string[] {
  const counts = problem.parts.map(() => 0);
  for (const { piece } of sheets) for (const { part } of piecesOf(piece)) if (part) counts[part.index]!++;
  return problem.parts.flatMap(({ name, quantity }, p) =>
    counts[p] === quantity ? [] : [`${name} is there ${counts[p]} times, not ${quantity}`],
  );
}

function stockFlaws({ problem, sheets }: Solution): string[] {
  return problem.stock.flatMap(({ name, available }, s) =>
    available !== undefined && sheets.filter(({ stock }) => stock === s).length > available
      ? [`more of ${name} is cut than there is`]
      : [],
  );
}

/** The parts of a group lie in rows, in their order, one kerf apart, their lower or left edges in line. */
function groupFlaws({ problem, exact, sheets }: Solution): string[] {
  const groups = new Set(problem.parts.flatMap(({ grainGroup }) => (grainGroup === undefined ? [] : [grainGroup])));
  return [...groups].flatMap((group) => {
    const order = rowOf(problem.parts, group);
    const rows = sheets.map(({ piece, stock }) => {
      const members = [...piecesOf(piece)].filter(
        ({ part }) => part && problem.parts[part.index]?.grainGroup === group,
      );
      const along = rowsAmong(members, order, exact.kerf, "x");
      const count = along * order.length;
      if (count === members.length || problem.stock[stock]?.grain !== "none") return along;
      return along + rowsAmong(members, order, exact.kerf, "y");
    });
    const found = rows.reduce((sum, n) => sum + n, 0);
    return found >= rowsOf(problem.parts, group) ? [] : [`the grain of group ${group} does not run on`];
  });
}

/** How many whole rows lie among pieces, each piece counted in one row only. */
function rowsAmong(pieces: readonly Piece[], order: readonly number[], kerf: number, axis: "x" | "y"): number {
  const side = axis === "x" ? "y" : "x";
  const end = (piece: Piece): number => (axis === "x" ? piece.x + piece.length : piece.y + piece.width);
  const left = [...pieces].sort((a, b) => a[axis] - b[axis]);
  let rows = 0;
  while (left.length > 0) {
    const row = [left[0]!];
    for (const index of order.slice(1)) {
      const last = row[row.length - 1]!;
      const next = left.find(
        (piece) => piece.part!.index === index && piece[axis] === end(last) + kerf && piece[side] === last[side],
      );
      if (next) row.push(next);
    }
    const whole = row.length === order.length && row[0]!.part!.index === order[0];
    if (whole) rows++;
    for (const piece of whole ? row : row.slice(0, 1)) left.splice(left.indexOf(piece), 1);
  }
  return rows;
}
