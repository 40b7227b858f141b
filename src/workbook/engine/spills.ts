import { contains, MAX_COLUMNS, MAX_ROWS, overlaps, type Area } from "../address";
import { cellKey, type Sheet } from "./engine";
import type { CellState } from "./state";

/** What dynamic arrays fill on one sheet while it is worked out. */
export class Spills {
  /** By the blocks of cells that they reach into, so that an array of a million cells takes thousands of entries. */
  private readonly blocks = new Map<number, CellState[]>();
  private readonly areas = new Map<CellState, Area>();

  constructor(private readonly sheet: Sheet) {}

  get count(): number {
    return this.areas.size;
  }

  /** The formula whose result stands in that cell, other than the one that is written there. */
  owner(row: number, column: number): CellState | undefined {
    const states = this.blocks.get(blockKey(row >> ROW_BITS, column >> COLUMN_BITS));
    if (!states) return undefined;
    for (let i = states.length - 1; i >= 0; i--) {
      const { cell } = states[i]!;
      if (contains(this.areas.get(states[i]!)!, row, column) && (cell.row !== row || cell.column !== column))
        return states[i];
    }
    return undefined;
  }

  /** Formulas that fill more than their own cell and reach into the area. */
  reachingInto(area: Area): CellState[] {
    const found: CellState[] = [];
    for (const [state, filled] of this.areas) if (overlaps(filled, area)) found.push(state);
    return found;
  }

  release(state: CellState): void {
    const area = this.areas.get(state);
    if (!area) return;
    this.areas.delete(state);
    for (const key of blocksOf(area)) {
      const left = this.blocks.get(key)!.filter((other) => other !== state);
      if (left.length > 0) this.blocks.set(key, left);
      else this.blocks.delete(key);
    }
  }

  /** The last that comes to a cell has it. */
  occupy(state: CellState, area: Area): void {
    if (isOneCell(area)) return;
    this.release(state);
    this.areas.set(state, area);
    for (const key of blocksOf(area)) {
      const states = this.blocks.get(key);
      if (states) states.push(state);
      else this.blocks.set(key, [state]);
    }
  }

  /** Whether the formula may fill the area: nothing of somebody else's stands in it, and it is on the sheet. */
  isFree(state: CellState, area: Area, isLiteral: (row: number, column: number) => boolean): boolean {
    if (area.bottom >= MAX_ROWS || area.right >= MAX_COLUMNS) return false;
    if (this.sheet.merged.some((merged) => overlaps(merged, area) && !isOneCell(area))) return false;
    const isAlone = this.reachingInto(area).every((other) => other === state);
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (row === state.cell.row && column === state.cell.column) continue;
        const owner = isAlone ? undefined : this.owner(row, column);
        if ((owner && owner !== state) || isLiteral(row, column)) return false;
      }
    }
    return true;
  }
}

/** A block is 64 rows by 16 columns. */
const ROW_BITS = 6;
const COLUMN_BITS = 4;

function* blocksOf({ top, left, bottom, right }: Area): Generator<number, void> {
  for (let row = top >> ROW_BITS; row <= bottom >> ROW_BITS; row++) {
    for (let column = left >> COLUMN_BITS; column <= right >> COLUMN_BITS; column++) yield blockKey(row, column);
  }
}

function blockKey(row: number, column: number): number {
  return cellKey(row, column);
}

export function isOneCell(area: Area): boolean {
  return area.top === area.bottom && area.left === area.right;
}

/** The area that an array of that size fills from a cell downward and to the right. */
export function areaFrom(row: number, column: number, rows: number, columns: number): Area {
  return { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
}
