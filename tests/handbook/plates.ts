import type { Edges } from "../../src/core/wood";

/**
 * The deflection of a thin plate under an even pressure of 1, by finite differences: nothing of the series is in it.
 * The short side and the rigidity are 1. One quarter is worked out, for the plate is like itself across both middle lines.
 * @param aspect long side over short side
 * @param n steps across half of the short side
 * @returns the deflections at the points of one quarter, from the middle outward, along the long side row by row
 */
export function plateByDifferences(aspect: number, edges: Edges, n: number): number[][] {
  const [rows, columns] = [Math.round(n * aspect), n];
  const [hy, hx] = [aspect / 2 / rows, 0.5 / columns];
  const size = rows * columns;
  const band = 2 * columns;
  // The unknowns are numbered row by row; a band matrix holds each equation from `band` before to `band` behind.
  const matrix = Array.from({ length: size }, () => new Float64Array(2 * band + 1));
  const right = new Float64Array(size).fill(1);
  for (let i = 0; i < rows; i++)
    for (let j = 0; j < columns; j++)
      for (const [di, dj, weight] of stencil(hx, hy)) {
        const [row, signRow] = folded(i + di, rows, edges);
        const [column, signColumn] = folded(j + dj, columns, edges);
        if (row < rows && column < columns)
          matrix[i * columns + j]![row * columns + column - (i * columns + j) + band]! += weight * signRow * signColumn;
      }
  const solved = solveBand(matrix, right, band);
  return Array.from({ length: rows }, (_, i) => Array.from(solved.slice(i * columns, (i + 1) * columns)));
}

/** The thirteen points of the plate's equation, by second differences of second differences. */
function stencil(hx: number, hy: number): [di: number, dj: number, weight: number][] {
  const second = [-1, 0, 1].map((d) => [d, d === 0 ? -2 : 1] as const);
  const points: [number, number, number][] = [];
  for (const [a, wa] of second)
    for (const [b, wb] of second) {
      points.push([0, a + b, (wa * wb) / hx ** 4], [a + b, 0, (wa * wb) / hy ** 4]);
      points.push([a, b, (2 * wa * wb) / (hx * hy) ** 2]);
    }
  return points;
}

/**
 * A place beyond the middle is that before it; at `count` lies the edge, at rest; one beyond the edge is that before it
 * where the edge stays level, and its opposite where it may tilt without a moment.
 */
function folded(place: number, count: number, edges: Edges): [place: number, sign: number] {
  const inner = Math.abs(place);
  return inner > count ? [2 * count - inner, edges === "clamped" ? 1 : -1] : [inner, 1];
}

function solveBand(matrix: Float64Array[], right: Float64Array, band: number): Float64Array {
  const size = matrix.length;
  for (let k = 0; k < size; k++)
    for (let i = k + 1; i <= Math.min(k + band, size - 1); i++) {
      const factor = matrix[i]![k - i + band]! / matrix[k]![band]!;
      if (factor === 0) continue;
      for (let j = k; j <= Math.min(k + band, size - 1); j++)
        matrix[i]![j - i + band]! -= factor * matrix[k]![j - k + band]!;
      right[i]! -= factor * right[k]!;
    }
  for (let i = size - 1; i >= 0; i--) {
    let sum = right[i]!;
    for (let j = i + 1; j <= Math.min(i + band, size - 1); j++) sum -= matrix[i]![j - i + band]! * right[j]!;
    right[i] = sum / matrix[i]![band]!;
  }
  return right;
}
