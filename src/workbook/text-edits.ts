/** A replacement of one piece of a text; an insertion where `start` equals `end`. */
export interface Edit {
  start: number;
  end: number;
  text: string;
}

/** Carries out replacements that do not overlap; two insertions in one place keep their order. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const rewriting = new Rewriting(text);
  rewriting.apply(edits);
  return rewriting.finish();
}

/** A text while pieces of it are replaced from front to back: what is done with is put together and no longer held. */
export class Rewriting {
  private readonly done: string[] = [];
  private pieces: string[] = [];
  private at = 0;

  constructor(private readonly text: string) {}

  /** None of them stands before those that were applied already. */
  apply(edits: readonly Edit[]): void {
    for (const edit of inOrder(edits, (a, b) => a.start - b.start || a.end - b.end)) {
      this.pieces.push(this.text.slice(this.at, edit.start), edit.text);
      this.at = edit.end;
    }
    if (this.pieces.length < MANY_PIECES) return;
    this.done.push(this.pieces.join(""));
    this.pieces = [];
  }

  finish(): string {
    return [...this.done, ...this.pieces, this.text.slice(this.at)].join("");
  }
}

const MANY_PIECES = 1_000;

/** The same things in order. Most are made in order, and then need no sorting; equal ones keep theirs. */
export function inOrder<T>(things: readonly T[], compare: (a: T, b: T) => number): readonly T[] {
  for (let i = 1; i < things.length; i++) if (compare(things[i - 1]!, things[i]!) > 0) return [...things].sort(compare);
  return things;
}
