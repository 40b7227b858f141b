import type { FormattedType } from "./host";

/** What a cell of ours may hold. */
export type CellResult = number | string | boolean | FormattedNumber | CustomFunctions.Error;

/** A number that brings its own number format; to every native formula it stays a number. */
export interface FormattedNumber {
  type: FormattedType;
  basicValue: number;
  numberFormat: string;
}
