import { groupsOf, type AnyOpening, type Cabinet, type Job } from "../../core/drawer";
import { Fault, naming } from "../../core/length";
import { letters } from "../cells";
import { OPENING_COLUMNS, readOpening, type OpeningHeading } from "./opening";
import { placeOf, type Row, type Table } from "./row";
import { readStandards, readUnit, type StandardValues } from "./standards";

/**
 * Reads a job. What is wrong with one opening comes out when that opening is planned; only what makes the whole
 * table doubtful is a fault here.
 * @throws Fault where a standard is wrong, or two openings have one name
 */
export function readJob(table: Table<OpeningHeading>, typed: StandardValues): Job {
  const unit = readUnit(typed.get("unit"));
  const labels = readLabels(table.rows);
  const standards = readStandards(typed);
  const openings = table.rows.map((row, i) => readOpening(row, labels[i]!, unit, standards));
  return { unit, standards, openings, cabinets: groupByCabinet(openings, table.rows) };
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
  let next = 1;
  return typed.map((label) => {
    if (label !== undefined) return label;
    while (taken.has(letters(next))) next++;
    return letters(next++);
  });
}

function groupByCabinet(openings: readonly AnyOpening[], rows: readonly Row<OpeningHeading>[]): Cabinet[] {
  const named = openings.map((opening, i) => {
    const row = rows[i]!;
    const cell = row.cells.get("cabinet");
    const name = cell && naming(placeOf("openings", row, "cabinet"), () => OPENING_COLUMNS.cabinet(cell, "in"));
    return { opening, name: name?.toUpperCase() ?? "", typed: String(cell?.value ?? "") };
  });
  return groupsOf(named, ({ name }) => name).map((members) => ({
    name: members[0]!.typed,
    openings: members.map(({ opening }) => opening),
  }));
}
