import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseFunction,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { isErrorCode, type ErrorCode } from "../../formula/error-codes";
import type { Evaluator } from "../kinds";
import { fail, isMatrix, Lambda, Reference, Unsupported, type Matrix, type Scalar, type Value } from "../values";

/**
 * Calls one of Univer's functions with our values. Only the function's own sum is used: reading formulas,
 * references, operators and spilling are ours, for there the library differs from the spreadsheet program.
 */
export function callUniver(called: BaseFunction, args: Value[], evaluator: Evaluator): Value {
  const given = args.flatMap((arg) => toObjects(arg, evaluator));
  if (called.minParams !== -1 && (given.length < called.minParams || given.length > called.maxParams)) {
    throw new Unsupported(`calls ${called.name} with ${given.length} arguments`, [String(called.name)]);
  }
  return fromObject(called.calculate(...given) as BaseValueObject);
}

/** The same range is handed to thousands of calls; its items are turned into the library's objects once. */
const converted = new WeakMap<Matrix, BaseValueObject[][]>();

function toObjects(value: Value, evaluator: Evaluator): BaseValueObject[] {
  if (value instanceof Reference) return value.areas.map((area) => matrixObject(evaluator.cells.matrix(area)));
  if (isMatrix(value)) return [matrixObject(value)];
  if (value instanceof Lambda) return [ErrorValueObject.create(fail("#CALC!").code as never)];
  return [scalarObject(value ?? null)];
}

/** A new array for every call, for some functions (SORT) sort the array that they are given. */
function matrixObject(matrix: Matrix): ArrayValueObject {
  let rows = converted.get(matrix);
  if (!rows) converted.set(matrix, (rows = matrix.map((row) => row.map(scalarObject))));
  return ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.slice()),
    rowCount: matrix.length,
    columnCount: matrix[0]!.length,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

/** Texts go in as texts: the library's own factory would read `7/16` as a date. */
function scalarObject(value: Scalar): BaseValueObject {
  if (value === null) return NullValueObject.create();
  if (typeof value === "number") return NumberValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (typeof value === "string") return StringValueObject.create(value);
  return ErrorValueObject.create(value.code as never);
}

function fromObject(object: BaseValueObject): Scalar | Matrix {
  if (!object.isArray()) return fromScalar(object);
  const rows = (object as ArrayValueObject).getArrayValue().map((row) => row.map(fromScalar));
  return rows.length > 0 && rows[0]!.length > 0 ? rows : fail("#CALC!");
}

function fromScalar(object: BaseValueObject | null | undefined | void): Scalar {
  if (!object || object.isNull()) return null;
  const value = object.getValue();
  if (object.isError()) return fail(errorCode(String(value)));
  if (typeof value === "number") return Number.isFinite(value) ? value : fail("#NUM!");
  return value as Scalar;
}

function errorCode(text: string): ErrorCode {
  return isErrorCode(text) ? text : "#VALUE!";
}
