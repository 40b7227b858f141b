import type { Part } from "./problem";

/**
 * How often the steps of one call are halved for each of its groups, by their pieces; so that all together take no longer
 * than one may. By halves, so that a group whose neighbors change a little is the same problem as before.
 * @param times how often the call cuts such groups
 */
export function halvingsOf(groups: readonly { parts: readonly Part[] }[], times = 1): number[] {
  const pieces = groups.map(({ parts }) => parts.reduce((sum, { quantity }) => sum + quantity, 0));
  const all = times * pieces.reduce((sum, n) => sum + n, 0);
  return pieces.map((own) => {
    let halvings = 0;
    while (own > 0 && own * 2 ** halvings < all) halvings++;
    return halvings;
  });
}
