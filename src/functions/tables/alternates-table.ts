import { Fault } from "../../core/length";
import { readFilled, isBlank, type Typed } from "../cells";
import { fold } from "./heading";
import { readStandardValues, type StandardValues } from "./standards";

/** Standards of one alternate: its name, and what it gives or takes over from the first, the base. */
export interface Alternate {
  name: string;
  values: StandardValues;
}

/**
 * Reads a table of standards with a column for each alternate under a row of their names. A blank takes the base's
 * value; a blank of the base takes the default. A numeric 0 is a blank here, for most cells are, and some hosts pass
 * empty cells as 0.
 * @throws Fault `alternates.noNames`, `alternates.few`, `alternates.nameBlank`, `table.headingTwice`, and those of the
 * table of two columns
 */
export function readAlternates(raw: unknown): Alternate[] {
  const [header, ...body] = readFilled("standards", raw);
  const corner = header?.cells[0]?.value;
  if (!header || !(isEmpty(corner) || TITLES.includes(fold(String(corner))))) throw new Fault("alternates.noNames", {});
  const columns = header.cells.reduce((last, _, c) => (c > 0 && holds([header, ...body], c) ? c : last), 0);
  if (columns < 2) throw new Fault("alternates.few", {});
  const names = Array.from({ length: columns }, (_, i) => nameOf(header.cells[i + 1]!.value, i + 2));
  names.forEach((name, i) => {
    if (names.findIndex((other) => other.toUpperCase() === name.toUpperCase()) < i) {
      throw new Fault("table.headingTwice", { table: "standards", name });
    }
  });
  const last = body[body.length - 1]?.number ?? 0;
  return names.map((name, i) => {
    // As a table of two columns, every row in its place.
    const pairs: unknown[][] = Array.from({ length: last }, () => [null, null]);
    for (const { number, cells } of body) {
      const value = [cells[i + 1], cells[1]].find((cell) => cell && !isEmpty(cell.value));
      pairs[number - 1] = [wrapped(cells[0]!), value ? wrapped(value) : null];
    }
    return { name, values: readStandardValues(pairs) };
  });
}

const TITLES = ["standard", "name", "alternate"];
const isEmpty = (value: unknown): boolean => isBlank(value) || value === 0;

const holds = (rows: readonly { cells: readonly Typed[] }[], column: number): boolean =>
  rows.some(({ cells }) => !isEmpty(cells[column]?.value));

function nameOf(value: unknown, column: number): string {
  if (isEmpty(value)) throw new Fault("alternates.nameBlank", { column });
  return String(value).trim();
}

/** A cell that has been read, as a host would bring it with its format. */
const wrapped = ({ value, format }: Typed): unknown =>
  format === undefined ? value : { type: "Double", basicValue: value, numberFormat: format };
