import { MAX_COLUMNS, MAX_ROWS, overlaps, type Area } from "../address";
import { cellKey, type Sheet } from "./engine";
import type { CellState } from "./state";

/** What dynamic arrays fill on one sheet while it is worked out. */
export class Spills {
  private readonly owners = new Map<number, CellState>();
  private areas = new Map<CellState, Area>();

  constructor(private readonly sheet: Sheet) {}

  /** The formula whose result stands in that cell, other than the one that is written there. */
  owner(row: number, column: number): CellState | undefined {
    return this.owners.get(cellKey(row, column));
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
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        const key = cellKey(row, column);
        if (this.owners.get(key) === state) this.owners.delete(key);
      }
    }
  }

  occupy(state: CellState, area: Area): void {
    if (area.top === area.bottom && area.left === area.right) return;
    this.areas.set(state, area);
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (row !== state.cell.row || column !== state.cell.column) this.owners.set(cellKey(row, column), state);
      }
    }
  }

  /** Whether the formula may fill the area: nothing of somebody else's stands in it, and it is on the sheet. */
  isFree(state: CellState, area: Area, isLiteral: (row: number, column: number) => boolean): boolean {
    if (area.bottom >= MAX_ROWS || area.right >= MAX_COLUMNS) return false;
    if (this.sheet.merged.some((merged) => overlaps(merged, area) && !isOneCell(area))) return false;
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (row === state.cell.row && column === state.cell.column) continue;
        const owner = this.owner(row, column);
        if ((owner && owner !== state) || isLiteral(row, column)) return false;
      }
    }
    return true;
  }
}

export function isOneCell(area: Area): boolean {
  return area.top === area.bottom && area.left === area.right;
}

/** The area that an array of that size fills from a cell downward and to the right. */
export function areaFrom(row: number, column: number, rows: number, columns: number): Area {
  return { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
}
