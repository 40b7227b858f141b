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

/** Runs `read`, and puts before the name in its fault, if any, what it was that was read. */
export function naming<T>(argument: string, read: () => T): T {
  try {
    return read();
  } catch (thrown) {
    if (!(thrown instanceof Fault)) throw thrown;
    const inner = thrown.data.argument;
    throw new Fault(thrown.code, { ...thrown.data, argument: inner ? `${argument}, ${String(inner)}` : argument });
  }
}
