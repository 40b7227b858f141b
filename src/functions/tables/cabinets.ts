import {
  clearSizes,
  readDrawers,
  STANDARD_NAMES,
  type CabinetAsked,
  type ClearSizes,
  type DrawerAsked,
  type StandardName,
  type Standards,
} from "../../core/drawer";
import { Fault, naming, roundFigure, ZERO, type Rational, type Unit } from "../../core/length";
import { letters, MOST_ROWS, readLength, readLengthOrNone, titled, type Typed } from "../cells";
import { fold } from "./heading";
import { length, type Kind } from "./kinds";
import { OPENING_COLUMNS } from "./opening";
import { placeOf, type Row, type Table } from "./row";
import { readStandard, readStandards, readUnit, takesZero, type StandardValues } from "./standards";
import { readTable } from "./table";

const columns: Kind<DrawerAsked[]> = (typed, unit) => {
  const { value, mark } = typed;
  if (typeof value === "string") return readDrawers([value], unit, mark, "column");
  return readDrawers([readLength(Number.isInteger(value) ? { value } : typed, unit)], unit, unit, "column");
};
const positive = length("positive");
const notNegative: Kind<Rational> = (typed, unit) => readLengthOrNone(typed, unit, "not negative");

/** The columns that a cabinet has of its own, and how their cells are read. */
const CABINET_COLUMNS = {
  cabinet: OPENING_COLUMNS.cabinet,
  width: positive,
  height: positive,
  depth: positive,
  columns,
  "toe kick": notNegative,
  "back thickness": notNegative,
  "back inset": notNegative,
};

/** What an opening has as well is handed on to it as it was typed. */
const SHARED_COLUMNS = {
  drawers: OPENING_COLUMNS.drawers,
  quantity: OPENING_COLUMNS.quantity,
  "box heights": OPENING_COLUMNS["box heights"],
};

type Own = { [N in keyof typeof CABINET_COLUMNS]: ReturnType<(typeof CABINET_COLUMNS)[N]> };
type HandedOn = keyof typeof SHARED_COLUMNS | StandardName;
type CabinetHeading = keyof Own | HandedOn;

const REQUIRED = ["width", "height", "depth", "columns", "drawers"] as const;
const HEADINGS = [
  ...Object.keys(CABINET_COLUMNS),
  ...Object.keys(SHARED_COLUMNS),
  ...STANDARD_NAMES,
] as CabinetHeading[];

export type CabinetTable = Table<CabinetHeading>;

/** @throws Fault as `readTable` */
export const readCabinetTable = (raw: unknown): CabinetTable =>
  readTable<CabinetHeading>("cabinets", raw, HEADINGS, REQUIRED);

/** A cabinet that has been read and divided. */
export interface DividedCabinet extends ClearSizes {
  name: string;
  /** Of its openings, left to right. */
  labels: string[];
  carcase: CabinetAsked["carcase"];
  /** What its openings take over, as typed. */
  handedOn: ReadonlyMap<HandedOn, Typed>;
}

/** What comes of a table of cabinets. */
export interface Divided {
  cabinets: DividedCabinet[];
  /** What is handed on, in the table's order, under its headings as typed; what says nothing to us has no name. */
  columns: { name?: HandedOn; heading: string }[];
}

/**
 * Reads every cabinet of a table and divides it, from top to bottom.
 * @throws Fault for the first cell that cannot be read, then for names that are there twice, then for what has no room
 */
export function readCabinets(table: CabinetTable, typed: StandardValues): Divided {
  const unit = readUnit(typed.get("unit"));
  const standards = readStandards(typed);
  const read = table.rows.map((row) => ({ row, cabinet: readCabinet(row, unit, standards) }));
  const openings = read.reduce((count, { cabinet }) => count + cabinet.columns.length, 0);
  if (openings > MOST_ROWS) throw new Fault("cabinets.many", { openings, most: MOST_ROWS });
  const names = namesOf(read);
  const cabinets = read.map(({ row, cabinet }, i) => ({
    ...naming(`cabinets, row ${row.number}`, () => clearSizes(cabinet)),
    ...names[i]!,
    carcase: cabinet.carcase,
    handedOn: new Map([...row.cells, ...zerosOf(table, row, unit)].filter(isHandedOn)),
  }));
  return { cabinets, columns: handedOn(table) };
}

const isHandedOn = (cell: [CabinetHeading, Typed]): cell is [HandedOn, Typed] => !isOwn(cell[0]);

