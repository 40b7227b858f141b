import { version } from "../../package.json";

/**
 * Gives the version of the functions, for a workbook to note beside its results.
 * @customfunction
 * @group Lengths
 * @returns {string} The version, major.minor.patch
 * @throws nothing
 * @example =DRAWER.VERSION() // => "0.1.0"
 * @source semantic versioning 2.0.0
 */
export function VERSION(): string {
  return version;
}
