import { Fault } from "../length";
import type { Exact } from "./exact";
import type { Problem } from "./problem";
import { WAYS, type Cut, type CutSheet, type Piece } from "./solution";

/**
 * The cuts of a layout that is given: each sheet is divided wherever a cut runs from edge to edge, until every part is
 * alone.
 * @throws Fault `sheets.outside` for a part that reaches beyond all stock it may be cut from, `sheets.notCuttable` where
 * no edge-to-edge cuts part what lies on a sheet
 */
export function given(problem: Problem, exact: Exact): CutSheet[] {
  const sheets = new Map<number, Laid[]>();
  problem.parts.forEach(({ lies, quantity }, index) => {
    if (!lies || quantity === 0) return;
    const { length, width } = exact.parts[index]!;
    const { x, y } = exact.places[index]!;
    const across = lies.turned;
    const laid = { index, turned: across, x, y, length: across ? width : length, width: across ? length : width };
    sheets.set(lies.sheet, [...(sheets.get(lies.sheet) ?? []), laid]);
  });
  const numbers = [...sheets.keys()].sort((a, b) => a - b);
  const stock = stockOf(problem, exact, sheets);
  return numbers.map((sheet) => {
    const { length, width } = exact.stock[stock.get(sheet)!]!;
    const { trim } = exact;
    const whole = { x: trim, y: trim, length: length - 2 * trim, width: width - 2 * trim };
    const piece = divided(whole, sheets.get(sheet)!, exact.kerf);
    if (piece) return { stock: stock.get(sheet)!, piece };
    const parts = sheets.get(sheet)!.map(({ index }) => problem.parts[index]!.name);
    throw new Fault("sheets.notCuttable", { sheet, parts });
  });
}

interface Area {
  x: number;
  y: number;
  length: number;
  width: number;
}

/** A part where it lies, with its sides as they lie. */
interface Laid extends Area {
  index: number;
  turned: boolean;
}

/** Of each sheet its row of stock: the cheapest that holds its parts, the largest sheets choosing first. */
function stockOf(problem: Problem, exact: Exact, sheets: ReadonlyMap<number, readonly Laid[]>): Map<number, number> {
  const left = problem.stock.map(({ available }) => available ?? Infinity);
  const cheapest = problem.stock.map((_, s) => s).sort((a, b) => exact.stock[a]!.cost - exact.stock[b]!.cost);
  const reach = (parts: readonly Laid[]): number => end(parts, "x", "length") * end(parts, "y", "width");
  const order = [...sheets].sort(([, a], [, b]) => reach(b) - reach(a));
  return new Map(
    order.map(([sheet, parts]) => {
      const found = cheapest.find((s) => left[s]! > 0 && parts.every((part) => holds(problem, exact, s, part)));
      if (found === undefined) {
        const beyond = parts.find((part) => !cheapest.some((s) => holds(problem, exact, s, part))) ?? parts[0]!;
        const { name, drawer } = problem.parts[beyond.index]!;
        throw new Fault("sheets.outside", { sheet, part: name, drawer, index: beyond.index });
      }
      left[found]!--;
      return [sheet, found];
    }),
  );
}

function holds({ parts }: Problem, { stock, trim }: Exact, s: number, part: Laid): boolean {
  const { from } = parts[part.index]!;
  return (
    (!from || from.includes(s)) &&
    part.x >= trim &&
    part.y >= trim &&
    part.x + part.length <= stock[s]!.length - trim &&
    part.y + part.width <= stock[s]!.width - trim
  );
}

const end = (parts: readonly Laid[], at: "x" | "y", side: "length" | "width"): number =>
  Math.max(...parts.map((part) => part[at] + part[side]));

/** @returns undefined where no cuts from edge to edge part what lies there */
function divided(area: Area, parts: readonly Laid[], kerf: number): Piece | undefined {
  const [only] = parts;
  if (parts.length === 1 && only!.length === area.length && only!.width === area.width)
    return { ...area, part: { index: only!.index, turned: only!.turned } };
  const ways = (["crosscut", "rip"] as const).flatMap((kind) => {
    const strips = stripsOf(area, parts, kerf, kind);
    return strips ? [{ kind, strips }] : [];
  });
  // What is left at the end of one way is larger than at that of the other: it stays whole.
  const [best] = ways.sort((a, b) => rest(area, b) - rest(area, a));
  if (!best) return undefined;
  const into: Piece[] = [];
  for (const { strip, holds } of best.strips) {
    const piece = holds.length > 0 ? divided(strip, holds, kerf) : strip;
    if (!piece) return undefined;
    into.push(piece);
  }
  return { ...area, cut: { kind: best.kind, into } };
}

interface Strip {
  strip: Area;
  holds: readonly Laid[];
}

/** The strips that all cuts of one way make, each up to the next; undefined where they take nothing off. */
function stripsOf(area: Area, parts: readonly Laid[], kerf: number, kind: Cut["kind"]): Strip[] | undefined {
  const { at, side } = WAYS[kind];
  const first = area[at];
  const last = area[at] + area[side];
  const groups: Laid[][] = [];
  let reached = -Infinity;
  for (const part of [...parts].sort((a, b) => a[at] - b[at])) {
    if (part[at] >= reached + kerf) groups.push([part]);
    else groups[groups.length - 1]!.push(part);
    reached = Math.max(reached, part[at] + part[side]);
  }
  const starts = groups.map((group) => group[0]![at]);
  const strips: Strip[] = [];
  const push = (from: number, to: number, holds: readonly Laid[]): void => {
    if (to > from) strips.push({ strip: { ...area, [at]: from, [side]: to - from }, holds });
  };
  // What lies before the first part comes off, unless it is less than the blade takes.
  if (starts[0]! > first) {
    if (starts[0]! - first <= kerf) return undefined;
    push(first, starts[0]! - kerf, []);
  }
  groups.forEach((group, i) => {
    const next = starts[i + 1];
    push(starts[i]!, next === undefined ? reached : next - kerf, group);
  });
  if (last - reached > kerf) push(reached + kerf, last, []);
  return strips.length > 1 || reached < last ? strips : undefined;
}

/** How large a piece is left at the end. */
function rest({ length, width }: Area, { strips }: { strips: readonly Strip[] }): number {
  const { strip, holds } = strips[strips.length - 1]!;
  return holds.length === 0 ? strip.length * strip.width : strips.length === 1 ? length * width : 0;
}
