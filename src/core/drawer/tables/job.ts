import { Fault, isEmpty, naming, refuseDoubtfulZero, type Typed, type Unit } from "../../length";
import { groupsOf } from "../groups";
import { findWord } from "../words";
import { Opening, OPENING_COLUMNS, type OpeningHeading } from "./opening";
import { defaultStandards, insteadOfZero, readStandard, type StandardName, type Standards } from "./standards";
import { placeOf, type Row, type Table } from "./table";

/** A job as its two tables say it: openings, left to right, in their cabinets. */
export interface Job {
  unit: Unit;
  standards: Readonly<Standards>;
  /** In the order of the table. */
  openings: readonly Opening[];
  cabinets: readonly Cabinet[];
}

/** Openings that stand side by side in one carcase, left to right. */
export interface Cabinet {
  /** Its name; "" where the table gives none. */
  name: string;
  openings: readonly Opening[];
}

/**
 * Reads a job. What is wrong with one opening comes out when that opening is planned; only what makes the whole
 * table doubtful is a fault here.
 * @param standards the values typed, by name, blanks left out
 * @throws Fault where a standard is wrong, or two openings have one name
 */
export function readJob(table: Table<OpeningHeading>, typed: ReadonlyMap<StandardName | "unit", Typed>): Job {
  const unit = readUnit(typed.get("unit"));
  const labels = readLabels(table.rows);
  const standards = readStandards(typed, unit);
  const openings = table.rows.map((row, i) => new Opening(row, labels[i]!, unit, standards));
  return { unit, standards, openings, cabinets: groupByCabinet(openings) };
}

/** The unit of a job whose standards name one. */
export const readUnit = (typed: Typed | undefined): Unit =>
  typed && !isEmpty(typed.value) ? naming("standards, unit", () => findWord<Unit>(typed.value, ["in", "mm"])) : "in";

function readStandards(typed: ReadonlyMap<StandardName | "unit", Typed>, unit: Unit): Readonly<Standards> {
  const own: Partial<Record<StandardName, unknown>> = {};
  for (const [name, value] of typed) {
    if (name === "unit") continue;
    if (value.value !== 0) own[name] = naming(`standards, ${name}`, () => readStandard(name, value, unit));
    else refuseDoubtfulZero(`standards, ${name}`, insteadOfZero(name, unit));
  }
  return { ...defaultStandards(unit), ...own } as Standards;
}

/** Labels as typed, numbers as text; a blank gets the next letter that nobody has. */
function readLabels(rows: readonly Row<OpeningHeading>[]): string[] {
  const typed = rows.map((row) => {
    const cell = row.cells.get("opening");
    return cell && naming(placeOf("openings", row, "opening"), () => OPENING_COLUMNS.opening(cell, "in"));
  });
  const taken = new Map<string, number>();
  typed.forEach((label, i) => {
    if (label === undefined) return;
    const other = taken.get(label.toUpperCase());
    if (other !== undefined) throw new Fault("openings.sameLabel", { label, first: other, second: rows[i]!.number });
    taken.set(label.toUpperCase(), rows[i]!.number);
  });
  let next = 0;
  return typed.map((label) => {
    if (label !== undefined) return label;
    while (taken.has(letters(next))) next++;
    return letters(next++);
  });
}

/** A, B … Z, AA, AB … */
function letters(n: number): string {
  const last = String.fromCharCode(65 + (n % 26));
  return n < 26 ? last : letters(Math.floor(n / 26) - 1) + last;
}

function groupByCabinet(openings: readonly Opening[]): Cabinet[] {
  const groups = groupsOf(openings, ({ row }) => {
    const cell = row.cells.get("cabinet");
    return cell
      ? naming(placeOf("openings", row, "cabinet"), () => OPENING_COLUMNS.cabinet(cell, "in")).toUpperCase()
      : "";
  });
  return groups.map((members) => ({
    name: String(members[0]!.row.cells.get("cabinet")?.value ?? ""),
    openings: members,
  }));
}
