import { cutList, type Job, type Part, type PlannedOpening } from "../drawer";
import { Fault, multiply, ratio, ZERO, type Rational } from "../length";
import {
  halvingsOf,
  matchStock,
  materialOf,
  type Effort,
  type PartToCut,
  type SheetGroup,
  type SheetStock,
  type StockUse,
} from "../sheets";
import type { CostedJob, StockCharge } from "./quote";
import { isSolid, solidQuantity, type AnyStock } from "./solid-stock";

/** How sheets are cut. */
export interface Cutting {
  kerf: Rational;
  trim: Rational;
  effort: Effort;
  /** Of the steps that one call may take, those for this group: a half so many times over. */
  halvings: number;
}

export interface Costing {
  /** What the layout of a group takes of each row of its stock: whoever asks may remember it. */
  usesOf: (group: SheetGroup, cutting: Cutting) => readonly StockUse[];
  /** Whether stock without a price is a fault. */
  priced: boolean;
  /** How many such jobs are worked out at once. */
  times: number;
}

/** What the plan is made of, and what it takes of the stock. @throws Fault where that has no price */
export function costed(
  job: Job,
  plan: readonly PlannedOpening[],
  stock: readonly AnyStock[],
  costing: Costing,
): CostedJob {
  const parts = cutList(plan, true);
  const { sheets, solid } = matchStock(parts.map(toCut), stock, isSolid, job.unit);
  const halvings = halvingsOf(sheets, costing.times);
  return {
    unit: job.unit,
    plan,
    parts,
    stock: [
      ...sheets.flatMap((group, i) => sheetCharges(job, group, halvings[i]!, stock, costing)),
      ...solid.map((group): StockCharge => {
        const { thickness, soldBy, price, name } = group.stock;
        const material = materialOf(group.stock, group.parts);
        if (costing.priced && !price) throw new Fault("stock.priceMissing", { stock: name });
        const bought = solidQuantity(group.parts, group.stock, job.unit);
        return { material, ...(thickness && { thickness }), soldBy, bought, used: bought, price: price ?? ZERO };
      }),
    ],
  };
}

/** What the job takes of each row of sheets, in the layout that SHEETS shows. */
function sheetCharges(
  { standards: s }: Job,
  group: SheetGroup,
  halvings: number,
  all: readonly AnyStock[],
  { usesOf, priced }: Costing,
): StockCharge[] {
  const unpriced = priced ? unpricedOf(group, all) : undefined;
  if (unpriced) throw new Fault("stock.priceMissing", { stock: unpriced.name });
  const uses = usesOf(group, { kerf: s.kerf, trim: s["sheet trim"], effort: s["sheet effort"], halvings });
  return uses.map((use) => {
    const row = group.stock[use.stock]!;
    const { thickness, length, width, price } = row;
    const bought = ratio(use.sheets);
    return {
      material: materialOf(row, group.parts),
      ...(thickness && { thickness }),
      length,
      width,
      soldBy: "sheet",
      bought,
      used: multiply(bought, use.yield),
      price: price ?? ZERO,
    };
  });
}

/** Offcuts without a price are free where anything has one; where nothing has one, it was forgotten. */
export function unpricedOf({ stock }: SheetGroup, all: readonly AnyStock[]): SheetStock | undefined {
  if (stock.some(({ price }) => price)) return undefined;
  const free = all.some(({ price }) => price);
  return stock.find(({ available }) => !free || available === undefined);
}

/** A part as the table that PARTS gives would bring it to SHEETS, its header row first, so that both lay out the same. */
export const toCut = ({ drawers, ...part }: Part, i: number): PlannedPart => ({
  ...part,
  place: i + 2,
  planned: true,
  drawer: drawers.join(", "),
});

/** One of the plan's own: a row of a person's table may leave its drawer and its thickness open. */
export interface PlannedPart extends PartToCut {
  drawer: string;
  thickness: Rational;
}
