import type { Area } from "../address";
import type { ErrorCode } from "../formula/error-codes";
import type { Node } from "../formula/nodes";

/** An error value. One made by a function of ours carries the sentence that the host would show. */
export class CellError {
  constructor(
    readonly code: ErrorCode,
    readonly message?: string,
  ) {}
}

/** What one cell holds; `null` is a blank. */
export type Scalar = number | string | boolean | CellError | null;

export type Matrix = Scalar[][];

/** Ranges that are still ranges: one, or several after a union or across sheets. */
export class Reference {
  constructor(readonly areas: readonly SheetArea[]) {}

  static single(sheet: number, area: Area): Reference {
    const { top, left, bottom, right } = area;
    return new Reference([{ sheet, top, left, bottom, right }]);
  }
}

export interface SheetArea extends Area {
  sheet: number;
}

/** A function made by LAMBDA, with the variables it was made among. */
export class Lambda {
  constructor(
    readonly parameters: readonly string[],
    readonly body: Node,
    readonly scope: Scope,
  ) {}
}

/** Where a formula is being worked out. */
export interface Scope {
  sheet: number;
  row: number;
  column: number;
  /** How far a shared formula or a relative name is from where it was written. */
  rowShift: number;
  columnShift: number;
  /** Whole arrays (a dynamic or array formula), or the one value that an older formula wants. */
  arrays: boolean;
  variables?: Variables;
}

interface Variables extends Shown {
  name: string;
  outer?: Variables;
}

/** `undefined` is an argument that was left out. */
export type Value = Scalar | Matrix | Reference | Lambda | undefined;

/** Number formats that cells bring with their values, as many as there are cells; one for a lone value. */
export type Formats = readonly (readonly (string | undefined)[])[];

/** A value with the number formats that it brings. */
export interface Shown {
  value: Value;
  formats?: Formats;
}

/** Thrown where a formula asks for what the engine lacks: its stored value is then kept and it is listed. */
export class Unsupported extends Error {
  constructor(
    message: string,
    readonly functions: readonly string[] = [],
  ) {
    super(message);
  }
}

export function isMatrix(value: Value): value is Matrix {
  return Array.isArray(value);
}

export function isScalar(value: Value): value is Scalar {
  return !isMatrix(value) && !(value instanceof Reference) && !(value instanceof Lambda) && value !== undefined;
}

export function fail(code: ErrorCode): CellError {
  return new CellError(code);
}
