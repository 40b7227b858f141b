import { EditedWorkbook } from "../edit/index";
import { readLook, type Look } from "../look/index";
import { keepCalculated, type Calculation } from "./calculation";
import type { KeptWork } from "./kept";
import type { TypedFractions } from "./lengthEntry";
import { resultsOf } from "./results";
import { sheetIndex, snapshot } from "./snapshot";
import type { Grid } from "./univer";

/** A workbook that stands in the grid. */
export interface OpenInGrid {
  readonly unitId: string;
  readonly workbook: EditedWorkbook;
  readonly calculation: Calculation;
  readonly look: Look;
}

let opened = 0;

/**
 * Puts a workbook's file into the grid, in place of what stood there.
 * @param edits what was changed since, in an earlier visit
 * @param typed what has been typed as a fraction since
 * @throws FileFault where the bytes are no usable workbook; the grid is then left as it was
 */
export function openInGrid(
  grid: Grid,
  bytes: Uint8Array,
  name: string,
  edits: KeptWork["edits"],
  before: OpenInGrid | undefined,
  typed: () => TypedFractions | undefined,
  onChange: () => void,
): OpenInGrid {
  const workbook = new EditedWorkbook(bytes, edits);
  const results = resultsOf(workbook);
  const unitId = `workbook-${++opened}`;
  const look = readLook(workbook.opened);
  const data = snapshot(workbook, look, results, unitId, name);
  if (before) {
    before.calculation.dispose();
    grid.api.disposeUnit(before.unitId);
  }
  const sheets = grid.api.createWorkbook(data).getSheets();
  for (const sheet of [...sheets].reverse()) {
    if (look.hidden.has(sheetIndex(sheet.getSheetId()))) continue;
    const { row, column } = look.sheets[sheetIndex(sheet.getSheetId())]!.selected;
    sheet.getRange(row, column).activate();
  }
  return { unitId, workbook, look, calculation: keepCalculated(grid, unitId, workbook, results, typed, onChange) };
}
