import { applyEdits, type Edit } from "../text-edits";
import { withAttributes } from "./tag-text";
import { readXml, type Tag } from "./xml";

/** A list of a part that tells how many items it has; `inner` is where its end tag begins. */
export type List = Tag & { inner: number };

/** Items put behind the others of a list, and how many it has then. */
export function appended(text: string, list: List, items: string, count: number): Edit[] {
  const { start, end, inner, prefix, name, selfClosing } = list;
  const tag = withAttributes(text.slice(start, end), { count: String(count) });
  if (selfClosing) return [{ start, end, text: `${tag.replace(/\s*\/>$/, ">")}${items}</${prefix}${name}>` }];
  return [
    { start, end, text: tag },
    { start: inner, end: inner, text: items },
  ];
}

/** A list that stands directly in a part's root. */
export type Counted = List & { outer: number; items: number };

/** The lists of a part, in their order; `inner` of its root is where the end tag begins. */
export function readLists(text: string, part: string): { root: List; lists: Counted[] } {
  const lists: Counted[] = [];
  let root: List | undefined;
  let depth = 0;
  readXml(text, part, {
    open(tag) {
      if (depth === 0) root = { ...tag, inner: tag.end };
      if (depth === 1) lists.push({ ...tag, inner: tag.end, outer: tag.end, items: 0 });
      if (depth === 2) lists.at(-1)!.items++;
      depth++;
    },
    close(_name, _prefix, start, end) {
      depth--;
      if (depth === 0) root!.inner = start;
      if (depth === 1) Object.assign(lists.at(-1)!, { inner: start, outer: end });
    },
  });
  return { root: root!, lists };
}

/**
 * The part with items behind the others of its lists; a list that is not there yet comes where it must stand.
 * @param items by the list's name, without prefixes
 * @param order of all lists
 * @param isCounted whether lists tell how many items they have
 */
export function withItems(
  text: string,
  part: string,
  items: Readonly<Record<string, readonly string[]>>,
  order: readonly string[],
  isCounted = true,
): string {
  const { root, lists } = readLists(text, part);
  if (root.selfClosing) {
    const opened = text.slice(0, root.end).replace(/\s*\/>$/, ">");
    return withItems(`${opened}</${root.prefix}${root.name}>`, part, items, order, isCounted);
  }
  const { prefix } = root;
  const edits = Object.entries(items).flatMap(([name, added]): Edit[] => {
    if (added.length === 0) return [];
    const inside = added.join("").replace(/<(\/?)(?=[a-z])/gi, `<$1${prefix}`);
    const list = lists.find((one) => one.name === name);
    if (list && isCounted) return appended(text, list, inside, list.items + added.length);
    if (list && !list.selfClosing) return [{ start: list.inner, end: list.inner, text: inside }];
    const count = isCounted ? ` count="${added.length}"` : "";
    const written = `<${prefix}${name}${count}>${inside}</${prefix}${name}>`;
    if (list) return [{ start: list.start, end: list.end, text: written }];
    const at = lists.find((later) => order.indexOf(later.name) > order.indexOf(name))?.start ?? root.inner;
    return [{ start: at, end: at, text: written }];
  });
  return applyEdits(text, edits);
}
