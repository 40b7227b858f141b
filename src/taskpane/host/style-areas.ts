import { cellName } from "../../workbook/address";
import type { SheetDefinition } from "../../workbook/author/definition";

/** A rectangle of cells of one style, from 0, its ends included. */
export interface Area {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/** The cells of every style, as few rectangles as neighbors allow. */
export const styleAreas = ({ rows }: SheetDefinition): Map<string, Area[]> =>
  equalAreas(rows.map(({ cells }) => cells.map((cell) => cell?.style)));

/** The cells of which the same is told, as few rectangles as neighbors allow; rows and cells may be left out. */
export function equalAreas(rows: readonly (readonly (string | undefined)[])[]): Map<string, Area[]> {
  const areas = new Map<string, Area[]>();
  let above: { style: string; area: Area }[] = [];
  rows.forEach((cells, row) => {
    const here: typeof above = [];
    cells.forEach((style, column) => {
      const last = here[here.length - 1];
      if (style === undefined) return;
      if (last && last.style === style && last.area.right === column - 1) last.area.right = column;
      else here.push({ style, area: { top: row, left: column, bottom: row, right: column } });
    });
    above = here.map((one) => {
      const same = above.find(
        ({ style, area }) =>
          style === one.style &&
          area.bottom === row - 1 &&
          area.left === one.area.left &&
          area.right === one.area.right,
      );
      if (same) {
        same.area.bottom = row;
        return same;
      }
      areas.set(one.style, [...(areas.get(one.style) ?? []), one.area]);
      return one;
    });
  });
  return areas;
}

export const areaName = ({ top, left, bottom, right }: Area): string =>
  top === bottom && left === right ? cellName(top, left) : `${cellName(top, left)}:${cellName(bottom, right)}`;
