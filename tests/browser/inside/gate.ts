import { CommandType, ICommandService, IUndoRedoService, sequenceExecute } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { disagreement, openWorkbook, structure, type Started } from "./agreement";

export interface Registered {
  id: string;
  type: CommandType;
}

export interface Tried {
  /** What the grid's library says of it, or the fault that it threw. */
  result: unknown;
  /** Whether the grid holds what it held before, but for contents that were understood. */
  isAsBefore: boolean;
  /** Whether a step was added to those that may be undone. */
  isStep: boolean;
  /** What A1 of the first sheet holds. */
  a1: unknown;
  /** What the page says of it. */
  words: string;
  disagreement: string | null;
}

export type How = "one by one" | "as a sequence";

const commandsOf = ({ grid }: Started) => grid.univer.__getInjector().get(ICommandService);

/** Everything that the loaded parts of the library have brought with them. */
export function registered(started: Started): Registered[] {
  const { _commandRegistry } = commandsOf(started) as unknown as {
    _commandRegistry: { _commands: Map<string, Registered> };
  };
  return [..._commandRegistry._commands.values()].map(({ id, type }) => ({ id, type }));
}

async function tried(started: Started, run: () => unknown): Promise<Tried> {
  const before = structure(started);
  const undo = started.grid.univer.__getInjector().get(IUndoRedoService);
  const step = undo.pitchTopUndoElement();
  const notice = document.querySelector("#notice p")!;
  notice.textContent = "";
  let result: unknown;
  try {
    // A question to the person is not waited for.
    result = await Promise.race([run(), new Promise((resolve) => setTimeout(resolve, 1_000, "goes on"))]);
  } catch (error) {
    result = String(error);
  }
  const disagreed = await disagreement(started);
  return {
    result,
    isAsBefore: structure(started) === before,
    a1: openWorkbook(started).getSheets()[0]!.getCellRaw(0, 0)?.v,
    isStep: undo.pitchTopUndoElement() !== step,
    words: notice.textContent,
    disagreement: disagreed ?? null,
  };
}

/** Where a mutation wants to know what it is about, it is about the first cells. */
function params(started: Started): Record<string, unknown> {
  const workbook = openWorkbook(started);
  const range = { startRow: 0, endRow: 1, startColumn: 0, endColumn: 1 };
  return { unitId: workbook.getUnitId(), subUnitId: workbook.getSheets()[0]!.getSheetId(), range, ranges: [range] };
}

export const tryMutation = (started: Started, id: string): Promise<Tried> =>
  tried(started, () => commandsOf(started).syncExecuteCommand(id, params(started)));

export const tryCommand = (started: Started, id: string): Promise<Tried> =>
  tried(started, () => commandsOf(started).executeCommand(id, params(started)));

/** A command writes into A1 first, and again later; the mutation in question stands between. */
export function tryAmid(started: Started, id: string, how: How): Promise<Tried> {
  const commands = commandsOf(started);
  const write = (v: string) => {
    const { unitId, subUnitId } = params(started);
    return { id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue: { 0: { 0: { v } } } } };
  };
  const steps = [write("half"), { id, params: params(started) }, write("rest")];
  const own = commands.registerCommand({
    id: "test.command.amid",
    type: CommandType.COMMAND,
    handler: () => {
      if (how === "as a sequence") return sequenceExecute(steps, commands).result;
      for (const step of steps) commands.syncExecuteCommand(step.id, step.params);
      return true;
    },
  });
  return tried(started, () => commands.executeCommand("test.command.amid")).finally(() => own.dispose());
}
