import { findWord, sameWord, type Row } from "../../core/drawer";
import {
  Fault,
  less,
  naming,
  parseLength,
  readLength,
  subtract,
  toDouble,
  type Rational,
  type Unit,
} from "../../core/length";
import type { Part, Stock } from "../../core/sheets";
import { readTable } from "./table";

const PART_HEADINGS = [
  "part",
  "drawer",
  "qty",
  "length",
  "width",
  "thickness",
  "material",
  "grain",
  "grain group",
] as const;
const STOCK_HEADINGS = ["material", "thickness", "length", "width", "price", "available", "grain"] as const;

/** More equal pieces than these are no job for one shop. */
const MOST_PIECES = 10_000;

type PartHeading = (typeof PART_HEADINGS)[number];
type StockHeading = (typeof STOCK_HEADINGS)[number];

/** A row of the table of parts. */
export interface PartRow extends Part {
  row: number;
  thickness?: Rational;
  material: string;
}

/** A row of the table of stock. */
export interface StockRow extends Stock {
  row: number;
  thickness?: Rational;
  material: string;
}

/** @throws Fault naming the row and column of a cell that cannot be read */
export const readParts = (raw: unknown, unit: Unit): PartRow[] =>
  readTable<PartHeading>("parts", raw, PART_HEADINGS, ["length", "width", "qty"]).rows.map((row) => {
    const cell = cellsOf("parts", row, unit);
    return {
      row: row.number,
      name: cell.text("part") || `row ${row.number}`,
      drawer: cell.text("drawer"),
      quantity: cell.count("qty") ?? missing("parts", row, "qty"),
      length: cell.length("length") ?? missing("parts", row, "length"),
      width: cell.length("width") ?? missing("parts", row, "width"),
      ...given("thickness", cell.length("thickness")),
      material: cell.text("material"),
      grain: cell.word("grain", ["any", "length", "width"]),
      ...given("grainGroup", cell.text("grain group") || undefined),
    };
  });

/** @throws Fault naming the row and column of a cell that cannot be read */
export const readStock = (raw: unknown, unit: Unit): StockRow[] =>
  readTable<StockHeading>("stock", raw, STOCK_HEADINGS, ["length", "width"]).rows.map((row) => {
    const cell = cellsOf("stock", row, unit);
    return {
      row: row.number,
      name: `row ${row.number}`,
      length: cell.length("length") ?? missing("stock", row, "length"),
      width: cell.length("width") ?? missing("stock", row, "width"),
      ...given("thickness", cell.length("thickness")),
      material: cell.text("material"),
      ...given("price", cell.price("price")),
      ...given("available", cell.count("available", 0)),
      grain: cell.word("grain", ["length", "none"]),
    };
  });

/** The rows of stock that a part may be cut from: its material, and the thickness nearest to its own. */
export function stockFor(part: PartRow, stock: readonly StockRow[], unit: Unit): StockRow[] {
  const like = stock.filter(
    ({ material }) => material === "" || part.material === "" || sameText(material, part.material),
  );
  const off = (row: StockRow): number =>
    row.thickness && part.thickness ? Math.abs(toDouble(subtract(row.thickness, part.thickness))) : 0;
  const tolerance = toDouble(parseLength(unit === "in" ? "1/32" : "0.8", unit)) + 1e-12;
  const nearest = Math.min(...like.map(off));
  const fitting = like.filter((row) => off(row) <= tolerance && off(row) <= nearest + 1e-12);
  if (fitting.length > 0) return fitting;
  throw new Fault("sheets.noStockFor", {
    row: part.row,
    name: part.name,
    material: part.material,
    thickness: part.thickness,
  });
}

const sameText = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

const given = <K extends string, V>(key: K, value: V | undefined): { [P in K]?: V } =>
  (value === undefined ? {} : { [key]: value }) as { [P in K]?: V };

function missing(table: string, row: Row<string>, heading: string): never {
  throw new Fault("argument.blank", {
    argument: place(table, row, heading),
    wanted: heading === "qty" ? `whole number from 1 to ${MOST_PIECES}` : "length",
  });
}

const place = (table: string, row: Row<string>, heading: string): string =>
  `${table}, row ${row.number}, ${heading[0]!.toUpperCase()}${heading.slice(1)}`;

/** Reads the cells of one row, each fault with its place. */
function cellsOf<N extends string>(table: string, row: Row<N>, unit: Unit) {
  const at = <T>(heading: N, read: (value: unknown) => T): T | undefined => {
    const typed = row.cells.get(heading);
    return typed && naming(place(table, row, heading), () => read(typed.value));
  };
  return {
    length(heading: N): Rational | undefined {
      const typed = row.cells.get(heading);
      return typed && naming(place(table, row, heading), () => readLength(typed, unit, "positive"));
    },
    text: (heading: N): string =>
      at(heading, (value) => {
        if (typeof value === "string") return value.trim();
        if (typeof value === "number" && Number.isFinite(value)) return String(value);
        throw new Fault("text.wrongType", { received: value });
      }) ?? "",
    count: (heading: N, least = 1): number | undefined =>
      at(heading, (value) => {
        const digits = sameWord(value, "none") ? "0" : value;
        const read = typeof digits === "string" && /^\s*\d+\s*$/.test(digits) ? Number(digits) : digits;
        if (typeof read === "number" && Number.isInteger(read) && read >= least && read <= MOST_PIECES) return read;
        throw new Fault("number.notWhole", { received: value, least, most: MOST_PIECES });
      }),
    price: (heading: N): Rational | undefined => {
      const typed = row.cells.get(heading);
      // A price is a plain number, whatever the lengths' unit.
      return typed && naming(place(table, row, heading), () => readPrice(typed.value));
    },
    word: <const W extends string>(heading: N, words: readonly W[]): W =>
      at(heading, (value) => findWord(value, words)) ?? words[0]!,
  };
}

function readPrice(value: unknown): Rational {
  if (typeof value !== "number" && !(typeof value === "string" && /^\s*\d+([.,]\d+)?\s*$/.test(value))) {
    throw new Fault("number.wrongType", { received: value });
  }
  const price = readLength({ value }, "in", "any", 1e9);
  if (less(price, parseLength("0", "in"))) throw new Fault("number.negative", { received: value });
  return price;
}
