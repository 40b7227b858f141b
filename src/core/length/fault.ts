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
