import { Fault } from "../length";
import type { Exact } from "./exact";
import { TURNED, UPRIGHT, type Kind, type Model, type SheetSize } from "./model";
import { gapAfter } from "./grain-row";
import { isStacked, linesOf, rowsOf, type Part, type Problem } from "./problem";

/** A model, and which parts its kinds stand for. */
export interface Reduced {
  model: Model;
  /** Of each kind the pieces, in the order of the parts. */
  members: readonly (readonly Member[])[];
}

/** One or more parts laid as one piece: several where they are a row whose grain runs on, in one line or more. */
export interface Member {
  lines: readonly Line[];
  /** How many there are of it. */
  count: number;
  /** What is a row: rows of other parts are other pieces, whatever their size. */
  group?: string | undefined;
  /** The row runs across the sheet: it lies turned, and its parts as their own grain wants. */
  stacked: boolean;
}

/** As a row lies along the model's width: how much a line takes across it, and what lies before the next. */
interface Line {
  row: readonly RowPart[];
  size: number;
  gap: number;
}

/** What a part takes along its line and across it, and what lies before the next. */
interface RowPart {
  part: number;
  /** The part's length lies along the model's height where the kind is upright. */
  flipped: boolean;
  size: number;
  across: number;
  gap: number;
}

/**
 * Makes a model of a problem.
 * @throws Fault `sheets.noStock`, `sheets.partTooLarge`, `sheets.groupTooLarge`
 */
export function reduce(problem: Problem, whole: Exact): Reduced {
  if (problem.stock.length === 0) throw new Fault("sheets.noStock", {});
  const all = membersOf(problem, whole);
  const pieces = all.reduce((sum, { count }) => sum + count, 0);
  const sizes = sizesOf(problem, whole, pieces);
  const kinds = new Map<string, { kind: Kind; ways: number[]; members: Member[] }>();
  for (const member of all) {
    const { w, h, ways } = shape(problem, sizes, member);
    const key = `${w} ${h} ${ways.join("")} ${member.group ?? ""}`;
    const same = kinds.get(key) ?? { kind: { w, h, count: 0 }, ways, members: [] };
    kinds.set(key, same);
    same.kind.count += member.count;
    for (let n = 0; n < member.count; n++) same.members.push(member);
  }
  const list = [...kinds.values()];
  return {
    model: {
      kinds: list.map(({ kind }) => kind),
      sizes,
      ways: Uint8Array.from(list.flatMap(({ ways }) => ways)),
      pieces,
      kerf: whole.kerf,
    },
    members: list.map(({ members }) => members),
  };
}

function membersOf({ parts }: Problem, whole: Exact): Member[] {
  const members: Member[] = [];
  const laid = new Set<string>();
  parts.forEach(({ quantity, grainGroup: group }, part) => {
    const count = group === undefined ? quantity : laid.has(group) ? 0 : rowsOf(parts, group);
    if (count === 0) return;
    if (group !== undefined) laid.add(group);
    const order = group === undefined ? [[part]] : linesOf(parts, group);
    const isOne = order.flat().length === 1;
    const stacked = !isOne && isStacked(parts, group!);
    const lines = order.map((line, k): Line => {
      const row = line.map((index, i): RowPart => {
        const { length, width } = whole.parts[index]!;
        const { grain } = parts[index]!;
        // Where any way will do, the longer side is the width.
        const flipped = isOne && grain === "any" ? width > length : (grain === "width") !== stacked;
        const [size, across] = flipped ? [width, length] : [length, width];
        return { part: index, flipped, size, across, gap: i < line.length - 1 ? whole.gaps[index]! : whole.kerf };
      });
      const gap = k < order.length - 1 ? gapAfter(line, whole) : whole.kerf;
      return { row, size: Math.max(...row.map(({ across }) => across)), gap };
    });
    members.push({ lines, stacked, count, group: isOne ? undefined : group });
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

const taken = (pieces: readonly { size: number; gap: number }[]): number =>
  pieces.reduce((sum, { size, gap }) => sum + size + gap, 0);

interface Shape {
  w: number;
  h: number;
  ways: number[];
}

function shape(problem: Problem, sizes: readonly SheetSize[], member: Member): Shape {
  const { lines, stacked } = member;
  const w = Math.max(...lines.map(({ row }) => taken(row)));
  const h = taken(lines);
  const parts = lines.flatMap(({ row }) => row.map(({ part }) => problem.parts[part]!));
  const free = parts.length === 1 && parts[0]!.grain === "any";
  // A square is the same either way; and where any way will do, the longer side is the width.
  const turns = (way: number): number => (w === h && !stacked ? UPRIGHT : way);
  const ways = sizes.map((size, s) => {
    if (size.available === 0 || parts.some(({ from }) => from && !from.includes(s))) return 0;
    const allowed = turns(free || problem.stock[s]!.grain === "none" ? UPRIGHT | TURNED : stacked ? TURNED : UPRIGHT);
    return (w <= size.w && h <= size.h ? allowed & UPRIGHT : 0) | (h <= size.w && w <= size.h ? allowed & TURNED : 0);
  });
  if (ways.every((way) => way === 0)) throw tooLarge(parts, problem, sizes);
  return { w, h, ways };
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
