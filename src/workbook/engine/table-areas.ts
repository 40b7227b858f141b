import type { NodeOf, TableItem } from "../formula/nodes";
import type { Table } from "./engine";
import type { CellSource } from "./source";
import { fail, Reference, type CellError, type Scope } from "./values";

type TableNode = NodeOf<"table">;

/** `Openings[Width]`, `Openings[[#This Row],[Width]]`, `Openings[#Totals]` … as the range that it stands for. */
export function tableReference(cells: CellSource, node: TableNode, scope: Scope): Reference | CellError {
  const table = cells.table(node.table);
  if (!table) return fail("#NAME?");
  const columns = columnsOf(table, node);
  const rows = rowsOf(table, node.items, scope);
  if (!columns) return fail("#REF!");
  return rows ? Reference.single(table.sheet, { ...rows, ...columns }) : fail("#VALUE!");
}

function columnsOf(table: Table, node: TableNode): { left: number; right: number } | undefined {
  if (node.first === undefined) return { left: table.area.left, right: table.area.right };
  const first = columnAt(table, node.first);
  const last = columnAt(table, node.last ?? node.first);
  if (first < 0 || last < 0) return undefined;
  return { left: table.area.left + Math.min(first, last), right: table.area.left + Math.max(first, last) };
}

function columnAt(table: Table, name: string): number {
  const wanted = name.toLowerCase();
  return table.columns.findIndex((column) => column.toLowerCase() === wanted);
}

function rowsOf(table: Table, items: TableItem[], scope: Scope): { top: number; bottom: number } | undefined {
  const parts = {
    all: { top: table.area.top, bottom: table.area.bottom },
    headers: { top: table.area.top, bottom: table.area.top + table.headerRows - 1 },
    data: { top: table.area.top + table.headerRows, bottom: table.area.bottom - table.totalRows },
    totals: { top: table.area.bottom - table.totalRows + 1, bottom: table.area.bottom },
    row: { top: scope.row, bottom: scope.row },
  };
  const wanted = (items.length > 0 ? items : (["data"] as TableItem[])).map((item) => parts[item]);
  const top = Math.min(...wanted.map((part) => part.top));
  const bottom = Math.max(...wanted.map((part) => part.bottom));
  const outside = items.includes("row") && (scope.row < parts.data.top || scope.row > parts.data.bottom);
  return top > bottom || outside ? undefined : { top, bottom };
}
