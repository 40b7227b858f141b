/** A replacement of one piece of a text; an insertion where `start` equals `end`. */
export interface Edit {
  start: number;
  end: number;
  text: string;
}

/** Carries out replacements that do not overlap; two insertions in one place keep their order. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let edited = "";
  let at = 0;
  for (const edit of inOrder(edits, (a, b) => a.start - b.start || a.end - b.end)) {
    edited += text.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  return edited + text.slice(at);
}

/** The same things in order. Most are made in order, and then need no sorting; equal ones keep theirs. */
export function inOrder<T>(things: readonly T[], compare: (a: T, b: T) => number): readonly T[] {
  for (let i = 1; i < things.length; i++) if (compare(things[i - 1]!, things[i]!) > 0) return [...things].sort(compare);
  return things;
}
