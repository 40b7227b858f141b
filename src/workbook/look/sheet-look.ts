import { parseCell } from "../address";
import { readXml } from "../xlsx/xml";
import { isTrue } from "../xlsx/workbook-part";

/** Sizes in pixels, rows and columns counted from 0. */
export interface SheetLook {
  columns: Map<number, { width: number | undefined; hidden: boolean; style: number }>;
  rows: Map<number, { height: number | undefined; hidden: boolean; style: number | undefined }>;
  cells: Map<string, number>;
  defaultWidth: number;
  defaultHeight: number;
  gridlines: boolean;
  frozen: { rows: number; columns: number };
  /** The cell that was selected when the file was written. */
  selected: { row: number; column: number };
}

/** A file may give one width to all columns to the right; so many are looked at. */
const MOST_COLUMNS = 256;

export function readSheetLook(text: string, part: string): SheetLook {
  const look: SheetLook = {
    columns: new Map(),
    rows: new Map(),
    cells: new Map(),
    defaultWidth: 64,
    defaultHeight: 20,
    gridlines: true,
    frozen: { rows: 0, columns: 0 },
    selected: { row: 0, column: 0 },
  };
  let row = -1;
  readXml(text, part, {
    open({ name, attributes }) {
      if (name === "sheetView") look.gridlines = attributes.showGridLines !== "0";
      else if (name === "selection") look.selected = parseCell(attributes.activeCell ?? "A1") ?? look.selected;
      else if (name === "pane" && attributes.state?.startsWith("frozen")) {
        look.frozen = { rows: Number(attributes.ySplit ?? 0), columns: Number(attributes.xSplit ?? 0) };
      } else if (name === "sheetFormatPr") {
        if (attributes.defaultColWidth) look.defaultWidth = columnPixels(Number(attributes.defaultColWidth));
        if (attributes.defaultRowHeight) look.defaultHeight = rowPixels(Number(attributes.defaultRowHeight));
      } else if (name === "col") addColumns(look, attributes);
      else if (name === "row") {
        row = attributes.r === undefined ? row + 1 : Number(attributes.r) - 1;
        addRow(look, row, attributes);
      } else if (name === "c" && attributes.s && attributes.r) {
        const place = parseCell(attributes.r);
        if (place) look.cells.set(`${place.row} ${place.column}`, Number(attributes.s));
      }
    },
  });
  return look;
}

function addColumns(look: SheetLook, attributes: Record<string, string>): void {
  const width = attributes.width === undefined ? undefined : columnPixels(Number(attributes.width));
  const last = Math.min(Number(attributes.max), MOST_COLUMNS);
  for (let column = Number(attributes.min) - 1; column < last; column++) {
    look.columns.set(column, { width, hidden: isTrue(attributes.hidden), style: Number(attributes.style ?? 0) });
  }
}

function addRow(look: SheetLook, row: number, attributes: Record<string, string>): void {
  const height = attributes.ht === undefined ? undefined : rowPixels(Number(attributes.ht));
  const style = isTrue(attributes.customFormat) ? Number(attributes.s ?? 0) : undefined;
  look.rows.set(row, { height, hidden: isTrue(attributes.hidden), style });
}

/** A width counts characters of the usual font, 7 pixels each, and 5 pixels of padding are in it. */
const columnPixels = (characters: number): number => Math.round(characters * 7 + 5);
const rowPixels = (points: number): number => Math.round((points * 4) / 3);
