import type { Rational } from "../../core/length";
import { materialOf, placements } from "../../core/sheets";
import type { LaidOutGroup } from "./sheet-job";

/** A piece where it lies, as LAYOUT tells it. */
export interface LayoutRow {
  /** Numbered through all groups. */
  sheet: number;
  material: string;
  thickness?: Rational | undefined;
  part: string;
  drawer: string;
  fromLeft: Rational;
  fromBottom: Rational;
  /** Along the sheet's length. */
  length: Rational;
  width: Rational;
  turned: boolean;
}

export const LAYOUT_HEADINGS = [
  "Sheet",
  "Material",
  "Thickness",
  "Part",
  "Drawer",
  "From left",
  "From bottom",
  "Length",
  "Width",
  "Turned",
] as const;

/** Every piece of all groups, sheet by sheet. */
export function layoutRows(groups: readonly LaidOutGroup[]): LayoutRow[] {
  let before = 0;
  return groups.flatMap(({ parts, stock, solution }) => {
    const first = before;
    before += solution.sheets.length;
    return placements(solution).map(({ sheet, stock: row, part, ...place }): LayoutRow => {
      const own = parts[part]!;
      return {
        sheet: first + sheet,
        material: materialOf(stock[row]!, [own]),
        thickness: stock[row]!.thickness ?? own.thickness,
        part: own.name,
        drawer: own.drawer ?? "",
        ...place,
      };
    });
  });
}
