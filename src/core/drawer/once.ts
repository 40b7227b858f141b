/**
 * The same work, done once for each thing that it is about, and remembered for as long as that lives. What is read or
 * planned never changes, so that the answer stays.
 */
export function once<K extends object, V extends object>(work: (about: K) => V): (about: K) => V {
  const done = new WeakMap<K, V>();
  return (about) => {
    let made = done.get(about);
    if (!made) done.set(about, (made = work(about)));
    return made;
  };
}
