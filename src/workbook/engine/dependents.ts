import { contains, overlaps, type Area } from "../address";
import { cellKey } from "./engine";
import { isOneCell } from "./spills";
import type { CellState } from "./state";
import type { SheetArea } from "./values";

/** Which formulas read a cell, whatever way they come to it. */
export class Dependents {
  private readonly sheets = new Map<number, OnSheet>();
  private readonly linked = new Map<CellState, readonly SheetArea[]>();

  /** Takes in what a formula read when it was worked out last. */
  link(state: CellState): void {
    const before = this.linked.get(state);
    if (before && state.found.length === 0 && before.length === state.reads?.length) return;
    this.unlink(state);
    const reads = [...(state.reads ?? []), ...state.found];
    this.linked.set(state, reads);
    for (const area of reads) this.on(area.sheet).add(area, state);
  }

  unlink(state: CellState): void {
    for (const area of this.linked.get(state) ?? []) this.on(area.sheet).remove(area, state);
    this.linked.delete(state);
  }

  /** Visits the formulas that read something of an area, some of them perhaps more than once. */
  each(sheet: number, area: Area, visit: Visit): void {
    this.sheets.get(sheet)?.each(area, visit);
  }

  private on(sheet: number): OnSheet {
    let found = this.sheets.get(sheet);
    if (!found) this.sheets.set(sheet, (found = new OnSheet()));
    return found;
  }
}

/** A range that formulas read, once for all of them. */
interface Range {
  area: Area;
  states: Set<CellState>;
}

class OnSheet {
  private readonly cells = new Map<number, Set<CellState>>();
  private readonly ranges = new Map<string, Range>();
  /** Ranges by the blocks of cells that they reach into; those that reach into many stand by themselves. */
  private readonly blocks = new Map<number, Set<Range>>();
  private readonly large = new Set<Range>();

  add(area: Area, state: CellState): void {
    if (isOneCell(area)) return void put(this.cells, cellKey(area.top, area.left), state);
    const key = nameOf(area);
    let range = this.ranges.get(key);
    if (!range) {
      this.ranges.set(key, (range = { area, states: new Set() }));
      if (blockCount(area) > MOST_BLOCKS) this.large.add(range);
      else for (const block of blocksOf(area)) put(this.blocks, block, range);
    }
    range.states.add(state);
  }

  remove(area: Area, state: CellState): void {
    if (isOneCell(area)) return take(this.cells, cellKey(area.top, area.left), state);
    const key = nameOf(area);
    const range = this.ranges.get(key);
    range?.states.delete(state);
    if (!range || range.states.size > 0) return;
    this.ranges.delete(key);
    if (!this.large.delete(range)) for (const block of blocksOf(area)) take(this.blocks, block, range);
  }

  each(area: Area, visit: Visit): void {
    // Most formulas give one value.
    if (isOneCell(area)) {
      visitAll(this.cells.get(cellKey(area.top, area.left)), visit);
      if (this.large.size > 0) visitWithin(this.large, area, visit);
      if (this.blocks.size === 0) return;
      const block = this.blocks.get(cellKey(area.top >> ROW_BITS, area.left >> COLUMN_BITS));
      return visitWithin(block ?? NONE, area, visit);
    }
    if (sizeOf(area) > this.cells.size) {
      for (const [key, states] of this.cells)
        if (contains(area, Math.floor(key / KEY_STEP), key % KEY_STEP)) visitAll(states, visit);
    } else {
      for (let row = area.top; row <= area.bottom; row++)
        for (let column = area.left; column <= area.right; column++)
          visitAll(this.cells.get(cellKey(row, column)), visit);
    }
    visitWithin(this.large, area, visit);
    if (blockCount(area) > this.blocks.size) visitWithin(this.ranges.values(), area, visit);
    else for (const block of blocksOf(area)) visitWithin(this.blocks.get(block) ?? NONE, area, visit);
  }
}

type Visit = (state: CellState) => void;

function visitAll(states: ReadonlySet<CellState> | undefined, visit: Visit): void {
  if (states) for (const state of states) visit(state);
}

function visitWithin(ranges: Iterable<Range>, area: Area, visit: Visit): void {
  for (const range of ranges) if (overlaps(range.area, area)) visitAll(range.states, visit);
}

const NONE: readonly never[] = [];

/** A block is 64 rows by 16 columns. */
const ROW_BITS = 6;
const COLUMN_BITS = 4;
const MOST_BLOCKS = 64;
const KEY_STEP = cellKey(1, 0);

function* blocksOf({ top, left, bottom, right }: Area): Generator<number, void> {
  for (let row = top >> ROW_BITS; row <= bottom >> ROW_BITS; row++)
    for (let column = left >> COLUMN_BITS; column <= right >> COLUMN_BITS; column++) yield cellKey(row, column);
}

const blockCount = ({ top, left, bottom, right }: Area): number =>
  ((bottom >> ROW_BITS) - (top >> ROW_BITS) + 1) * ((right >> COLUMN_BITS) - (left >> COLUMN_BITS) + 1);

const sizeOf = ({ top, left, bottom, right }: Area): number => (bottom - top + 1) * (right - left + 1);
const nameOf = ({ top, left, bottom, right }: Area): string => `${top} ${left} ${bottom} ${right}`;

function put<T>(into: Map<number, Set<T>>, key: number, item: T): void {
  const found = into.get(key);
  if (found) found.add(item);
  else into.set(key, new Set([item]));
}

function take<T>(from: Map<number, Set<T>>, key: number, item: T): void {
  const found = from.get(key);
  found?.delete(item);
  if (found?.size === 0) from.delete(key);
}