/** A 0 that was read as a blank goes on as it is where zero could be meant, so that CHECKS names it. */
const zerosOf = ({ zeros }: CabinetTable, { number }: Row<CabinetHeading>, unit: Unit): [CabinetHeading, Typed][] =>
  zeros
    .filter(({ row, heading }) => row === number && !isOwn(heading) && !isShared(heading) && takesZero(heading, unit))
    .map(({ heading }) => [heading, { value: 0 }]);

/** Headings that say nothing to us go on as well, so that CHECKS names them; those of an opening alone would collide. */
const handedOn = ({ headings }: CabinetTable): Divided["columns"] =>
  headings.flatMap(({ name, mark, typed }) => {
    if (name !== undefined) return isOwn(name) ? [] : [{ name, heading: `${titled(name)}${mark ? ` (${mark})` : ""}` }];
    return typed === "" || TAKEN.has(fold(typed)) ? [] : [{ heading: typed }];
  });

const TAKEN = new Set(["opening", "casewidth"]);

interface ReadCabinet extends CabinetAsked {
  name?: string;
}

function readCabinet(row: Row<CabinetHeading>, unit: Unit, job: Readonly<Standards>): ReadCabinet {
  const own: Partial<Own> = {};
  const standards: Partial<Record<StandardName, unknown>> = {};
  for (const [heading, typed] of row.cells) {
    naming(placeOf("cabinets", row, heading), () => {
      if (isOwn(heading)) Object.assign(own, { [heading]: CABINET_COLUMNS[heading](typed, unit) });
      else if (isShared(heading)) SHARED_COLUMNS[heading](typed, unit);
      else standards[heading] = readStandard(heading, typed, unit);
    });
  }
  for (const heading of REQUIRED) {
    if (row.cells.has(heading)) continue;
    throw new Fault("argument.blank", { argument: placeOf("cabinets", row, heading), wanted: WANTED[heading] });
  }
  return {
    ...(own.cabinet !== undefined && { name: own.cabinet }),
    unit,
    standards: { ...job, ...standards } as Standards,
    outside: { width: own.width!, height: own.height!, depth: own.depth! },
    columns: own.columns!,
    carcase: {
      toeKick: own["toe kick"] ?? ZERO,
      back: own["back thickness"] ?? usualBack(unit),
      backInset: own["back inset"] ?? ZERO,
    },
  };
}

const isOwn = (heading: CabinetHeading): heading is keyof Own => heading in CABINET_COLUMNS;
const isShared = (heading: CabinetHeading): heading is keyof typeof SHARED_COLUMNS => heading in SHARED_COLUMNS;

/** @source common practice */
const usualBack = (unit: Unit): Rational => roundFigure("1/4", "6", unit);

const WANTED: Record<(typeof REQUIRED)[number], string> = {
  width: "length",
  height: "length",
  depth: "length",
  columns: "count of columns, or a list such as 18; 1 part; 2 parts",
  drawers: "count of drawers, or a list such as 5 1/2; 1 part; 2 parts",
};

/**
 * A cabinet of one opening gives it its name, of several its name and a letter. One without a name gets the next number
 * that nobody has, and its openings the next letters, as they would in a table of openings.
 */
function namesOf(
  read: readonly { row: Row<CabinetHeading>; cabinet: ReadCabinet }[],
): { name: string; labels: string[] }[] {
  const rows = read.map(({ row }) => row.number);
  const labels = read.map(({ cabinet: { name, columns } }) =>
    columns.map((_, i) => (name === undefined ? undefined : columns.length === 1 ? name : `${name} ${letters(i + 1)}`)),
  );
  const cabinets = read.map(({ cabinet }) => cabinet.name);
  const namesTaken = taken(
    "cabinets",
    cabinets.map((name) => [name]),
    rows,
  );
  const labelsTaken = taken("openings", labels, rows);
  const nextNumber = nextFree(namesTaken, String);
  const nextLetter = nextFree(labelsTaken, letters);
  return read.map((_, i) => ({
    name: cabinets[i] ?? nextNumber(),
    labels: labels[i]!.map((label) => label ?? nextLetter()),
  }));
}

/** @throws Fault `cabinets.sameName` */
function taken(
  kind: string,
  names: readonly (readonly (string | undefined)[])[],
  rows: readonly number[],
): Set<string> {
  const found = new Map<string, number>();
  names.forEach((some, i) =>
    some.forEach((name) => {
      if (name === undefined) return;
      const first = found.get(name.toUpperCase());
      if (first !== undefined) throw new Fault("cabinets.sameName", { kind, name, first, second: rows[i]! });
      found.set(name.toUpperCase(), rows[i]!);
    }),
  );
  return new Set(found.keys());
}

function nextFree(taken: ReadonlySet<string>, named: (n: number) => string): () => string {
  let next = 1;
  return () => {
    while (taken.has(named(next))) next++;
    return named(next++);
  };
}
