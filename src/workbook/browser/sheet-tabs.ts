import { CommandType, ICommandService, IUndoRedoService } from "@univerjs/core";
import {
  InsertSheetCommand,
  RemoveSheetCommand,
  SetWorksheetNameCommand,
  SetWorksheetOrderCommand,
} from "@univerjs/sheets";
import type { SheetEdit } from "../edit/index";
import { SheetFault } from "../sheets/sheet-edit";
import type { OpenInGrid } from "./session";
import { following, inFrontOf, type SheetsEdit } from "./sheet-steps";
import type { StandStill } from "./stand-still";
import type { Grid } from "./univer";
import type { SheetFacts } from "./worker/messages";

/** The sheets of the open workbook, as they are changed by tabs, menu and keys. */
export interface SheetTabs {
  /** Adds a sheet behind the one that is seen. */
  add(): void;
  /**
   * Adds a sheet behind the one that is seen, with a number behind its name where that is taken.
   * @throws SheetFault where it is refused
   */
  insert(name: string): Promise<{ id: string; name: string }>;
  rename(id: string, name: string): void;
  /** @param place among the sheets that are seen */
  move(id: string, place: number): void;
  delete(id: string): void;
  /** Whether a command of the grid's library changes the sheets; it is done here, in the workbook and the grid alike. */
  takes(command: string, params: object | undefined): boolean;
}

/**
 * Sheets are changed by the workbook, which knows what else in it names or counts them; the grid follows. Undone and
 * done again it is like everything else.
 * @param still nothing else is changed until it is done, for that might be about a sheet that goes or comes back
 * @param refuse told in words why the sheets stay as they are
 */
export function sheetTabs(
  grid: Grid,
  open: () => OpenInGrid,
  still: StandStill,
  refuse: (error: unknown) => void,
): SheetTabs {
  const injector = grid.univer.__getInjector();
  const change = async (opened: OpenInGrid, edit: SheetsEdit, by: By): Promise<SheetEdit | undefined> => {
    const { unitId, calculation } = opened;
    const steps = injector.get(IUndoRedoService);
    try {
      const [done, back] = await calculation.changeSheets(edit);
      const step = (one: SheetEdit, by: By) => [{ id: CHANGE_SHEETS, params: { unitId, edit: one, by } }];
      const both = { undoMutations: step(back, "undo"), redoMutations: step(done, "redo") };
      if (by === "person") steps.pushUndoRedo({ unitID: unitId, ...both });
      return done;
    } catch (error) {
      if (open() !== opened) return undefined;
      // The step was taken for done.
      if (by === "undo") steps.popRedoToUndo();
      if (by === "redo") steps.popUndoToRedo();
      refuse(error);
      return undefined;
    }
  };
  injector.get(ICommandService).registerCommand({
    id: CHANGE_SHEETS,
    type: CommandType.OPERATION,
    handler: (_, params) => {
      const { unitId, edit, by } = params as { unitId: string; edit: SheetEdit; by: By };
      const opened = open();
      if (opened.unitId === unitId) void still(() => change(opened, () => edit, by));
      return true;
    },
  });
  const begin = (edit: SheetsEdit): void => {
    const opened = open();
    void still(() => change(opened, edit, "person"));
  };
  const active = (): string => grid.api.getActiveWorkbook()!.getActiveSheet().getSheetId();

  const tabs: SheetTabs = {
    add() {
      const [id, after] = [`added-${crypto.randomUUID()}`, active()];
      begin((sheets) => ({ kind: "add", id, name: freeName(sheets), ...inFrontOf(following(sheets, after)) }));
    },
    async insert(wanted) {
      const [opened, id, after] = [open(), `added-${crypto.randomUUID()}`, active()];
      const done = await still(() =>
        change(
          opened,
          (sheets) => ({ kind: "add", id, name: freeName(sheets, wanted), ...inFrontOf(following(sheets, after)) }),
          "person",
        ),
      );
      if (done?.kind !== "add") throw new SheetFault("The sheet was not added.");
      return { id, name: done.name };
    },
    rename: (id, name) => begin(() => ({ kind: "rename", id, name })),
    move: (id, place) =>
      begin((sheets) => {
        const others = sheets.filter((sheet) => sheet.hasCells && !sheet.isHidden && sheet.id !== id);
        const last = others.at(-1);
        const before = others[place]?.id ?? (last && following(without(sheets, id), last.id));
        return { kind: "move", id, ...inFrontOf(before) };
      }),
    delete: (id) => begin(() => ({ kind: "delete", id })),
    takes(command, params) {
      const { subUnitId = active(), name = "", order = 0 } = (params ?? {}) as Params;
      if (command === InsertSheetCommand.id) tabs.add();
      else if (command === RemoveSheetCommand.id) tabs.delete(subUnitId);
      else if (command === SetWorksheetNameCommand.id) tabs.rename(subUnitId, name);
      else if (command === SetWorksheetOrderCommand.id) tabs.move(subUnitId, order);
      else return false;
      return true;
    },
  };
  return tabs;
}

/** The step by which a change of the sheets is undone or done again. */
const CHANGE_SHEETS = "workbook.operation.change-sheets";

type By = "person" | "undo" | "redo";

interface Params {
  subUnitId?: string;
  name?: string;
  order?: number;
}

const without = (sheets: readonly SheetFacts[], id: string): SheetFacts[] => sheets.filter((sheet) => sheet.id !== id);

function freeName(sheets: readonly SheetFacts[], wanted?: string): string {
  const taken = new Set(sheets.map(({ name }) => name.toLowerCase()));
  if (wanted !== undefined && !taken.has(wanted.toLowerCase())) return wanted;
  for (let number = wanted === undefined ? 1 : 2; ; number++) {
    const name = wanted === undefined ? `Sheet${number}` : `${wanted} ${number}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
}

/** Why the sheets stay as they are. */
export const whySheetsStay = (error: unknown, why: (error: unknown) => string): string =>
  error instanceof SheetFault ? error.message : `The sheets are as they were. ${why(error)}`;
