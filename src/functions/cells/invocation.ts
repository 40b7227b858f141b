/**
 * What a host puts right after the last argument that its metadata knows. Hosts keep metadata for about a day, so that
 * after an update which added an argument it stands in that argument's place.
 */
export interface Invocation {
  functionName: string;
  /** Where the arguments stand, where the metadata asked for it and the host knows. */
  parameterAddresses?: readonly string[];
}

/** A value of a cell bears a `type`, or is an error with a `code`; the host's object has neither. */
export function isInvocation(raw: unknown): raw is Invocation {
  if (typeof raw !== "object" || raw === null) return false;
  const { functionName, type, code } = raw as { functionName?: unknown; type?: unknown; code?: unknown };
  return typeof functionName === "string" && type === undefined && code === undefined;
}

/** The host's object among the arguments of a call, wherever it stands. */
export const invocationAmong = (raw: readonly unknown[]): Invocation | undefined => raw.find(isInvocation);
