import type { Stop } from "./conditions";

/**
 * The color of a number on a scale of two or three colors.
 * @param sorted all numbers that the scale lies over, the least first
 */
export function scaleColor(stops: readonly Stop[], sorted: readonly number[], value: number): string | undefined {
  const points = stops.map((stop) => pointOf(stop, sorted));
  if (points.length < 2 || points.some(Number.isNaN)) return undefined;
  const above = points.findIndex((point) => value <= point);
  if (above === 0) return stops[0]!.color;
  if (above < 0) return stops.at(-1)!.color;
  const [from, to] = [points[above - 1]!, points[above]!];
  return mixed(stops[above - 1]!.color, stops[above]!.color, (value - from) / (to - from));
}

/** The number that a color stands at; not a number where it hangs on a formula. */
function pointOf({ type, value }: Stop, sorted: readonly number[]): number {
  const [least, greatest] = [sorted[0] ?? Number.NaN, sorted.at(-1) ?? Number.NaN];
  if (type === "min") return least;
  if (type === "max") return greatest;
  if (value.trim() === "") return Number.NaN;
  if (type === "num") return Number(value);
  if (type === "percent") return least + ((greatest - least) * Number(value)) / 100;
  return type === "percentile" ? percentile(sorted, Number(value) / 100) : Number.NaN;
}

/** As the native function PERCENTILE.INC: between the two nearest by rank. */
function percentile(sorted: readonly number[], share: number): number {
  const rank = share * (sorted.length - 1);
  const below = sorted[Math.floor(rank)] ?? Number.NaN;
  const next = sorted[Math.ceil(rank)] ?? Number.NaN;
  return below + (next - below) * (rank - Math.floor(rank));
}

const mixed = (from: string, to: string, share: number): string =>
  [0, 2, 4]
    .map((at) => [from, to].map((color) => Number.parseInt(color.slice(at, at + 2), 16)) as [number, number])
    .map(([a, b]) => Math.round(a + (b - a) * share))
    .map((channel) => channel.toString(16).padStart(2, "0"))
    .join("");
