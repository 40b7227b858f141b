/** The part of a spreadsheet host that cell functions see. */
class CellError extends Error {
  constructor(
    readonly code: string,
    message = "",
  ) {
    super(message);
  }
}

const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
};

globalThis.CustomFunctions ??= {
  Error: CellError,
  ErrorCode,
  associate: () => {},
} as unknown as typeof CustomFunctions;
