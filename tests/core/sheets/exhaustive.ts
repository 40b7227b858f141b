/** A part for the plain solver: whole sizes, and whether it may turn. */
export interface Plain {
  length: number;
  width: number;
  turns: boolean;
}

/**
 * The least number of equal sheets that a few parts can be cut from edge to edge, found by trying everything.
 * Each part and the sheet are first made larger by the kerf, which then needs no more thought.
 */
export function leastSheets(parts: readonly Plain[], length: number, width: number, kerf: number): number {
  const grown = parts.map((part) => ({ ...part, length: part.length + kerf, width: part.width + kerf }));
  const all = (1 << parts.length) - 1;
  const memo = new Map<string, boolean>();
  const least: number[] = [0];
  for (let set = 1; set <= all; set++) {
    least[set] = Infinity;
    for (let one = set; one > 0; one = (one - 1) & set) {
      if (1 + least[set ^ one]! < least[set]! && fits(one, length + kerf, width + kerf))
        least[set] = 1 + least[set ^ one]!;
    }
  }
  return least[all]!;

  function fits(set: number, l: number, w: number): boolean {
    const key = `${set} ${l} ${w}`;
    const known = memo.get(key);
    if (known !== undefined) return known;
    const found = tryAll(set, l, w);
    memo.set(key, found);
    return found;
  }

  function tryAll(set: number, l: number, w: number): boolean {
    const members = grown.filter((_, i) => set & (1 << i));
    if (members.reduce((area, p) => area + p.length * p.width, 0) > l * w) return false;
    if (members.length === 1) {
      const [p] = members;
      return (p!.length <= l && p!.width <= w) || (p!.turns && p!.width <= l && p!.length <= w);
    }
    const places = sums(members);
    for (let half = (set - 1) & set; half > 0; half = (half - 1) & set) {
      for (const x of places) {
        if (x < l && fits(half, x, w) && fits(set ^ half, l - x, w)) return true;
        if (x < w && fits(half, l, x) && fits(set ^ half, l, w - x)) return true;
      }
    }
    return false;
  }
}

/** Every cut can be moved to where pieces laid end to end would reach. */
function sums(parts: readonly Plain[]): number[] {
  let reached = new Set([0]);
  for (const { length, width } of parts) {
    reached = new Set([...reached].flatMap((at) => [at, at + length, at + width]));
  }
  reached.delete(0);
  return [...reached];
}
