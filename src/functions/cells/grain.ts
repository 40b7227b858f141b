import type { Rational, Unit } from "../../core/length";
import type { CellResult } from "./cell-result";
import { lengthResult } from "./result";

/** What a piece that is to match others carries, for the functions of sheets. */
interface Matched {
  grainGroup?: string;
  grainGap?: Rational;
  grainRow?: "stacked";
}

/** The columns that tell which pieces match, and how: only those of which something is told. */
export function grainColumns(
  pieces: readonly Matched[],
  unit: Unit,
): { headings: string[]; cells: (of: Matched) => CellResult[] } {
  const columns = COLUMNS.filter(({ key }) => pieces.some((piece) => piece[key] !== undefined));
  return {
    headings: columns.map(({ heading }) => heading),
    cells: (of) => columns.map(({ cell }) => cell(of, unit)),
  };
}

const COLUMNS: readonly { key: keyof Matched; heading: string; cell: (of: Matched, unit: Unit) => CellResult }[] = [
  { key: "grainGroup", heading: "Grain group", cell: ({ grainGroup = "" }) => grainGroup },
  {
    key: "grainGap",
    heading: "Grain gap",
    cell: ({ grainGap }, unit) => (grainGap ? lengthResult(grainGap, unit) : ""),
  },
  { key: "grainRow", heading: "Grain row", cell: ({ grainRow = "" }) => grainRow },
];
