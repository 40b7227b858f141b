import { usual } from "../../core/drawer";
import type { Unit } from "../../core/length";
import { isSolid, type AnyStock, type SolidStock } from "../../core/money";
import {
  halvingsOf,
  matchStock,
  materialOf,
  searchOn,
  type Effort,
  type OfMaterial,
  type PartToCut,
  type SheetGroup,
  type Solution,
  type SolidGroup,
} from "../../core/sheets";
import { optionalLength, unit, word, type Argument } from "../arguments";
import { lengthResult, type CellResult } from "../cells";
import { readNotedStock, readParts, readStock } from "../tables";
import type { Read } from "./cell-function";
import { solved } from "./solved";

/** Parts and the sheets that they are cut from, laid out. */
export interface LaidOutGroup extends SheetGroup {
  solution: Solution;
}

export interface SheetJob {
  unit: Unit;
  effort: Effort;
  groups: readonly LaidOutGroup[];
  /** Parts of solid wood, which are laid out on nothing. */
  solid: readonly SolidGroup<SolidStock>[];
}

const parts: Argument<PartToCut[]> = { name: "parts", read: (raw, call) => readParts(raw, call.unit) };
export const stock: Argument<AnyStock[]> = { name: "stock", read: (raw, call) => readStock(raw, call.unit) };

/** Stock that may be left out. */
export const stockIfGiven: Argument<ReturnType<typeof readNotedStock>> = {
  name: "stock",
  read: (raw, call) => readNotedStock(raw, call.unit),
};

/** What the cell functions of sheets take. */
export const SHEET_ARGUMENTS = [
  parts,
  stock,
  optionalLength("kerf", usual("kerf")),
  optionalLength("trim", usual("sheet trim")),
  word<Effort>("effort", ["standard", "quick", "thorough"]),
  unit("unit"),
] as const;

/** Lays the parts out. The functions that take them share one answer of equal input. */
export function laidOut([parts, stock, kerf, trim, effort, unit]: Read<typeof SHEET_ARGUMENTS>): SheetJob {
  const { sheets, solid } = matchStock(parts, stock, isSolid, unit);
  const halvings = halvingsOf(sheets);
  const groups = sheets.map((rows, i) => ({
    ...rows,
    solution: solved(rows, { kerf, trim, effort, halvings: halvings[i]! }),
  }));
  return { unit, effort, groups, solid };
}

/**
 * Lays the parts out better and better, a turn of each group after another.
 * @yields the best so far; ends where nothing can be better
 */
export function* searchedOn([parts, stock, kerf, trim, effort, unit]: Read<
  typeof SHEET_ARGUMENTS
>): Generator<SheetJob> {
  const { sheets, solid } = matchStock(parts, stock, isSolid, unit);
  const searches = sheets.map((rows) => searchOn({ ...rows, kerf, trim }));
  const solutions: Solution[] = [];
  for (let going = searches.map((_, i) => i); going.length > 0;) {
    for (const i of going) {
      const turn = searches[i]!.next();
      if (turn.done) going = going.filter((other) => other !== i);
      else {
        solutions[i] = turn.value;
        if (solutions.filter(Boolean).length === sheets.length)
          yield { unit, effort, solid, groups: sheets.map((rows, g) => ({ ...rows, solution: solutions[g]! })) };
      }
    }
  }
}

/** Material and thickness of what is cut; where the stock does not tell, those of its parts. */
export const stockCells = (stock: OfMaterial, parts: readonly OfMaterial[], unit: Unit): CellResult[] => {
  const thickness = stock.thickness ?? parts[0]!.thickness;
  return [materialOf(stock, parts), thickness ? lengthResult(thickness, unit) : ""];
};
