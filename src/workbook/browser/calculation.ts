import {
  FormulaExecutedStateType,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationResultMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { ICommandService, ObjectMatrix } from "@univerjs/core";
import { isFormula } from "../edit/content";
import type { SheetEdit } from "../edit/index";
import type { Book } from "./book";
import { gridContent } from "./grid-content";
import { arraysOf, valuesOf } from "./grid-results";

import { redraw } from "./redraw";
import { makeRoom } from "./room";
import { leadingBack, type SheetsEdit } from "./sheet-steps";
import { showSheets } from "./show-sheets";
import { takeBack } from "./take-back";
import type { TypedNumbers } from "./typed-numbers";
import type { Grid } from "./univer";
import type { Difference } from "./worker/difference";
import type { Placed } from "./worker/messages";
import { Stopped } from "./worker/client";
import { place, reaches } from "./worker/results";

/** Keeps grid and workbook the same: what is typed goes into the workbook, what comes of it goes back into the grid. */
export interface Calculation {
  /** Whether something was typed that the workbook has not taken in yet. */
  readonly isBehind: boolean;
  /**
   * Changes the sheets in workbook and grid, once all that was typed before is taken in.
   * @returns the change, and the one that leads back
   * @throws SheetFault where it is refused; the sheets are then as they were
   */
  changeSheets(edit: SheetsEdit): Promise<[done: SheetEdit, back: SheetEdit]>;
  /** Waits until all that was typed is taken in, or taken back. */
  settled(): Promise<void>;
  dispose(): void;
}

/** What the page does when something happens in the grid. */
export interface Watcher {
  /** The number formats that came with what was typed. */
  typed(): TypedNumbers | undefined;
  /** After every change, once the grid shows what came of it. */
  onChange(): void;
  /** What was typed could not be worked out, and these cells are as they were. */
  onTakenBack(cells: readonly Placed[], why: unknown): void;
  /** What was typed could neither be worked out nor taken back: the grid shows what the workbook does not have. */
  onLeftBehind(): void;
}

/** @param unitId the grid's name for this workbook */
export function keepCalculated(grid: Grid, unitId: string, book: Book, watcher: Watcher): Calculation {
  const commands = grid.univer.__getInjector().get(ICommandService);
  const touched = new Map<string, { sheet: string; row: number; column: number }>();
  const turns: { go(): Promise<void>; leave(why: unknown): void }[] = [];
  let going: Promise<void> | undefined;
  /** The worker has not answered yet. */
  let isAsked = false;
  /** What a command changes is still coming. */
  let isGathering = false;
  /** What is written into the grid comes from the workbook. */
  let isTold = false;
  let isClosed = false;

  const local = { onlyLocal: true, fromFormula: true };
  const showArrays = (): void =>
    void commands.syncExecuteCommand(SetArrayFormulaDataMutation.id, arraysOf(book.results, unitId), local);
  const show = (places: Iterable<string>): void => {
    for (const [sheet, used] of reaches(book.results)) makeRoom(grid, unitId, sheet, used);
    showArrays();
    const unitData = { [unitId]: valuesOf(book.results, places) };
    commands.syncExecuteCommand(SetFormulaCalculationResultMutation.id, { unitData, unitOtherData: {} }, local);
    // The library gathers what has changed until it hears that this has been worked out.
    const done = { functionsExecutedState: FormulaExecutedStateType.SUCCESS };
    commands.syncExecuteCommand(SetFormulaCalculationNotificationMutation.id, done, local);
    redraw(grid, unitId);
  };
  /** What is typed meanwhile goes before what came of earlier cells. */
  const showOther = ({ values }: Difference, written: readonly string[] = []): void => {
    const later = new Set([...touched.values()].map(({ sheet, row, column }) => place(sheet, row, column)));
    show([...new Set([...values.set.keys(), ...written])].filter((at) => !later.has(at)));
  };

  const gather = (): Placed[] => {
    const edits = [...touched.values()].map(({ sheet, row, column }) => {
      const content = gridContent(grid, unitId, sheet, row, column);
      const format = watcher.typed()?.format(sheet, row, column, content);
      return { sheet, row, column, content, format };
    });
    touched.clear();
    return edits;
  };

  const changeSheets = async (make: SheetsEdit): Promise<[SheetEdit, SheetEdit]> => {
    const edit = make(book.sheets);
    const back = leadingBack(edit, book.sheets);
    isAsked = true;
    const changed = await book.changeSheets(edit).finally(() => (isAsked = false));
    isTold = true;
    try {
      showSheets(grid, unitId, edit, changed, book.results, (...at) => touched.has(place(...at)));
    } finally {
      isTold = false;
    }
    // The library takes spilled ranges out of what is written, and does so later.
    await new Promise((resolve) => setTimeout(resolve));
    // What was typed meanwhile into a sheet that is deleted is gone with it.
    for (const [at, { sheet }] of touched) if (!book.sheet(sheet)) touched.delete(at);
    // The grid forgets the value of a formula that is written.
    showOther(
      changed.difference,
      changed.cells.filter(({ content }) => isFormula(content)).map((cell) => place(cell.sheet, cell.row, cell.column)),
    );
    watcher.onChange();
    return [edit, back];
  };

  /** @returns true where something is left behind */
  const takeIn = async (): Promise<boolean> => {
    while (!isClosed && (touched.size > 0 || turns.length > 0)) {
      if (touched.size === 0) {
        await turns.shift()!.go();
        continue;
      }
      const edits = gather();
      // The grid forgets a formula's value when the formula is written, even if it is the same as before.
      const written = edits
        .filter(({ content }) => isFormula(content))
        .map((edit) => place(edit.sheet, edit.row, edit.column));
      try {
        isAsked = true;
        const { changed, difference } = await book.put(edits).finally(() => (isAsked = false));
        // Where nothing has changed, the grid may still have forgotten what was spilled into those cells.
        showOther(difference, written);
        if (changed) watcher.onChange();
      } catch (error) {
        if (isClosed) break;
        const all = [...edits, ...gather()];
        const isBack = await takeBack(grid, unitId, book, all).then(yes, no);
        if (isClosed) break;
        if (isBack) watcher.onTakenBack(all, error);
        if (isBack) continue;
        // The next change tries again.
        for (const { sheet, row, column } of all) touch(sheet, row, column);
        for (const turn of turns.splice(0)) turn.leave(error);
        watcher.onLeftBehind();
        return true;
      }
    }
    return isClosed;
  };
  const begin = (): void => {
    isGathering = false;
    going ??= takeIn().then((isLeftBehind) => {
      going = undefined;
      if (!isLeftBehind && (touched.size > 0 || turns.length > 0)) begin();
    });
  };
  const touch = (sheet: string, row: number, column: number): void =>
    void touched.set(place(sheet, row, column), { sheet, row, column });

  const listener = commands.onCommandExecuted(({ id, params }, options) => {
    if (isTold || id !== SetRangeValuesMutation.id || options?.fromFormula) return;
    const { unitId: unit, subUnitId: sheet, cellValue } = params as Written;
    if (unit !== unitId || !cellValue) return;
    // All mutations of one command, and all that the library hangs on them, come before this.
    if (!isGathering) queueMicrotask(begin);
    isGathering = true;
    new ObjectMatrix(cellValue).forValue((row, column) => touch(sheet, row, column));
  });
  // When a workbook is closed, the library tells what is left of its spilled ranges; it does so later than this one comes.
  const afterClosing = commands.onCommandExecuted(({ id, params }) => {
    if (id !== SetArrayFormulaDataMutation.id) return;
    const { arrayFormulaRange } = params as { arrayFormulaRange?: Record<string, unknown> };
    if (!arrayFormulaRange?.[unitId]) show([]);
  });
  book.onBegun = showOther;
  show([]);
  return {
    get isBehind() {
      return touched.size > 0 || turns.length > 0 || isAsked;
    },
    changeSheets: (edit) =>
      new Promise((resolve, reject) => {
        turns.push({ go: () => changeSheets(edit).then(resolve, reject), leave: reject });
        begin();
      }),
    async settled() {
      begin();
      while (going) await going;
      if (touched.size > 0) throw new Error("what was changed last is not worked out.");
    },
    dispose() {
      isClosed = true;
      for (const turn of turns.splice(0)) turn.leave(new Stopped(false));
      listener.dispose();
      afterClosing.dispose();
      book.end();
    },
  };
}

const yes = (): boolean => true;
const no = (): boolean => false;

interface Written {
  unitId: string;
  subUnitId: string;
  cellValue?: never;
}
