/** An error that came in from a cell, to be handed on. */
export class IncomingError extends Error {
  constructor(readonly cellError: string) {
    super(cellError);
    this.name = "IncomingError";
  }
}
