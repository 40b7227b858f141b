import { Fault } from "../length";
import type { Exact } from "./exact";
import { TURNED, UPRIGHT, type Kind, type Model, type SheetSize } from "./model";
import { isStacked, rowOf, rowsOf, type Part, type Problem } from "./problem";

/** A model, and which parts its kinds stand for. */
export interface Reduced {
  model: Model;
  /** Of each kind the pieces, in the order of the parts. */
  members: readonly (readonly Member[])[];
}

/** One or more parts laid as one piece: several where they are a row whose grain runs on. */
export interface Member {
  row: readonly RowPart[];
  /** The row runs across the sheet: it lies turned, and its parts as their own grain wants. */
  stacked?: boolean;
}

interface RowPart {
  part: number;
  /** The part's length lies along the model's height where the kind is upright. */
  flipped: boolean;
}

/**
 * Makes a model of a problem.
 * @throws Fault `sheets.noStock`, `sheets.partTooLarge`, `sheets.groupTooLarge`
 */
export function reduce(problem: Problem, whole: Exact): Reduced {
  if (problem.stock.length === 0) throw new Fault("sheets.noStock", {});
  const pieces = membersOf(problem);
  const sizes = sizesOf(problem, whole, pieces.length);
  const kinds = new Map<string, { kind: Kind; ways: number[]; members: Member[] }>();
  for (const member of pieces) {
    const { w, h, ways, member: laid } = shape(problem, whole, sizes, member);
    const key = `${w} ${h} ${ways.join("")} ${member.row.length > 1 ? member.row.map((r) => r.part).join() : ""}`;
    const same = kinds.get(key);
    if (same) {
      same.kind.count++;
      same.members.push(laid);
    } else kinds.set(key, { kind: { w, h, count: 1 }, ways, members: [laid] });
  }
  const list = [...kinds.values()];
  return {
    model: {
      kinds: list.map(({ kind }) => kind),
      sizes,
      ways: Uint8Array.from(list.flatMap(({ ways }) => ways)),
      pieces: pieces.length,
      kerf: whole.kerf,
    },
    members: list.map(({ members }) => members),
  };
}

function membersOf({ parts }: Problem): Member[] {
  const members: Member[] = [];
  const laid = new Set<string>();
  parts.forEach(({ quantity, grain, grainGroup }, part) => {
    if (grainGroup === undefined) {
      for (let n = 0; n < quantity; n++) members.push({ row: [{ part, flipped: grain === "width" }] });
    } else if (!laid.has(grainGroup)) {
      laid.add(grainGroup);
      const order = rowOf(parts, grainGroup);
      const stacked = order.length > 1 && isStacked(parts, grainGroup);
      const row = order.map((index) => ({ part: index, flipped: (parts[index]!.grain === "width") !== stacked }));
      const rows = rowsOf(parts, grainGroup);
      for (let n = 0; n < rows; n++) members.push({ row, stacked });
    }
  });
  return members;
}

function sizesOf({ stock }: Problem, { stock: whole, kerf, trim }: Exact, pieces: number): SheetSize[] {
  return stock.map(({ available }, s) => {
    const { length, width, cost } = whole[s]!;
    return {
      w: Math.max(0, length - 2 * trim) + kerf,
      h: Math.max(0, width - 2 * trim) + kerf,
      cost,
      weight: cost * (pieces + 1) + 1,
      available: Math.min(available ?? pieces, pieces),
    };
  });
}

interface Shape {
  w: number;
  h: number;
  ways: number[];
  member: Member;
}

function shape(problem: Problem, whole: Exact, sizes: readonly SheetSize[], { row, stacked = false }: Member): Shape {
  const { kerf, gaps } = whole;
  let [w, h] = [0, 0];
  for (const [i, { part, flipped }] of row.entries()) {
    const { length, width } = whole.parts[part]!;
    w += (flipped ? width : length) + (i < row.length - 1 ? gaps[part]! : kerf);
    h = Math.max(h, (flipped ? length : width) + kerf);
  }
  const parts = row.map(({ part }) => problem.parts[part]!);
  const free = row.length === 1 && parts[0]!.grain === "any";
  // A square is the same either way; and where any way will do, the longer side is the width.
  const turns = (way: number): number => (w === h && !stacked ? UPRIGHT : way);
  let ways = sizes.map((size, s) => {
    if (size.available === 0 || parts.some(({ from }) => from && !from.includes(s))) return 0;
    const allowed = turns(free || problem.stock[s]!.grain === "none" ? UPRIGHT | TURNED : stacked ? TURNED : UPRIGHT);
    return (w <= size.w && h <= size.h ? allowed & UPRIGHT : 0) | (h <= size.w && w <= size.h ? allowed & TURNED : 0);
  });
  if (ways.every((way) => way === 0)) throw tooLarge(parts, problem, sizes);
  let laid = row;
  if (free && h > w) {
    [w, h] = [h, w];
    ways = ways.map((way) => ((way & UPRIGHT) << 1) | (way >> 1));
    laid = row.map(({ part, flipped }) => ({ part, flipped: !flipped }));
  }
  return { w, h, ways, member: { row: laid, stacked } };
}

function tooLarge(parts: readonly Part[], { parts: all, stock, trim }: Problem, sizes: readonly SheetSize[]): Fault {
  const { name, drawer, length, width, grain, grainGroup, from } = parts[0]!;
  const rows = stock.filter((_, s) => (from ? from.includes(s) : true) && sizes[s]!.available > 0);
  const part = { part: name, drawer, index: all.indexOf(parts[0]!) };
  if (rows.length === 0) return new Fault("sheets.noneAvailable", part);
  const data = { ...part, length, width, grain, trim, stock: rows.map((row) => row.name) };
  return parts.length > 1
    ? new Fault("sheets.groupTooLarge", { ...data, group: grainGroup, count: parts.length })
    : new Fault("sheets.partTooLarge", data);
}
