/**
 * Places in the order of those wished for, each at least `apart` from the next, as near to the wishes as can be.
 * Neighbors that are too near become one block about their middle, which may meet the next (pool adjacent violators, the
 * least squares of ordered means).
 * @param wished from the least to the greatest
 * @example spread([0, 0.5, 9], 1) // [-0.25, 0.75, 9]
 */
export function spread(wished: readonly number[], apart: number): number[] {
  const blocks: { sum: number; count: number }[] = [];
  wished.forEach((place, i) => {
    let block = { sum: place - i * apart, count: 1 };
    for (let last = lastOf(blocks); last && last.sum / last.count > block.sum / block.count; last = lastOf(blocks)) {
      blocks.pop();
      block = { sum: last.sum + block.sum, count: last.count + block.count };
    }
    blocks.push(block);
  });
  return blocks.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count)).map((mean, i) => mean + i * apart);
}

const lastOf = <T>(list: readonly T[]): T | undefined => list[list.length - 1];
