import { isPlaced, TURNED, UPRIGHT, type Block, type Divided, type Model, type Placed } from "../model";
import { grown } from "../tighten";

/**
 * The pieces of one sheet in strips, as one lays them out by hand: strips along or across the sheet; each of pieces of
 * one width, or first of its own width and then of narrower ones, with pieces of one length stacked; pieces that may
 * turn lying as they do, by their longer side, or by the width that most others have.
 *
 * Limits: each piece goes into the first strip that takes it. Layouts that need more than the sheet are left out.
 */
export function stripLayouts(model: Model, size: number, sheet: Divided): Divided[] {
  const pieces = piecesOf(sheet);
  if (pieces.length > MOST) return [];
  return AXES.flatMap((axis) =>
    [asLaid, byLongerSide, byCommonWidth].flatMap((turn) => {
      const lying = turn(pieces, (kind) => model.ways[kind * model.sizes.length + size]!, model, axis).sort(
        (a, b) => b.across - a.across || b.along - a.along || a.piece.kind - b.piece.kind,
      );
      return MODES.flatMap((mode) => inStrips(lying, sheet, axis, mode) ?? []);
    }),
  );
}

/** On a sheet of more pieces than these strips are what it has. */
const MOST = 400;

/**
 * Strips of pieces of one width; strips that take narrower ones, too, with stacks; and these with what a strip leaves
 * given to a stack, so that long pieces are ripped and not short ones.
 */
const MODES = ["alike", "mixed", "given"] as const;

const AXES = ["x", "y"] as const;
type Axis = (typeof AXES)[number];

interface Lying {
  piece: Placed;
  /** Along a strip, and across it. */
  along: number;
  across: number;
}

type Turn = (pieces: readonly Placed[], wayOf: (kind: number) => number, model: Model, axis: Axis) => Lying[];

const lyingAs = (piece: Placed, axis: Axis): Lying =>
  axis === "y" ? { piece, along: piece.w, across: piece.h } : { piece, along: piece.h, across: piece.w };

const asLaid: Turn = (pieces, _wayOf, _model, axis) => pieces.map((piece) => lyingAs(piece, axis));

const byLongerSide: Turn = (pieces, wayOf, model, axis) =>
  pieces.map(({ kind }) => waysToLie(kind, wayOf(kind), model, axis).reduce((a, b) => (b.along > a.along ? b : a)));

const byCommonWidth: Turn = (pieces, wayOf, model, axis) => {
  const ways = pieces.map(({ kind }) => waysToLie(kind, wayOf(kind), model, axis));
  const counts = new Map<number, number>();
  for (const { across } of ways.flat()) counts.set(across, (counts.get(across) ?? 0) + 1);
  return ways.map((of) => of.reduce((a, b) => (counts.get(b.across)! > counts.get(a.across)! ? b : a)));
};

function waysToLie(kind: number, ways: number, { kinds }: Model, axis: Axis): Lying[] {
  const { w, h } = kinds[kind]!;
  return [UPRIGHT, TURNED].flatMap((way) => {
    if (!(ways & way)) return [];
    return [lyingAs(way === TURNED ? { w: h, h: w, kind, turned: true } : { w, h, kind, turned: false }, axis)];
  });
}

interface Strip {
  across: number;
  used: number;
  columns: Column[];
}

/** Pieces of one length above one another. */
interface Column {
  along: number;
  used: number;
  blocks: Block[];
}

function inStrips(
  lying: readonly Lying[],
  { w, h }: Block,
  axis: Axis,
  mode: (typeof MODES)[number],
): Divided | undefined {
  const mixed = mode !== "alike";
  const [long, wide] = axis === "y" ? [w, h] : [h, w];
  const strips: Strip[] = [];
  let used = 0;
  for (const { piece, along, across } of lying) {
    const column = mixed ? columnFor(strips, along, across) : undefined;
    if (column) {
      column.blocks.push(piece);
      column.used += across;
      continue;
    }
    const takes = (strip: Strip): boolean => strip.used + along <= long;
    let strip = strips.find((one) => one.across === across && takes(one)) ?? (mixed ? strips.find(takes) : undefined);
    if (!strip) {
      used += across;
      if (used > wide) return undefined;
      strips.push((strip = { across, used: 0, columns: [] }));
    }
    strip.columns.push({ along, used: across, blocks: [piece] });
    strip.used += along;
  }
  const blocks = strips.map((strip) => stripBlock(strip, long, axis, mode === "given"));
  return { w, h, axis, blocks };
}

function columnFor(strips: readonly Strip[], along: number, across: number): Column | undefined {
  for (const strip of strips)
    for (const column of strip.columns)
      if (column.along === along && column.used + across <= strip.across) return column;
  return undefined;
}

function stripBlock({ across, used, columns }: Strip, long: number, axis: Axis, isGiven: boolean): Block {
  const last = isGiven ? columns.find(({ blocks }) => blocks.length > 1) : undefined;
  const blocks = columns.map((column): Block => {
    const along = column.along + (column === last ? long - used : 0);
    const [w, h] = axis === "y" ? [along, across] : [across, along];
    if (column.blocks.length === 1) return grown(column.blocks[0]!, w, h);
    const pieces = column.blocks.map((piece) => (along > column.along ? besideRest(piece, along, axis) : piece));
    return { w, h, axis, blocks: pieces };
  });
  return axis === "y" ? { w: long, h: across, axis: "x", blocks } : { w: across, h: long, axis: "y", blocks };
}

const besideRest = (piece: Block, along: number, axis: Axis): Block =>
  axis === "y"
    ? { w: along, h: piece.h, axis: "x", blocks: [piece] }
    : { w: piece.w, h: along, axis: "y", blocks: [piece] };

const piecesOf = (block: Block): Placed[] => (isPlaced(block) ? [block] : block.blocks.flatMap(piecesOf));
