import { planJob, readDrawers, readJob, readUnit, type OpeningHeading, type Table } from "../../core/drawer";
import { isEmpty, naming, orElse, readLength, type Fault, type Unit } from "../../core/length";
import { quoteOf, type Quote, type Rates } from "../../core/money";
import { readCell } from "../cells";
import { readOpenings, readRatesTable, readStandardValues, readStock, type AnyStockRow } from "../tables";
import { costed } from "./costed";
import { tableCall } from "./job";
import { TableMemo } from "./memo";
import { planned, refuseUnreadable } from "./planned";

/** Runs a cell function of `openings, standards, stock, rates, [drawers]` with the quote of the job. */
export const withQuote = <R>(raw: readonly unknown[], body: (quote: Quote, unit: Unit) => R): R =>
  tableCall(raw, (tellUnit) => {
    const [openingsRaw, standardsRaw, stockRaw, ratesRaw, drawersRaw] = raw;
    const openings = readOpenings(openingsRaw, true, holdsSomething(drawersRaw));
    const standards = standardsRead.of(standardsRaw, "", () => readStandardValues(standardsRaw));
    const unit = readUnit(standards.get("unit"));
    tellUnit(unit);
    const asked = readLast(() => withDrawers(openings, drawersRaw, unit));
    const job = readJob(asked.table ?? openings, standards);
    const plan = planJob(job);
    if (asked.table) refuseUnreadable(plan);
    const stock = stockRead.of(stockRaw, unit, () => readStock(stockRaw, unit));
    const rates = ratesRead.of(ratesRaw, "", () => readRatesTable(ratesRaw));
    if (asked.fault) throw asked.fault;
    return body(quoteOf(costed(job, planned(plan), stock), rates), unit);
  });

const standardsRead = new TableMemo<ReturnType<typeof readStandardValues>>();
const stockRead = new TableMemo<AnyStockRow[]>();
const ratesRead = new TableMemo<Rates>();

/** What cannot be read holds something too, and is refused in its turn. */
const holdsSomething = (raw: unknown): boolean =>
  orElse(
    () => !isEmpty(readCell(raw).value),
    () => true,
  );

/** Faults go from left to right: one of the last argument waits until the others are read. */
const readLast = (read: () => Table<OpeningHeading>): { table?: Table<OpeningHeading>; fault?: Fault } =>
  orElse(
    () => ({ table: read() }),
    (fault) => ({ fault }),
  );

/** The same openings, all divided in one way; a blank leaves each its own. */
const withDrawers = (table: Table<OpeningHeading>, raw: unknown, unit: Unit): Table<OpeningHeading> =>
  naming("drawers", () => {
    const typed = readCell(raw);
    if (isEmpty(typed.value)) return table;
    readDrawers([typeof typed.value === "string" ? typed.value : readLength(typed, unit)], unit);
    return { ...table, rows: table.rows.map((row) => ({ ...row, cells: new Map(row.cells).set("drawers", typed) })) };
  });
