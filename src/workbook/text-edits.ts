/** A replacement of one piece of a text; an insertion where `start` equals `end`. */
export interface Edit {
  start: number;
  end: number;
  text: string;
}

/** Carries out replacements that do not overlap; two insertions in one place keep their order. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let at = 0;
  for (const edit of [...edits].sort((a, b) => a.start - b.start || a.end - b.end)) {
    pieces.push(text.slice(at, edit.start), edit.text);
    at = edit.end;
  }
  pieces.push(text.slice(at));
  return pieces.join("");
}
