/** What a fault carries for its message: lengths, counts and the texts that a person typed. */
export type FaultData = Readonly<Record<string, unknown>>;

/**
 * Bad input or impossible geometry, as a code with data. Its wording belongs to whoever shows it.
 * @example throw new Fault("length.unreadable", { text: "about a foot" })
 */
export class Fault extends Error {
  constructor(
    readonly code: string,
    readonly data: FaultData = {},
  ) {
    super(code);
    this.name = "Fault";
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
  orElse(read, ({ code, data }): never => {
    const inner = data.argument;
    throw new Fault(code, { ...data, argument: inner ? `${argument}, ${String(inner)}` : argument });
  });
