import { Fault, toDouble, type Unit } from "../../core/length";
import { isSolid, type AnyStockRow, type PartRow, type SolidRow, type StockRow } from "../tables";

/** Parts and sheets that have to do with each other: of one material and thickness, as a rule. */
export interface SheetRows {
  parts: PartRow[];
  stock: StockRow[];
}

/** Parts of one row of solid stock. */
export interface SolidRows {
  parts: PartRow[];
  stock: SolidRow;
}

/** Finds each part its stock. Rows that any part may choose between go together, with all parts cut from them. */
export function matchStock(
  parts: readonly PartRow[],
  stock: readonly AnyStockRow[],
  unit: Unit,
): { sheets: SheetRows[]; solid: SolidRows[] } {
  const groups: { parts: PartRow[]; stock: Set<StockRow> }[] = [];
  const choices = new Map<PartRow, StockRow[]>();
  const solid = new Map<SolidRow, PartRow[]>();
  for (const part of parts) {
    const choice = stockFor(part, stock, unit);
    const [first] = choice;
    if (isSolid(first!)) {
      solid.set(first, [...(solid.get(first) ?? []), part]);
      continue;
    }
    choices.set(part, choice as StockRow[]);
    join(groups, part, choice as StockRow[]);
  }
  return {
    sheets: groups
      .map((group) => ({ parts: inOrder(group.parts), stock: inOrder([...group.stock]) }))
      .sort((a, b) => a.stock[0]!.row - b.stock[0]!.row)
      .map((group) => ({
        stock: group.stock,
        parts: group.parts.map((part) => ({
          ...part,
          from: choices.get(part)!.map((row) => group.stock.indexOf(row)),
        })),
      })),
    solid: [...solid].map(([row, of]) => ({ stock: row, parts: of })).sort((a, b) => a.stock.row - b.stock.row),
  };
}

function join(groups: { parts: PartRow[]; stock: Set<StockRow> }[], part: PartRow, choice: readonly StockRow[]): void {
  const [first = { parts: [], stock: new Set<StockRow>() }, ...others] = groups.filter(({ stock }) =>
    choice.some((row) => stock.has(row)),
  );
  if (first.parts.length === 0) groups.push(first);
  first.parts.push(part);
  for (const row of choice) first.stock.add(row);
  for (const { parts, stock } of others) {
    for (const other of parts) first.parts.push(other);
    for (const row of stock) first.stock.add(row);
  }
  if (others.length > 0) groups.splice(0, groups.length, ...groups.filter((group) => !others.includes(group)));
}

const inOrder = <T extends { row: number }>(rows: readonly T[]): T[] => [...rows].sort((a, b) => a.row - b.row);

/**
 * The rows of stock that a part may be cut from: its material, and the thickness nearest to its own.
 * @throws Fault where there is none, or solid wood among several
 */
function stockFor(part: PartRow, stock: readonly AnyStockRow[], unit: Unit): StockRow[] | [SolidRow] {
  const like = stock.filter(
    ({ material }) => material === "" || part.material === "" || sameText(material, part.material),
  );
  const off = (row: AnyStockRow): number =>
    row.thickness && part.thickness ? Math.abs(toDouble(row.thickness) - toDouble(part.thickness)) : 0;
  const tolerance = (unit === "in" ? 1 / 32 : 0.8) + 1e-9;
  const nearest = Math.min(...like.map(off));
  const fitting = like.filter((row) => off(row) <= tolerance && off(row) <= nearest + 1e-9);
  if (fitting.length > 1 && fitting.some(isSolid)) {
    const [first, second] = fitting.map(({ row }) => row);
    throw new Fault("stock.severalMeasures", { name: part.name, first, second });
  }
  if (fitting.length > 0) return fitting as StockRow[] | [SolidRow];
  throw new Fault("sheets.noStockFor", {
    ...(part.planned ? { drawer: part.drawer } : { row: part.row }),
    part: part.name,
    material: part.material,
    thickness: part.thickness,
  });
}

const sameText = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();
