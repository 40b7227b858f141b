/**
 * Dual feasible functions of one side of a piece. Each is superadditive and does not fall: pieces that fit side by side
 * in any length x have values that together stay within the function's value of x. So the products of a function of
 * one side and a function of the other stay, on every sheet, within the product of the sheet's own values.
 *
 * Sources, cited from memory: Martello and Vigo (1998) for the first family, Fekete and Schepers (2001) for the second, Carlier, Clautiaux
 * and Moukrim (2007) for the third. Values are whole numbers, and a family's functions are numbered by its parameter.
 */
export interface SideFunction {
  (x: number): number;
}

/**
 * @param whole the longest sheet's side; no other side is longer
 * @param sizes the sides of pieces, at whose values the functions change
 * @param most how many functions of each family
 */
export function sideFunctions(whole: number, sizes: readonly number[], most: number): SideFunction[] {
  const thresholds = thin(
    [...new Set(sizes.flatMap((x) => [x, whole - x + 1]))].filter((x) => x > 0 && 2 * x <= whole).sort((a, b) => a - b),
    most,
  );
  const steps = thin(
    [...new Set(sizes.flatMap((x) => [x, Math.floor(x / 2), Math.floor(x / 3)]))]
      .filter((x) => x > 0 && 2 * x <= whole)
      .sort((a, b) => a - b),
    most,
  );
  return [
    (x) => x,
    ...thresholds.map((e) => cutOff(whole, e)),
    ...Array.from({ length: Math.min(most, 12) }, (_, k) => steady(whole, k + 1)),
    ...steps.map((e) => staircase(whole, e)),
  ];
}

/** Pieces below the threshold count nothing, and those that leave less than it count all. */
const cutOff =
  (whole: number, e: number): SideFunction =>
  (x) =>
    x > whole - e ? whole : x < e ? 0 : x;

/** A multiple of 1/(k + 1) of the whole keeps its value; others go down to a multiple of 1/k. */
const steady =
  (whole: number, k: number): SideFunction =>
  (x) =>
    (x * (k + 1)) % whole === 0 ? x * k : whole * Math.floor(((k + 1) * x) / whole);

/** Counts pieces of size e, and takes the longer half for what it leaves. */
function staircase(whole: number, e: number): SideFunction {
  const all = Math.floor(whole / e);
  return (x) =>
    2 * x > whole ? 2 * (all - Math.floor((whole - x) / e)) : 2 * x === whole ? all : 2 * Math.floor(x / e);
}

function thin(values: readonly number[], most: number): number[] {
  if (values.length <= most) return [...values];
  return Array.from({ length: most }, (_, i) => values[Math.floor((i * values.length) / most)]!);
}
