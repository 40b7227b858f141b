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

/** Runs `read`, and adds to a fault that does not say so yet what it was that was read. */
export function naming<T>(argument: string, read: () => T): T {
  try {
    return read();
  } catch (thrown) {
    if (!(thrown instanceof Fault) || "argument" in thrown.data) throw thrown;
    throw new Fault(thrown.code, { ...thrown.data, argument });
  }
}
