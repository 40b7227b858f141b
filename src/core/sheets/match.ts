import { Fault, ZERO, type Rational, type Unit } from "../length";
import type { Part, Stock } from "./problem";
import { isQuarter, nearest, planing, yielding } from "./thickness";

/** What may be cut from what: a material, "" where none is told, and a thickness. */
export interface OfMaterial {
  name: string;
  /** Its place in its list: parts and stock keep their order. */
  place: number;
  material: string;
  thickness?: Rational;
}

export interface PartToCut extends Part, OfMaterial {
  /** It was planned, and is known by its drawer; else by its place. */
  planned?: true;
  /** Its name is a label that tells its drawer. */
  labeled?: true;
}

export interface SheetStock extends Stock, OfMaterial {}

/** Parts and sheets that have to do with each other: of one material and thickness, as a rule. */
export interface SheetGroup {
  parts: readonly PartToCut[];
  stock: readonly SheetStock[];
}

/** Parts of one kind of stock that is no sheet, on which nothing is laid out. */
export interface SolidGroup<W> {
  parts: readonly PartToCut[];
  stock: W;
}

/** Finds each part its stock. Rows that any part may choose between go together, with all parts cut from them. */
export function matchStock<W extends OfMaterial>(
  parts: readonly PartToCut[],
  stock: readonly (SheetStock | W)[],
  isSolid: (row: SheetStock | W) => row is W,
  unit: Unit,
): { sheets: SheetGroup[]; solid: SolidGroup<W>[] } {
  const groups: Group[] = [];
  const choices = new Map<PartToCut, readonly SheetStock[]>();
  const solid = new Map<W, PartToCut[]>();
  for (const part of parts) {
    const fitting = stockFor(part, stock, isSolid, unit);
    const [first, second] = fitting;
    const wood = fitting.find(isSolid);
    if (wood && second) {
      throw new Fault("stock.severalMeasures", { name: part.name, first: first!.place, second: second.place });
    }
    if (wood) solid.set(wood, [...(solid.get(wood) ?? []), part]);
    else {
      const choice = fitting as readonly SheetStock[];
      choices.set(part, choice);
      join(groups, part, choice);
    }
  }
  return {
    sheets: groups
      .map((group) => ({ parts: inOrder(group.parts), stock: inOrder([...group.stock]) }))
      .sort((a, b) => a.stock[0]!.place - b.stock[0]!.place)
      .map((group) => ({
        stock: group.stock,
        parts: group.parts.map((part) => ({
          ...part,
          from: choices.get(part)!.map((row) => group.stock.indexOf(row)),
        })),
      })),
    solid: [...solid].map(([row, of]) => ({ stock: row, parts: of })).sort((a, b) => a.stock.place - b.stock.place),
  };
}

interface Group {
  parts: PartToCut[];
  stock: Set<SheetStock>;
}

function join(groups: Group[], part: PartToCut, choice: readonly SheetStock[]): void {
  const [first = { parts: [], stock: new Set<SheetStock>() }, ...others] = groups.filter(({ stock }) =>
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

const inOrder = <T extends OfMaterial>(rows: readonly T[]): T[] => [...rows].sort((a, b) => a.place - b.place);

/**
 * The rows of stock that a part may be cut from: its material, and the thickness nearest to its own. Rough boards are
 * planed to it: of those the thinnest that leaves something to plane.
 * @throws Fault where there is none
 */
function stockFor<S extends OfMaterial>(
  part: PartToCut,
  stock: readonly S[],
  isSolid: (row: S) => boolean,
  unit: Unit,
): S[] {
  const like = stock.filter(
    ({ material }) => material === "" || part.material === "" || sameText(material, part.material),
  );
  const solid = like.filter(isSolid);
  const rough = solid.filter(({ thickness }) => isQuarter(thickness, unit));
  const ways = [
    () =>
      nearest(
        like.filter((row) => !rough.includes(row)),
        part.thickness,
        unit,
      ),
    () => yielding(solid, part.thickness, planing(unit), unit),
    () => nearest(rough, part.thickness, unit),
    () => yielding(solid, part.thickness, ZERO, unit),
  ];
  for (const way of ways) {
    const fitting = way();
    if (fitting.length > 0) return fitting;
  }
  throw new Fault("sheets.noStockFor", {
    ...(part.planned ? { drawer: part.drawer } : { row: part.place }),
    part: part.name,
    material: part.material,
    thickness: part.thickness,
  });
}

/** What stock is made of; where it does not tell, whatever its parts are of. */
export const materialOf = (stock: Pick<OfMaterial, "material">, parts: readonly OfMaterial[]): string =>
  stock.material || [...new Set(parts.map(({ material }) => material).filter(Boolean))].join(", ");

const sameText = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();
