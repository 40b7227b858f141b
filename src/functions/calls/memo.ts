/** Answers to the last questions, by what was asked: equal input gives the equal answer, so that asking once will do. */
export class Memo<V> {
  private readonly known = new Map<string, V>();

  /** @param most answers that are kept; the oldest goes first */
  constructor(private readonly most: number) {}

  get(key: string): V | undefined {
    return this.known.get(key);
  }

  /** The answer, worked out where it is not known. */
  of(key: string, work: () => V): V {
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const value = work();
    if (this.known.size >= this.most) this.known.delete(this.known.keys().next().value!);
    this.known.set(key, value);
    return value;
  }
}

/** What is read of tables, given these, and what the reading depends on besides them. */
export type OfTables<V> = (raw: readonly unknown[], more: string, read: () => V) => V;

/** Tables that many cells of a workbook hand over, as all do their openings and standards: read once. */
export function ofTables<V>(most = 8): OfTables<V> {
  const known = new Memo<V>(most);
  return (raw, more, read) => {
    const keys = raw.map(keyOfRange);
    return keys.includes(undefined) ? read() : known.of(more + keys.join(" "), read);
  };
}

/** A text that equal tables alone share; none where a cell holds what is no value. */
function keyOfRange(raw: unknown): string | undefined {
  const known = keys.get(raw as object);
  if (known) return known;
  const isOdd = [raw].flat(3).some(isWrittenOtherwise);
  try {
    const key = JSON.stringify([raw], isOdd ? inFull : undefined);
    // What can never change, as a workbook's own table that many of its formulas are handed, is written once.
    if (!isOdd && Array.isArray(raw) && [raw, ...(raw as unknown[])].every(Object.isFrozen)) keys.set(raw, key);
    return key;
  } catch {
    return undefined;
  }
}

const keys = new WeakMap<object, string>();

/** Whether JSON may write it as it writes something else. */
const isWrittenOtherwise = (value: unknown): boolean =>
  typeof value === "number" ? !Number.isFinite(value) || Object.is(value, -0) : value instanceof Object;

const inFull = (_: string, value: unknown): unknown =>
  typeof value === "number" && isWrittenOtherwise(value) ? { number: String(value) } : value;
