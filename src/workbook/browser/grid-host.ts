import { ICommandService, type ICellData } from "@univerjs/core";
import { SetRangeValuesCommand, SheetsSelectionsService } from "@univerjs/sheets";
import { IEditorBridgeService } from "@univerjs/sheets-ui";
import { cellName } from "../address";
import { isFormula } from "../edit/content";
import { HostFault, type Host, type Selection } from "../../taskpane/host/host";
import { cellData, shownValue } from "./cell-data";
import { GridRanges } from "./grid-ranges";
import { GridSheets } from "./grid-sheets";
import { gridContent } from "./grid-content";
import type { OpenInGrid } from "./session";
import type { Grid } from "./univer";
import { place, valueAt } from "./worker/results";

/** The grid as the pane knows a spreadsheet: which cell is selected, what it says, and a formula to put there. */
export class GridHost implements Host {
  readonly name = "this page";
  readonly can = { insert: true, tellSelection: true, showNumberFormats: true };
  readonly ranges: GridRanges;
  readonly sheets: GridSheets;
  private readonly listeners = new Set<(selection: Selection) => void>();

  /**
   * @param addSheet adds a sheet and fills it
   * @param put puts the file that it makes into the grid, in place of the one that is open
   */
  constructor(
    private readonly grid: Grid,
    private readonly open: () => OpenInGrid,
    private readonly begin: () => void,
    private readonly freeze: () => void,
    readonly addSheet: NonNullable<Host["addSheet"]>,
    put: (make: () => Promise<Uint8Array>) => Promise<void>,
  ) {
    this.ranges = new GridRanges(grid, open, () => this.cell());
    this.sheets = new GridSheets(grid, open, this.ranges, put);
    this.injector.get(SheetsSelectionsService).selectionChanged$.subscribe(() => this.tell());
  }

  async selection(): Promise<Selection> {
    return this.read();
  }

  insertFormula(formula: string): Promise<void> {
    return this.write([{ f: formula, v: null, p: null }]);
  }

  async insertCells(texts: readonly string[]): Promise<{ address: string; wasFree: boolean }> {
    const { sheet, row, column } = this.cell();
    const cells = texts.map((_, i) => this.readAt(sheet, row, column + i));
    const last = texts.length > 1 ? `:${cellName(row, column + texts.length - 1)}` : "";
    const wasFree = cells.every(({ formula, value }) => formula === "" && value === "");
    if (wasFree) await this.write(texts.map((text) => ({ ...cellData(text), f: null, p: null })));
    return { address: `${cells[0]!.address}${last}`, wasFree };
  }

  /** Into the selected cell and those to its right. */
  private async write(cells: readonly ICellData[]): Promise<void> {
    if (this.injector.get(IEditorBridgeService).isVisible().visible) throw new HostFault("editing");
    const { sheet, row, column } = this.cell();
    const range = { startRow: row, endRow: row, startColumn: column, endColumn: column + cells.length - 1 };
    const done = await this.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
      unitId: this.open().unitId,
      subUnitId: sheet,
      range,
      value: [cells],
    });
    if (!done) throw new HostFault("refused", "the cell could not be written.");
    await this.open().calculation.settled();
  }

  async beginJob(): Promise<void> {
    this.begin();
  }

  async beginCopy(): Promise<void> {
    this.freeze();
  }

  async onSelectionChanged(listener: (selection: Selection) => void): Promise<() => Promise<void>> {
    this.listeners.add(listener);
    return async () => void this.listeners.delete(listener);
  }

  /** Tells all listeners; called too when the selected cell's result has changed. */
  tell(): void {
    // While one workbook makes way for another, the grid already shows what is not open yet.
    if (this.grid.api.getActiveWorkbook()?.getId() !== this.open().unitId) return;
    const selection = this.read();
    for (const listener of this.listeners) listener(selection);
  }

  /** The selected cell, and what it says. */
  read(): Selection {
    const { sheet, row, column } = this.cell();
    return this.readAt(sheet, row, column);
  }

  readAt(sheet: string, row: number, column: number): Selection {
    const { book, unitId } = this.open();
    const content = gridContent(this.grid, unitId, sheet, row, column);
    const value = isFormula(content) || content === null ? valueAt(book.results, sheet, row, column) : content;
    const name = this.grid.api.getUniverSheet(unitId)?.getSheetBySheetId(sheet)?.getSheetName() ?? "";
    const message = book.results.messages.get(place(sheet, row, column));
    return {
      address: `${/^\w+$/.test(name) ? name : `'${name.replaceAll("'", "''")}'`}!${cellName(row, column)}`,
      formula: isFormula(content) ? content.formula : String(content ?? ""),
      value: value === null ? "" : shownValue(value),
      ...(message === undefined ? {} : { message }),
    };
  }

  private cell(): { sheet: string; row: number; column: number } {
    const sheet = this.grid.api.getActiveWorkbook()?.getActiveSheet()?.getSheetId() ?? "sheet-0";
    const primary = this.injector.get(SheetsSelectionsService).getCurrentLastSelection()?.primary;
    return { sheet, row: primary?.actualRow ?? 0, column: primary?.actualColumn ?? 0 };
  }

  private get injector() {
    return this.grid.univer.__getInjector();
  }
}
