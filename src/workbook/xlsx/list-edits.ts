import type { Edit } from "../text-edits";
import { withAttributes } from "./tag-text";
import type { Tag } from "./xml";

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
