/** Items that share a key, in the order in which each key first comes. */
export function groupsOf<T>(items: Iterable<T>, keyOf: (item: T, place: number) => unknown): T[][] {
  const groups = new Map<unknown, T[]>();
  let place = 0;
  for (const item of items) {
    const key = keyOf(item, place++);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return [...groups.values()];
}
