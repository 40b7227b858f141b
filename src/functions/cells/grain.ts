import type { Rational, Unit } from "../../core/length";
import type { CellResult } from "./cell-result";
import { lengthResult } from "./result";

/** What a piece that is to match others carries, for the functions of sheets. */
interface Matched {
  grainGroup?: string;
  grainGap?: Rational;
  grainRow?: "stacked";
  grainLine?: number;
  lineGap?: Rational;
}

/** The columns that tell which pieces match, and how: only those of which something is told. */
export function grainColumns(
  pieces: readonly Matched[],
  unit: Unit,
): { headings: string[]; cells: (of: Matched) => CellResult[] } {
  const columns = COLUMNS.filter(([key]) => pieces.some((piece) => piece[key] !== undefined));
  return {
    headings: columns.map(([, heading]) => heading),
    cells: (of) =>
      columns.map(([key]) => {
        const { [key]: value = "" } = of;
        return typeof value === "object" ? lengthResult(value, unit) : value;
      }),
  };
}

const COLUMNS: readonly [keyof Matched, heading: string][] = [
  ["grainGroup", "Grain group"],
  ["grainGap", "Grain gap"],
  ["grainRow", "Grain row"],
  ["grainLine", "Grain line"],
  ["lineGap", "Line gap"],
];
