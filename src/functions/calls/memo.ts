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

/**
 * Tables that many cells of a workbook hand over, as all do their openings and standards: read once.
 * @param more what the reading depends on besides the table
 */
export class TableMemo<V> {
  private readonly tables: Memo<V>;

  constructor(most = 8) {
    this.tables = new Memo(most);
  }

  of(raw: unknown, more: string, read: () => V): V {
    const key = keyOfRange(raw);
    return key === undefined ? read() : this.tables.of(`${more} ${key}`, read);
  }
}

/** A text that equal tables alone share; none where a cell holds what is no value. */
function keyOfRange(raw: unknown): string | undefined {
  const cells = [raw].flat(3);
  try {
    return JSON.stringify([raw], cells.some(isOdd) ? inFull : undefined);
  } catch {
    return undefined;
  }
}

/** Whether JSON may write it as it writes something else. */
const isOdd = (value: unknown): boolean =>
  typeof value === "number" ? !Number.isFinite(value) || Object.is(value, -0) : value instanceof Object;

const inFull = (_: string, value: unknown): unknown =>
  typeof value === "number" && isOdd(value) ? { number: String(value) } : value;
