/** A part for the plain solver: its sizes, and whether it may turn. */
export interface Plain {
  length: number;
  width: number;
  turns: boolean;
}

/**
 * The least number of equal sheets that a few parts can be cut from edge to edge, found by trying everything.
 * Each part and the sheet are first made larger by the kerf, which then needs no more thought. Sizes and kerf are whole
 * numbers or such fractions as a double holds exactly (1/8).
 */
export function leastSheets(parts: readonly Plain[], length: number, width: number, kerf: number): number {
  const grown = parts.map((part) => ({ ...part, length: part.length + kerf, width: part.width + kerf }));
  const all = (1 << parts.length) - 1;
  const memo = new Map<string, number>();
  const least: number[] = [0];
  for (let set = 1; set <= all; set++) {
    least[set] = Infinity;
    for (let one = set; one > 0; one = (one - 1) & set) {
      if (1 + least[set ^ one]! < least[set]! && shortest(one, width + kerf) <= length + kerf)
        least[set] = 1 + least[set ^ one]!;
    }
  }
  return least[all]!;

  /** The length of the shortest sheet of a width that a set can be cut from. */
  function shortest(set: number, w: number): number {
    const key = `${set} ${w}`;
    const known = memo.get(key);
    if (known !== undefined) return known;
    const found = tryAll(set, w);
    memo.set(key, found);
    return found;
  }

  function tryAll(set: number, w: number): number {
    const members = grown.filter((_, i) => set & (1 << i));
    if (members.length === 1) {
      const [p] = members;
      return Math.min(p!.width <= w ? p!.length : Infinity, p!.turns && p!.length <= w ? p!.width : Infinity);
    }
    let best = Infinity;
    for (let half = (set - 1) & set; half > 0; half = (half - 1) & set) {
      best = Math.min(best, shortest(half, w) + shortest(set ^ half, w));
      for (const y of sums(grown.filter((_, i) => half & (1 << i))))
        if (y < w) best = Math.min(best, Math.max(shortest(half, y), shortest(set ^ half, w - y)));
    }
    return best;
  }
}

/** A cut along the sheet can be moved to where some of the pieces below it, laid one upon another, would reach. */
function sums(parts: readonly Plain[]): number[] {
  let reached = new Set([0]);
  for (const { length, width } of parts) {
    reached = new Set([...reached].flatMap((at) => [at, at + length, at + width]));
  }
  reached.delete(0);
  return [...reached];
}
