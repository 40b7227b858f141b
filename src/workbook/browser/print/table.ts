import type { Area } from "../../address";
import type { CellStyle, Side } from "../../look/index";
import { fallback } from "../grid-styles";
import { cellText } from "./cell-text";
import type { PrintedCell, PrintedRow, PrintedSheet } from "./printed-sheet";

/** Part of a sheet as a table; all of its sizes hang on the one scale `--s`. */
export function tableOf(
  { columns, merged }: PrintedSheet,
  rows: readonly { row: PrintedRow; at: number }[],
  from: number,
  to: number,
  isHead: (at: number) => boolean,
  date1904: boolean,
): HTMLTableElement {
  const table = document.createElement("table");
  const widths = columns.slice(from, to);
  table.style.width = scaled(widths.reduce((sum, width) => sum + width, 0));
  const group = document.createElement("colgroup");
  for (const width of widths) {
    const column = document.createElement("col");
    column.style.width = scaled(width);
    group.append(column);
  }
  const [head, body] = [document.createElement("thead"), document.createElement("tbody")];
  const places = rows.map(({ at }) => at);
  for (const { row, at } of rows) {
    const line = document.createElement("tr");
    line.style.height = scaled(row.height ?? 20);
    for (let column = from; column < to; column++) {
      const joined = merged.find((area) => within(area, at, column));
      const isFirst = !joined || (joined.top === at && Math.max(joined.left, from) === column);
      if (isFirst) line.append(cellOf(row, columns, column, joined, to, places, date1904));
    }
    (isHead(at) ? head : body).append(line);
  }
  table.append(group, ...(head.rows.length > 0 ? [head] : []), body);
  return table;
}

const within = ({ top, left, bottom, right }: Area, row: number, column: number): boolean =>
  row >= top && row <= bottom && column >= left && column <= right;

const scaled = (pixels: number): string => `calc(var(--s) * ${Math.round(pixels * 100) / 100}px)`;

function cellOf(
  { cells }: PrintedRow,
  columns: readonly number[],
  column: number,
  joined: Area | undefined,
  to: number,
  rows: readonly number[],
  date1904: boolean,
): HTMLTableCellElement {
  const element = document.createElement("td");
  const cell = cells[column]!;
  const text = cellText(cell, date1904);
  if (joined) {
    element.colSpan = Math.min(joined.right + 1, to) - column;
    element.rowSpan = rows.filter((row) => row >= joined.top && row <= joined.bottom).length;
  }
  dress(element, cell, joined ? borderOf(cells, cell, joined) : cell.style.borders);
  if (text === "") return element;
  const inside = document.createElement("span");
  inside.textContent = text;
  if (cell.style.wrap) inside.className = "wraps";
  else if (element.style.textAlign === "left") {
    const last = endOfRoom(cells, joined ? joined.right : column, to, date1904);
    // At the end of what is printed it wraps, for nobody could read on there.
    inside.className = last === to ? "wraps" : "cut";
    inside.style.width = scaled(columns.slice(column, last).reduce((sum, width) => sum + width, -PADDING));
  }
  element.append(inside);
  return element;
}

/** A joined cell's right edge is that of its last cell. */
const borderOf = (cells: readonly PrintedCell[], first: PrintedCell, { right }: Area): CellStyle["borders"] => {
  const last = cells[right]?.style.borders.right;
  return { ...first.style.borders, ...(last ? { right: last } : {}) };
};

function dress(element: HTMLElement, { value, style }: PrintedCell, borders: CellStyle["borders"]): void {
  const { font, fill, horizontal, vertical, indent } = style;
  const to = element.style;
  if (font.name) to.fontFamily = `"${font.name.replaceAll('"', "")}", ${fallback(font.name)}`;
  to.fontSize = scaled(((font.size ?? 11) * 4) / 3);
  if (font.bold) to.fontWeight = "bold";
  if (font.italic) to.fontStyle = "italic";
  const lines = [font.underline && "underline", font.strike && "line-through"].filter(Boolean).join(" ");
  if (lines) to.textDecoration = lines;
  if (font.color) to.color = `#${font.color}`;
  if (fill) to.backgroundColor = `#${fill}`;
  to.textAlign = ALIGNED[horizontal ?? ""] ?? usual(value);
  to.verticalAlign = { top: "top", center: "middle" }[vertical ?? ""] ?? "bottom";
  if (indent > 0) to[horizontal === "right" ? "paddingRight" : "paddingLeft"] = scaled(3 + indent * 9);
  for (const [side, { line, color }] of Object.entries(borders) as [Side, { line: string; color: string }][]) {
    const { width, kind } = LINES[line] ?? { width: 1, kind: "solid" };
    to.setProperty(`border-${side}`, `${width}px ${kind} #${color}`);
  }
}

/** A text that is too long goes on over what is empty beside it. */
function endOfRoom(cells: readonly PrintedCell[], column: number, to: number, date1904: boolean): number {
  let end = column + 1;
  while (end < to && cellText(cells[end]!, date1904) === "") end++;
  return end;
}

/** On both sides of a cell together, in pixels. */
const PADDING = 6;

const ALIGNED: Record<string, string> = {
  left: "left",
  center: "center",
  centerContinuous: "center",
  right: "right",
  justify: "justify",
};

/** Numbers stand to the right, texts to the left, truths and errors in the middle. */
const usual = (value: PrintedCell["value"]): string =>
  typeof value === "number" ? "right" : typeof value === "string" || value === null ? "left" : "center";

const LINES: Record<string, { width: number; kind: string } | undefined> = {
  hair: { width: 0.5, kind: "solid" },
  dotted: { width: 1, kind: "dotted" },
  dashed: { width: 1, kind: "dashed" },
  double: { width: 3, kind: "double" },
  medium: { width: 2, kind: "solid" },
  mediumDashed: { width: 2, kind: "dashed" },
  thick: { width: 3, kind: "solid" },
};
