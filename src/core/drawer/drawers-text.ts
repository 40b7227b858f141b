import {
  Fault,
  isPositive,
  isWhole,
  orElse,
  parseLength,
  ratio,
  terms,
  withoutInvisible,
  type Mark,
  type Rational,
  type Unit,
} from "../length";
import { MOST_FRONTS, type DrawerAsked } from "./fronts";

/** A cell of a drawers list: a text, or a number already read. */
export type DrawersItem = string | Rational;

/**
 * Reads how a face is divided. A lone whole number is a count of equal fronts; else each item is a fixed length
 * (`5 1/2`, `140 mm`) or parts of what is left (`1 part`, `1.5 parts`).
 * @param plain the mark that lengths without one are taken to have
 * @param of what is divided from side to side in the same way
 * @throws Fault `drawers.none`, `drawers.count`, `drawers.tooMany`, `drawers.unreadable`, `drawers.notPositive`
 * @example readDrawers(["5 1/2; 1 part; 2 parts"], "in")
 */
export function readDrawers(
  cells: readonly DrawersItem[],
  unit: Unit,
  plain: Mark = unit,
  of: "front" | "column" = "front",
): DrawerAsked[] {
  const items = cells.flatMap<DrawersItem>((cell) => (typeof cell === "string" ? splitList(cell) : [cell]));
  if (items.length === 0) throw new Fault("drawers.none", {});
  if (items.length === 1) {
    const count = wholeNumber(items[0]!);
    if (count !== undefined) return equalFronts(count, of);
  }
  if (items.length > MOST_FRONTS) throw new Fault("drawers.tooMany", { count: items.length, most: MOST_FRONTS, of });
  return items.map((item, i) => readItem(item, i + 1, unit, plain));
}

/** The items of a list in one text, separated by semicolons or line breaks; empty ones do not count. */
export const splitList = (text: string): string[] =>
  withoutInvisible(text)
    .split(/[;\r\n]/)
    .map((item) => item.trim())
    .filter((item) => item !== "");

function wholeNumber(item: DrawersItem): bigint | undefined {
  if (typeof item === "string") return /^-?\d{1,15}$/.test(item) ? BigInt(item) : undefined;
  return isWhole(item) ? terms(item).numerator : undefined;
}

function equalFronts(count: bigint, of: string): DrawerAsked[] {
  if (count < 1n || count > BigInt(MOST_FRONTS)) throw new Fault("drawers.count", { count, most: MOST_FRONTS, of });
  return Array.from({ length: Number(count) }, () => ({ parts: ratio(1) }));
}

function readItem(item: DrawersItem, place: number, unit: Unit, plain: Mark): DrawerAsked {
  const asked = typeof item === "string" ? readText(item, place, unit, plain) : { fixed: item };
  const size = "fixed" in asked ? asked.fixed : asked.parts;
  if (!isPositive(size)) throw new Fault("drawers.notPositive", { item, place });
  return asked;
}

function readText(text: string, place: number, unit: Unit, plain: Mark): DrawerAsked {
  const parts = /^(.*\S)\s*parts?$/i.exec(text)?.[1];
  const unreadable = (): never => {
    throw new Fault("drawers.unreadable", { text, place });
  };
  if (parts === undefined) return orElse(() => ({ fixed: parseLength(text, unit, plain) }), unreadable);
  // A number of parts has no unit: 2 in parts is no share of anything.
  return /["'a-z]/i.test(parts) ? unreadable() : orElse(() => ({ parts: parseLength(parts, unit) }), unreadable);
}
