/**
 * A linear program whose columns come as they are needed: least cost, exact demands, by the revised simplex method
 * with the inverse of its basis. Doubles, and only sums, products and quotients of them: every host counts alike.
 */
export class Simplex {
  /** The basis: for each row the column that is in it, and how much of it is taken. */
  readonly basis: number[];
  readonly amounts: Float64Array;
  private readonly inverse: Float64Array;
  private readonly rows: number;

  /** Starts from one column a row, which has only that row's entry. */
  constructor(entries: readonly number[], demands: readonly number[], costs: readonly number[]) {
    this.rows = entries.length;
    this.inverse = new Float64Array(this.rows * this.rows);
    this.amounts = new Float64Array(this.rows);
    this.basis = entries.map((_, r) => r);
    this.costs = Float64Array.from(costs);
    entries.forEach((entry, r) => {
      this.inverse[r * this.rows + r] = 1 / entry;
      this.amounts[r] = demands[r]! / entry;
    });
  }

  /** Costs of the basis. */
  private readonly costs: Float64Array;

  /** What one more of each row's demand would cost. */
  prices(): Float64Array {
    const { rows, inverse, costs } = this;
    const prices = new Float64Array(rows);
    for (let b = 0; b < rows; b++) {
      const cost = costs[b]!;
      if (cost !== 0) for (let r = 0; r < rows; r++) prices[r]! += cost * inverse[b * rows + r]!;
    }
    return prices;
  }

  /** Brings a column in for the one that first runs out; false where none does. */
  enter(column: number, entries: ArrayLike<number>, cost: number): boolean {
    const { rows, inverse, amounts } = this;
    const direction = new Float64Array(rows);
    for (let b = 0; b < rows; b++) {
      let sum = 0;
      for (let r = 0; r < rows; r++) sum += inverse[b * rows + r]! * entries[r]!;
      direction[b] = sum;
    }
    let leaving = -1;
    let least = Infinity;
    for (let b = 0; b < rows; b++)
      if (direction[b]! > 1e-9 && amounts[b]! / direction[b]! < least) {
        leaving = b;
        least = amounts[b]! / direction[b]!;
      }
    if (leaving < 0) return false;
    this.pivot(leaving, direction, Math.max(0, least));
    this.basis[leaving] = column;
    this.costs[leaving] = cost;
    return true;
  }

  private pivot(leaving: number, direction: Float64Array, amount: number): void {
    const { rows, inverse, amounts } = this;
    const scale = 1 / direction[leaving]!;
    for (let r = 0; r < rows; r++) inverse[leaving * rows + r]! *= scale;
    for (let b = 0; b < rows; b++) {
      const factor = direction[b]!;
      if (b === leaving || factor === 0) continue;
      for (let r = 0; r < rows; r++) inverse[b * rows + r]! -= factor * inverse[leaving * rows + r]!;
      amounts[b] = Math.max(0, amounts[b]! - factor * amount);
    }
    amounts[leaving] = amount;
  }
}
