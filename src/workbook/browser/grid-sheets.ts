import { SheetsSelectionsService } from "@univerjs/sheets";
import { IEditorBridgeService } from "@univerjs/sheets-ui";
import type { WorkbookDefinition } from "../author/index";
import { HostFault, type NewSheets, type SelectedTable } from "../../taskpane/host/host";
import type { GridRanges } from "./grid-ranges";
import type { OpenInGrid } from "./session";
import type { Grid } from "./univer";

/** More cells than these no table has that a function of ours reads. */
const MOST = 20_000;

/** Sheets beside those that stand in the grid, for the pane. */
export class GridSheets implements NewSheets {
  /** @param put puts the file that it makes into the grid, in place of the one that is open */
  constructor(
    private readonly grid: Grid,
    private readonly open: () => OpenInGrid,
    private readonly ranges: GridRanges,
    private readonly put: (make: () => Promise<Uint8Array>) => Promise<void>,
  ) {}

  async taken(): Promise<{ sheets: string[]; names: string[] }> {
    const { book } = this.open();
    return { sheets: book.sheets.map(({ name }) => name), names: await book.names() };
  }

  async add(workbook: WorkbookDefinition): Promise<void> {
    const { book, calculation } = this.open();
    if (this.grid.univer.__getInjector().get(IEditorBridgeService).isVisible().visible) throw new HostFault("editing");
    try {
      await this.put(async () => {
        await calculation.settled();
        return book.addSheets(workbook);
      });
    } catch (error) {
      throw error instanceof Error ? new HostFault("refused", error.message) : error;
    }
    const [first] = workbook.sheets;
    if (first) await this.ranges.select(first.name, first.selected);
  }

  async selected(): Promise<SelectedTable | undefined> {
    const { book, unitId } = this.open();
    const sheet = this.grid.api.getActiveWorkbook()?.getActiveSheet();
    const range = this.grid.univer.__getInjector().get(SheetsSelectionsService).getCurrentLastSelection()?.range;
    if (!sheet || !range || this.grid.api.getActiveWorkbook()?.getId() !== unitId) return undefined;
    const id = sheet.getSheetId();
    const spills = [...book.results.spills.values()].filter((spill) => spill.sheet === id);
    // Of whole rows and columns, the ends may be left open.
    const [top, left] = [range.startRow || 0, range.startColumn || 0];
    const bottom = least(range.endRow, Math.max(sheet.getLastRow(), ...spills.map(({ area }) => area.bottom)));
    const right = least(range.endColumn, Math.max(sheet.getLastColumn(), ...spills.map(({ area }) => area.right)));
    if (bottom < top || right < left) return undefined;
    if ((bottom - top + 1) * (right - left + 1) > MOST) throw new HostFault("tooLarge");
    const name = book.sheet(id)!.name;
    return used(name, top, left, this.ranges.valuesIn(id, { top, left, bottom, right }));
  }
}

const least = (end: number, last: number): number => (Number.isNaN(end) ? last : Math.min(end, last));

/** Without empty rows and columns round it. */
function used(sheet: string, top: number, left: number, values: unknown[][]): SelectedTable | undefined {
  const holds = (value: unknown): boolean => value !== "";
  const rows = values.flatMap((row, i) => (row.some(holds) ? [i] : []));
  const columns = (values[0] ?? []).flatMap((_, i) => (values.some((row) => holds(row[i])) ? [i] : []));
  if (rows.length === 0) return undefined;
  const [first, last] = [rows[0]!, rows.at(-1)!];
  return {
    ...{ sheet, row: top + first, column: left + columns[0]! },
    values: values.slice(first, last + 1).map((row) => row.slice(columns[0], columns.at(-1)! + 1)),
  };
}
