import type { Rational } from "./rational";

/**
 * Every fault by its code, with what it carries for its message: lengths, counts and the texts that a person typed.
 * Here are those of lengths; each folder adds its own beside its sums, and the catalog of messages words them all.
 */
export interface Faults {
  "length.unreadable": { text: string };
  "length.doubtfulComma": { text: string };
  "length.zeroDenominator": { text: string };
  "length.notPositive": Lengths<"received">;
  "length.negative": Lengths<"received">;
}
export type FaultCode = keyof Faults;

/** What is told of any fault on its way out: what it was that was read, and the opening or row that it stands in. */
export type Told = { argument?: string; openingLabel?: string; row?: number };

/** Data that are lengths. */
export type Lengths<N extends string> = Record<N, Rational>;

/** A code that says it all. */
export type NoData = Record<never, never>;

/**
 * Bad input or impossible geometry, as a code with data. Its wording belongs to whoever shows it.
 * @example throw new Fault("length.unreadable", { text: "about a foot" })
 */
export class Fault<C extends FaultCode = FaultCode> extends Error {
  constructor(
    readonly code: C,
    readonly data: Faults[C] & Told,
  ) {
    super(code);
    this.name = "Fault";
  }

  is<One extends FaultCode>(code: One): this is Fault<One> {
    return this.code === (code as FaultCode);
  }

  /** The same fault, with what more is told of it. */
  told(more: Told): Fault<C> {
    return new Fault(this.code, { ...this.data, ...more });
  }
}

/** What `work` gives, or what `instead` makes of its fault; a mistake of ours is no fault, and passes. */
export function orElse<T, U>(work: () => T, instead: (fault: Fault) => U): T | U {
  try {
    return work();
  } catch (thrown) {
    if (thrown instanceof Fault) return instead(thrown);
    throw thrown;
  }
}

/** Runs `read`, and puts before the name in its fault, if any, what it was that was read. */
export const naming = <T>(argument: string, read: () => T): T =>
  orElse(read, (fault): never => {
    const inner = fault.data.argument;
    throw fault.told({ argument: inner ? `${argument}, ${inner}` : argument });
  });
