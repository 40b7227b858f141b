/** The host's error class, where there is no host: what a function throws to give an error value and a sentence. */
class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
    this.name = "CustomFunctionsError";
  }
}

const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
} as const;

/** Puts `CustomFunctions.Error` and its codes where functions look for them, unless a host has done so. */
export function provideHost(): void {
  const scope = globalThis as { CustomFunctions?: unknown };
  scope.CustomFunctions ??= { Error: HostError, ErrorCode, associate: () => undefined };
}
