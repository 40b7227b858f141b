import { planJob, readDrawers, type Job, type Plan } from "../../core/drawer";
import { naming, orElse, type Unit } from "../../core/length";
import { costed, quoteOf, type AnyStock, type Quote, type Rates } from "../../core/money";
import type { Argument } from "../arguments";
import { readCell, isEmpty, readLength } from "../cells";
import { readOpenings, readRatesTable, readStock, readJob, type OpeningHeading, type Table } from "../tables";
import { openingsOf, standardsIn, tellUnit } from "./job";
import { ofTables } from "./memo";
import { planned, refuseUnreadable } from "./planned";
import { usesOf } from "./solved";

/** Where the argument `drawers` stands, which divides all openings in one way. */
const DRAWERS = 4;

const openings: Argument<Table<OpeningHeading>> = {
  name: "openings",
  read: (raw, call) => readOpenings(raw, true, holdsSomething(call.raw[DRAWERS])),
};

/** The standards, with which the openings are a job, divided as `drawers` asks if that can be read. */
const standards: Argument<{ job: Job; plan: Plan }> = {
  name: "standards",
  read(raw, call) {
    const table = openingsOf(call);
    const values = standardsIn(raw);
    tellUnit(call, values.get("unit"));
    const divided = orElse(
      () => withDrawers(table, call.raw[DRAWERS], call.unit),
      () => undefined,
    );
    const job = readJob(divided ?? table, values);
    const plan = planJob(job);
    if (divided) refuseUnreadable(plan);
    return { job, plan };
  },
};

const stock: Argument<AnyStock[]> = {
  name: "stock",
  read: (raw, { unit }) => stockRead([raw], unit, () => readStock(raw, unit)),
};

const rates: Argument<Rates> = { name: "rates", read: (raw) => ratesRead([raw], "", () => readRatesTable(raw)) };

/** What the cell functions of quotes take. */
export const QUOTE_ARGUMENTS = [openings, standards, stock, rates] as const;

/** The drawers of every opening, which `standards` has put there; here only what is wrong with them comes out. */
export const drawersForAll: Argument<void> = {
  name: "drawers",
  read: (raw, call) => void withDrawers(openingsOf(call), raw, call.unit),
};

/** The quote of a job that has been read. */
export const quoteFor = ({ job, plan }: { job: Job; plan: Plan }, stock: readonly AnyStock[], rates: Rates): Quote =>
  quoteOf(costed(job, planned(plan), stock, { usesOf, priced: true, times: 1 }), rates);

const stockRead = ofTables<AnyStock[]>();
const ratesRead = ofTables<Rates>();

/** What cannot be read holds something too, and is refused in its turn. */
const holdsSomething = (raw: unknown): boolean =>
  orElse(
    () => !isEmpty(readCell(raw).value),
    () => true,
  );

/** The same openings, all divided in one way; a blank leaves each its own. */
const withDrawers = (table: Table<OpeningHeading>, raw: unknown, unit: Unit): Table<OpeningHeading> =>
  naming("drawers", () => {
    const typed = readCell(raw);
    if (isEmpty(typed.value)) return table;
    readDrawers([typeof typed.value === "string" ? typed.value : readLength(typed, unit)], unit);
    return { ...table, rows: table.rows.map((row) => ({ ...row, cells: new Map(row.cells).set("drawers", typed) })) };
  });
