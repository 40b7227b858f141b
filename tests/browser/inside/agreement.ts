import { FormulaDataModel } from "@univerjs/engine-formula";
import {
  IUniverInstanceService,
  UniverInstanceType,
  type ICellData,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { cellName } from "../../../src/workbook/address";
import { EditedWorkbook, isFormula } from "../../../src/workbook/edit/index";
import { contentOfGrid, shownValue } from "../../../src/workbook/browser/cell-data";
import { gridContent } from "../../../src/workbook/browser/grid-content";
import type { startPage } from "../../../src/workbook/browser/page";
import { valueAt } from "../../../src/workbook/browser/worker/results";
import { said } from "../../workbook/support/the-law";

export type Started = Awaited<ReturnType<typeof startPage>>;

/**
 * Compares, once all that was done is worked out, what stands in the grid with what the engine says, and both with what
 * the saved file says when it is opened.
 * @param withFile false where only grid and engine are compared, which takes less time
 */
export async function disagreement(started: Started, withFile = true): Promise<string | undefined> {
  const { calculation, book } = started.work.opened;
  await calculation.settled();
  const inGrid = saidByGrid(started);
  const byEngine = saidByEngine(started, inGrid);
  const faults = different("in the grid", inGrid, "by the engine", byEngine);
  if (withFile) {
    const inFile = said(new EditedWorkbook(await book.save()), false);
    faults.push(...different("in the grid", inGrid, "in the file", inFile));
    faults.push(...different("by the engine", byEngine, "in the file", inFile));
  }
  return faults.length === 0 ? undefined : faults.slice(0, 5).join("; ");
}

function different(here: string, a: Map<string, string>, there: string, b: Map<string, string>): string[] {
  return [...new Set([...a.keys(), ...b.keys()])].flatMap((key) => {
    const [one, other] = [alike(a.get(key)), alike(b.get(key))];
    return one === other ? [] : [`${key}: ${here} ${one ?? "nothing"}, ${there} ${other ?? "nothing"}`];
  });
}

export function openWorkbook({ grid, work }: Started): Workbook {
  const instances = grid.univer.__getInjector().get(IUniverInstanceService);
  return instances.getUnit<Workbook>(work.opened.unitId, UniverInstanceType.UNIVER_SHEET)!;
}

function saidByGrid(started: Started): Map<string, string> {
  const { grid, work } = started;
  const { unitId } = work.opened;
  const spilled = grid.univer.__getInjector().get(FormulaDataModel).getArrayFormulaCellData()[unitId] ?? {};
  const all = new Map<string, string>();
  const sheets = openWorkbook(started).getSheets();
  all.set("sheets", sheets.map((sheet) => sheet.getName()).join("/"));
  for (const sheet of sheets) {
    const at = (row: number, column: number) => `${sheet.getName()} ${cellName(row, column)}`;
    sheet.getCellMatrix().forValue((row, column, cell) => {
      const content = gridContent(grid, unitId, sheet.getSheetId(), row, column);
      if (isFormula(content)) {
        all.set(at(row, column), content.formula);
        all.set(`${at(row, column)} shows`, JSON.stringify(contentOfGrid(cell as ICellData, undefined)));
      } else if (content !== null) all.set(`${at(row, column)} shows`, JSON.stringify(content));
    });
    for (const [row, line] of Object.entries(spilled[sheet.getSheetId()] ?? {}))
      for (const [column, cell] of Object.entries(line ?? {}))
        all.set(
          `${at(Number(row), Number(column))} shows`,
          JSON.stringify(contentOfGrid(cell as ICellData, undefined)),
        );
  }
  return all;
}

function saidByEngine(started: Started, inGrid: Map<string, string>): Map<string, string> {
  const { grid, work } = started;
  const { book, unitId } = work.opened;
  const all = new Map([...inGrid].filter(([key]) => !key.endsWith(" shows")));
  const named = book.sheets.filter(({ hasCells }) => hasCells).map(({ name }) => name);
  all.set("sheets", named.join("/"));
  const places: [Worksheet, number, number][] = [];
  const sheets = openWorkbook(started).getSheets();
  for (const sheet of sheets) {
    sheet.getCellMatrix().forValue((row, column) => void places.push([sheet, row, column]));
  }
  const byId = new Map(sheets.map((sheet) => [sheet.getSheetId(), sheet]));
  for (const { sheet, area } of book.results.spills.values())
    for (let row = area.top; row <= area.bottom; row++)
      for (let column = area.left; column <= area.right; column++) places.push([byId.get(sheet)!, row, column]);
  for (const at of book.results.filled.keys()) {
    const [sheet, row, column] = at.split(" ") as [string, string, string];
    places.push([byId.get(sheet)!, Number(row), Number(column)]);
  }
  for (const [sheet, row, column] of places) {
    const content = gridContent(grid, unitId, sheet.getSheetId(), row, column);
    const value =
      content === null || isFormula(content) ? valueAt(book.results, sheet.getSheetId(), row, column) : content;
    if (content === null && value === null) continue;
    all.set(
      `${sheet.getName()} ${cellName(row, column)} shows`,
      JSON.stringify(value === null ? null : shownValue(value)),
    );
  }
  return all;
}

/** Errors are texts in the grid, and an empty text is nothing there. */
function alike(text: string | undefined): string | undefined {
  const bare = text?.replace(/^kept /, "");
  if (bare === "null" || bare === '""') return undefined;
  return bare?.replace(/^"(#[A-Z/0!?]+)"$/, "$1");
}

/** All of the grid but contents and how much is seen of them: what nobody may change here. */
export function structure(started: Started): string {
  const { name, sheetOrder, resources, sheets: _, ...rest } = openWorkbook(started).getSnapshot();
  const names = sheetOrder.map((id) => openWorkbook(started).getSheetBySheetId(id)!.getName());
  return JSON.stringify([name, sheetOrder, names, resources, Object.keys(rest), [...structures(started)]]);
}

/** The same of each sheet, but what it is called, by its id. */
export function structures(started: Started): Map<string, string> {
  const { sheets, sheetOrder } = openWorkbook(started).getSnapshot();
  return new Map(
    sheetOrder.map((id) => {
      const { cellData = {}, rowData = {}, columnData = {}, ...others } = { ...sheets[id]!, name: "" };
      for (const seen of ["zoomRatio", "rowCount", "columnCount", "scrollTop", "scrollLeft"] as const)
        delete others[seen];
      const looks = Object.entries(cellData).flatMap(([row, line]) =>
        Object.entries(line as Record<string, ICellData>).flatMap(([column, { s }]) =>
          s ? [[row, column, openWorkbook(started).getStyles().get(s)]] : [],
        ),
      );
      const hidden = (lines: object) =>
        Object.entries(lines).flatMap(([at, line]) => ((line as { hd?: number } | undefined)?.hd ? [at] : []));
      // A sheet that comes back has its parts in another order.
      const sorted = Object.entries(others).sort(([a], [b]) => a.localeCompare(b));
      return [id, JSON.stringify([sorted, looks, hidden(rowData), hidden(columnData)])];
    }),
  );
}
