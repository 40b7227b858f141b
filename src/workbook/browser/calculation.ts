import {
  ICommandService,
  IUniverInstanceService,
  ObjectMatrix,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import {
  FormulaDataModel,
  FormulaExecutedStateType,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationResultMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { isFormula, type EditedWorkbook } from "../edit/index";
import { contentOfGrid } from "./cellData";
import { arraysOf, changedValues } from "./gridResults";
import type { TypedFractions } from "./lengthEntry";
import { place, resultsOf, type Results } from "./results";
import { sheetIndex } from "./snapshot";
import type { Grid } from "./univer";

/** Keeps grid and workbook the same: what is typed goes into the workbook, what comes of it goes back into the grid. */
export interface Calculation {
  /** What the grid shows now. */
  readonly results: Results;
  dispose(): void;
}

/**
 * @param unitId the grid's name for this workbook
 * @param typed what was typed as a fraction
 * @param onChange called after every change, once the grid shows what came of it
 */
export function keepCalculated(
  grid: Grid,
  unitId: string,
  workbook: EditedWorkbook,
  first: Results,
  typed: () => TypedFractions | undefined,
  onChange: () => void,
): Calculation {
  const injector = grid.univer.__getInjector();
  const commands = injector.get(ICommandService);
  const formulas = injector.get(FormulaDataModel);
  let results = first;
  const touched = new Map<string, { sheet: string; row: number; column: number }>();

  const local = { onlyLocal: true, fromFormula: true };
  const show = (before: Results | undefined, written: ReadonlySet<string>): void => {
    commands.syncExecuteCommand(SetArrayFormulaDataMutation.id, arraysOf(results, unitId), local);
    const unitData = { [unitId]: before ? changedValues(before, results, written) : {} };
    commands.syncExecuteCommand(SetFormulaCalculationResultMutation.id, { unitData, unitOtherData: {} }, local);
    // The library gathers what has changed until it hears that this has been worked out.
    const done = { functionsExecutedState: FormulaExecutedStateType.SUCCESS };
    commands.syncExecuteCommand(SetFormulaCalculationNotificationMutation.id, done, local);
  };

  const takeIn = (): void => {
    const book = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
    let changed = false;
    // The grid forgets a formula's value when the formula is written, even if it is the same as before.
    const written = new Set<string>();
    for (const { sheet, row, column } of touched.values()) {
      const cell = book?.getSheetBySheetId(sheet)?.getCellRaw(row, column) ?? undefined;
      const formula = formulas.getFormulaStringByCell(row, column, sheet, unitId) ?? undefined;
      const content = contentOfGrid(cell, formula);
      if (isFormula(content)) written.add(place(sheetIndex(sheet), row, column));
      const isFraction = typed()?.has(sheet, row, column, content);
      changed = workbook.put({ sheet: sheetIndex(sheet), row, column, content, isFraction }) || changed;
    }
    touched.clear();
    if (!changed && written.size === 0) return;
    const before = results;
    results = resultsOf(workbook);
    show(before, written);
    if (changed) onChange();
  };

  const listener = commands.onCommandExecuted(({ id, params }, options) => {
    if (id !== SetRangeValuesMutation.id || options?.fromFormula) return;
    const {
      unitId: unit,
      subUnitId: sheet,
      cellValue,
    } = params as { unitId: string; subUnitId: string; cellValue?: never };
    if (unit !== unitId || !cellValue) return;
    // All mutations of one command, and all that the library hangs on them, come before this.
    if (touched.size === 0) queueMicrotask(takeIn);
    new ObjectMatrix(cellValue).forValue(
      (row, column) => void touched.set(`${sheet} ${row} ${column}`, { sheet, row, column }),
    );
  });
  // When a workbook is closed, the library tells what is left of its spilled ranges; it does so later than this one comes.
  const afterClosing = commands.onCommandExecuted(({ id, params }) => {
    if (id !== SetArrayFormulaDataMutation.id) return;
    const { arrayFormulaRange } = params as { arrayFormulaRange?: Record<string, unknown> };
    if (!arrayFormulaRange?.[unitId]) show(undefined, new Set());
  });
  show(undefined, new Set());
  return {
    get results() {
      return results;
    },
    dispose() {
      listener.dispose();
      afterClosing.dispose();
    },
  };
}
