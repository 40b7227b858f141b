import { beside } from "../../workbook/new-job/index";
import type { CellDefinition, WorkbookDefinition } from "../../workbook/author/definition";
import type { NewSheets, PlainCell } from "./host";

/** Adds a sheet of plain cells to those of the spreadsheet program, and tells what it is called. */
export const addPlainSheet =
  (sheets: NewSheets) =>
  async (name: string, rows: readonly (readonly PlainCell[])[]): Promise<string> => {
    const workbook = beside(plainWorkbook(name, rows), await sheets.taken());
    await sheets.add(workbook);
    return workbook.sheets[0]!.name;
  };

function plainWorkbook(name: string, rows: readonly (readonly PlainCell[])[]): WorkbookDefinition {
  const styles: WorkbookDefinition["styles"] = { plain: {} };
  const cellOf = (cell: PlainCell): CellDefinition | null => {
    if (cell === null) return null;
    if (typeof cell === "number") return { style: "plain", content: cell };
    // A text that begins like a formula is kept one by a space before it.
    if (typeof cell === "string") return { style: "plain", content: cell.startsWith("=") ? ` ${cell}` : cell };
    if ("formula" in cell) return { style: "plain", content: cell.formula };
    styles[cell.format] = { format: cell.format };
    return { style: cell.format, content: cell.value };
  };
  const sheet = {
    name,
    widths: [],
    merged: [],
    selected: "A1",
    rows: rows.map((cells) => ({ cells: cells.map(cellOf) })),
  };
  return { sheets: [sheet], styles };
}
