import { parseArea, type Area } from "../address";
import { decodeEscapes, readXml } from "./xml";

export interface TablePart {
  name: string;
  area: Area;
  headerRows: number;
  totalRows: number;
  columns: string[];
  /** Its filter's range, where it has one. */
  filter?: Area;
}

/** Reads a table part: the name that formulas use, where it stands, and its columns. */
export function readTable(text: string, part: string): TablePart | undefined {
  let table: TablePart | undefined;
  readXml(text, part, {
    open({ name, attributes }) {
      if (name === "table") {
        const area = parseArea(attributes.ref ?? "");
        if (!area) return;
        table = {
          name: decodeEscapes(attributes.displayName ?? attributes.name ?? ""),
          area,
          headerRows: Number(attributes.headerRowCount ?? 1),
          totalRows: Number(attributes.totalsRowCount ?? 0),
          columns: [],
        };
      }
      if (name === "tableColumn") table?.columns.push(decodeEscapes(attributes.name ?? ""));
      if (name === "autoFilter" && table) table.filter = parseArea(attributes.ref ?? "");
    },
  });
  return table;
}
