/** The grid's bounds, as the spreadsheet program has them. */
export const MAX_ROWS = 1_048_576;
export const MAX_COLUMNS = 16_384;

/** A rectangle of cells, all numbers counted from 0, both ends included. */
export interface Area {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/** `B3` → row 2, column 1; undefined where the text is no cell address inside the grid. */
export function parseCell(text: string): { row: number; column: number } | undefined {
  const match = /^\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})$/.exec(text);
  if (!match) return undefined;
  const row = Number(match[2]) - 1;
  const column = columnNumber(match[1]!);
  return row < MAX_ROWS && column < MAX_COLUMNS ? { row, column } : undefined;
}

/** `A1:C3` or `B2` → its rectangle. */
export function parseArea(text: string): Area | undefined {
  const [first, second = first, ...rest] = text.split(":");
  const a = parseCell(first ?? "");
  const b = parseCell(second ?? "");
  if (!a || !b || rest.length > 0) return undefined;
  return {
    top: Math.min(a.row, b.row),
    left: Math.min(a.column, b.column),
    bottom: Math.max(a.row, b.row),
    right: Math.max(a.column, b.column),
  };
}

/** `A` → 0, `Z` → 25, `AA` → 26. */
export function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}

/** 0 → `A`, 26 → `AA`. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

export function cellName(row: number, column: number): string {
  return columnLetters(column) + (row + 1);
}

/** A rectangle as a file's `ref` writes it: a single cell without the colon. */
export function areaName(area: Area): string {
  const first = cellName(area.top, area.left);
  const last = cellName(area.bottom, area.right);
  return first === last ? first : `${first}:${last}`;
}

export function contains(area: Area, row: number, column: number): boolean {
  return row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
}

export function overlaps(a: Area, b: Area): boolean {
  return a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
}

export function sameArea(a: Area, b: Area): boolean {
  return a.top === b.top && a.left === b.left && a.bottom === b.bottom && a.right === b.right;
}

/** A row or column beyond the grid's edge, as it comes in again on the other side. */
export const wrapped = (place: number, size: number): number => ((place % size) + size) % size;
