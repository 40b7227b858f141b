import { doubtful, type Finding } from "../../core/drawer";
import { Fault, ZERO, type Unit } from "../../core/length";
import type { AnyStock } from "../../core/money";
import type { PartToCut } from "../../core/sheets";
import { readFilled } from "../cells";
import { fold } from "./heading";
import { isBlankTable, readTable } from "./table";
import { placeOf, type Row, type Table } from "./row";
import { cellsOf, given, missing } from "./row-cells";

const PART_HEADINGS = [
  "piece",
  "part",
  "drawer",
  "qty",
  "length",
  "width",
  "thickness",
  "material",
  "grain",
  "grain group",
  "grain gap",
  "grain row",
  "grain line",
  "line gap",
] as const;
const STOCK_HEADINGS = [
  "material",
  "thickness",
  "length",
  "width",
  "price",
  "available",
  "grain",
  "sold by",
  "waste",
] as const;

type PartHeading = (typeof PART_HEADINGS)[number];
type StockHeading = (typeof STOCK_HEADINGS)[number];

/** @throws Fault naming the row and column of a cell that cannot be read */
export const readParts = (raw: unknown, unit: Unit): PartToCut[] =>
  isLayout(raw) ? readLayout(raw, unit) : readPartsToLay(raw, unit);

const readPartsToLay = (raw: unknown, unit: Unit): PartToCut[] =>
  readTable<PartHeading>("parts", raw, PART_HEADINGS, ["length", "width", "qty"], { unless: "piece" }).rows.map(
    (row) => {
      const cell = cellsOf("parts", row, unit);
      const label = cell.text("piece");
      return {
        place: row.number,
        name: label || cell.text("part") || `row ${row.number}`,
        drawer: cell.text("drawer"),
        ...(label && { labeled: true }),
        // A piece with a label of its own stands alone.
        quantity: cell.count("qty") ?? (label ? 1 : missing("parts", row, "qty")),
        length: cell.length("length") ?? missing("parts", row, "length"),
        width: cell.length("width") ?? missing("parts", row, "width"),
        ...given("thickness", cell.length("thickness")),
        material: cell.text("material"),
        grain: cell.word("grain", ["any", "length", "width"]),
        ...given("grainGroup", cell.text("grain group") || undefined),
        ...given("grainGap", cell.length("grain gap")),
        ...(cell.word("grain row", ["end to end", "stacked"]) === "stacked" && { grainRow: "stacked" as const }),
        ...given("grainLine", cell.count("grain line")),
        ...given("lineGap", cell.length("line gap")),
      };
    },
  );

/** Whether the table tells where its parts lie, as LAYOUT does. */
function isLayout(raw: unknown): boolean {
  const header = readFilled("parts", raw)[0]?.cells.map(({ value }) => (typeof value === "string" ? fold(value) : ""));
  return PLACES.every((heading) => header?.includes(fold(heading)));
}

const PLACES = ["sheet", "from left", "from bottom"] as const;
const LAYOUT_HEADINGS = [...PLACES, "part", "drawer", "length", "width", "thickness", "material", "turned"] as const;

/** A layout, one row a piece: its sides are told as they lie. A blank place is the edge, for some hosts pass 0 as blank. */
const readLayout = (raw: unknown, unit: Unit): PartToCut[] =>
  readTable<(typeof LAYOUT_HEADINGS)[number]>("parts", raw, LAYOUT_HEADINGS, ["length", "width", "sheet"]).rows.map(
    (row) => {
      const cell = cellsOf("parts", row, unit);
      const along = cell.length("length") ?? missing("parts", row, "length");
      const across = cell.length("width") ?? missing("parts", row, "width");
      const turned = cell.yes("turned");
      return {
        place: row.number,
        name: cell.text("part") || `row ${row.number}`,
        drawer: cell.text("drawer"),
        quantity: 1,
        length: turned ? across : along,
        width: turned ? along : across,
        ...given("thickness", cell.length("thickness")),
        material: cell.text("material"),
        grain: "any" as const,
        lies: {
          sheet: cell.count("sheet") ?? missing("parts", row, "sheet"),
          fromLeft: cell.place("from left"),
          fromBottom: cell.place("from bottom"),
          turned,
        },
      };
    },
  );

/** @throws Fault naming the row and column of a cell that cannot be read */
export const readStock = (raw: unknown, unit: Unit): AnyStock[] => stockOf(readStockTable(raw), unit);

/** Stock, and what its table holds that no layout shows; nothing where the table is blank. */
export function readNotedStock(raw: unknown, unit: Unit): { rows: AnyStock[]; noted: Finding[] } | undefined {
  if (isBlankTable("stock", raw)) return undefined;
  const table = readStockTable(raw);
  return { rows: stockOf(table, unit), noted: notedInStock(table) };
}

const readStockTable = (raw: unknown): Table<StockHeading> =>
  readTable<StockHeading>("stock", raw, STOCK_HEADINGS, ["length", "width"], { unless: "sold by" });

/** Where zero could be meant it is named: a blank says that as many are there as are wanted, or that there is no price. */
const notedInStock = ({ unread, zeros }: Table<StockHeading>): Finding[] => [
  ...unread.map((heading) => ({ where: "stock", ...doubtful("heading.unread", { heading }) })),
  ...(["price", "available"] as const)
    .filter((heading) => zeros.some((zero) => zero.heading === heading))
    .map((heading) => ({ where: "stock", ...doubtful("zero.blank", { heading }) })),
];

const stockOf = ({ rows }: Table<StockHeading>, unit: Unit): AnyStock[] =>
  rows.map((row) => {
    const cell = cellsOf("stock", row, unit);
    const soldBy = cell.word("sold by", ["sheet", "board foot", "cubic meter"], MEASURES);
    const common = {
      place: row.number,
      name: `row ${row.number}`,
      ...given("thickness", cell.length("thickness")),
      material: cell.text("material"),
      ...given("price", cell.price("price")),
    };
    if (soldBy !== "sheet") {
      useless("available", row, soldBy);
      return { ...common, soldBy, waste: cell.percent("waste") ?? ZERO };
    }
    useless("waste", row, soldBy);
    return {
      ...common,
      length: cell.length("length") ?? missing("stock", row, "length"),
      width: cell.length("width") ?? missing("stock", row, "width"),
      ...given("available", cell.count("available", 0)),
      grain: cell.word("grain", ["length", "none"]),
    };
  });

const MEASURES = {
  sheets: "sheet",
  "board feet": "board foot",
  "board ft": "board foot",
  "bd ft": "board foot",
  bf: "board foot",
  "cubic meters": "cubic meter",
} as const;

/** A cell that nothing would come of must not stand there as if something did. */
function useless(heading: StockHeading, row: Row<StockHeading>, soldBy: string): void {
  if (row.cells.has(heading)) throw new Fault("stock.useless", { argument: placeOf("stock", row, heading), soldBy });
}
