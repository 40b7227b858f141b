import type { Area } from "../address";
import { cellKey } from "./engine";
import { firstFrom } from "./first-from";
import type { CellState } from "./state";

/** One sheet's formulas, to be found by cell and, column by column, by range. */
export class FormulaIndex {
  private readonly byCell = new Map<number, CellState>();
  private readonly byColumn = new Map<number, CellState[]>();

  constructor(states: CellState[]) {
    for (const state of states) {
      this.byCell.set(cellKey(state.cell.row, state.cell.column), state);
      const column = this.byColumn.get(state.cell.column);
      if (column) column.push(state);
      else this.byColumn.set(state.cell.column, [state]);
    }
    for (const column of this.byColumn.values()) column.sort((a, b) => a.cell.row - b.cell.row);
  }

  add(state: CellState): void {
    const { row, column } = state.cell;
    this.byCell.set(cellKey(row, column), state);
    const states = this.byColumn.get(column) ?? [];
    states.splice(rowFrom(states, row), 0, state);
    this.byColumn.set(column, states);
  }

  remove(state: CellState): void {
    const { row, column } = state.cell;
    this.byCell.delete(cellKey(row, column));
    const states = this.byColumn.get(column)!;
    states.splice(rowFrom(states, row), 1);
    if (states.length === 0) this.byColumn.delete(column);
  }

  at(key: number): CellState | undefined {
    return this.byCell.get(key);
  }

  *within(area: Area): Generator<CellState, void> {
    if (area.top === area.bottom && area.left === area.right) {
      const state = this.byCell.get(cellKey(area.top, area.left));
      if (state) yield state;
      return;
    }
    for (const [column, states] of this.byColumn) {
      if (column < area.left || column > area.right) continue;
      for (let i = rowFrom(states, area.top); i < states.length && states[i]!.cell.row <= area.bottom; i++) {
        yield states[i]!;
      }
    }
  }
}

const rowFrom = (states: readonly CellState[], row: number): number =>
  firstFrom(states.length, (place) => states[place]!.cell.row >= row);
