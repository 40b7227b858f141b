import { cutList, type Job, type Part, type PlannedOpening } from "../../core/drawer";
import { Fault, multiply, ratio, ZERO } from "../../core/length";
import { solidQuantity, type CostedJob, type StockCharge } from "../../core/money";
import type { AnyStockRow, PartRow } from "../tables";
import { matchStock, type SheetRows } from "./sheet-groups";
import { halvingsOf, usesOf } from "./solved";

/**
 * What the plan is made of, and what it takes of the stock.
 * @param priced whether stock without a price is a fault
 * @param times how many such jobs the call works out
 */
export function costed(
  job: Job,
  plan: readonly PlannedOpening[],
  stock: readonly AnyStockRow[],
  priced = true,
  times = 1,
): CostedJob {
  const parts = cutList(plan, true);
  return { unit: job.unit, plan, parts, stock: chargesOf(job, parts, stock, priced, times) };
}

/** What the job takes of each row of stock, in the layout that SHEETS shows. @throws Fault where it has no price */
function chargesOf(
  { standards: s, unit }: Job,
  parts: readonly Part[],
  stock: readonly AnyStockRow[],
  priced: boolean,
  times: number,
): StockCharge[] {
  const { sheets, solid } = matchStock(parts.map(asRow), stock, unit);
  const cutting = { kerf: s.kerf, trim: s["sheet trim"], effort: s["sheet effort"] };
  const halvings = halvingsOf(sheets, times);
  return [
    ...sheets.flatMap((group, i): StockCharge[] => {
      if (priced) refuseUnpriced(group, stock);
      return usesOf(group, { ...cutting, halvings: halvings[i]! }).map((use) => {
        const { material, thickness, length, width, price } = group.stock[use.stock]!;
        const bought = ratio(use.sheets);
        return {
          material,
          ...(thickness && { thickness }),
          length,
          width,
          soldBy: "sheet",
          bought,
          used: multiply(bought, use.yield),
          price: price ?? ZERO,
        };
      });
    }),
    ...solid.map(({ stock: row, parts: of }): StockCharge => {
      if (priced && !row.price) throw new Fault("stock.priceMissing", { stock: row.name });
      const { material, thickness, soldBy, price = ZERO } = row;
      const bought = solidQuantity(of, row, unit);
      return { material, ...(thickness && { thickness }), soldBy, bought, used: bought, price };
    }),
  ];
}

/** Offcuts without a price are free where anything has one; where nothing has one, it was forgotten. */
function refuseUnpriced({ stock }: SheetRows, all: readonly AnyStockRow[]): void {
  if (stock.some(({ price }) => price)) return;
  const free = all.some(({ price }) => price);
  const forgotten = stock.find(({ available }) => !free || available === undefined);
  if (forgotten) throw new Fault("stock.priceMissing", { stock: forgotten.name });
}

/** A part as the table that PARTS gives would bring it to SHEETS, so that both lay out the same. */
const asRow = (
  { name, drawers, quantity, length, width, thickness, material, grain, grainGroup }: Part,
  i: number,
): PartRow => ({
  row: i + 2,
  planned: true,
  name,
  drawer: drawers.join(", "),
  quantity,
  length,
  width,
  thickness,
  material,
  grain,
  ...(grainGroup === undefined ? {} : { grainGroup }),
});
