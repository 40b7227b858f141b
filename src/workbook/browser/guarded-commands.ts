import {
  CanceledError,
  CommandService,
  CommandType,
  IUniverInstanceService,
  type IConfigService,
  type ILogService,
  type Injector,
} from "@univerjs/core";
import { SetRangeValuesMutation, SetRangeValuesUndoMutationFactory } from "@univerjs/sheets";
import { admitted } from "./mutations";

/** Mutations that come from one command: what of them has run, and whether one was refused. */
interface Batch {
  undo: object[];
  isRefused: boolean;
}

/**
 * The library's commands, none of which gets past the gate: a mutation that is not understood does not run, ends the
 * command that it came from, and what that command had already changed is taken back. Whatever changes a workbook in
 * this library is a mutation, so that this holds for every key, menu, drag, paste, fill, undo and redo.
 */
export class GuardedCommands extends CommandService {
  /** Asked before a command runs; false where it must not. */
  mayRun: (id: string, params: object | undefined) => boolean = () => true;
  /** Called once for each command of which a mutation was refused. */
  onRefused: () => void = () => undefined;
  private batch: Batch | undefined;
  private depth = 0;
  private awaited: Promise<unknown> | undefined;

  constructor(
    private readonly injector: Injector,
    log: ILogService,
    config: IConfigService,
  ) {
    super(injector, log, config);
  }

  /** Commands that are about the sheets, and steps that are undone or done again, wait until it is over. */
  waitFor(something: Promise<unknown>): void {
    this.awaited = something;
    void something.finally(() => {
      if (this.awaited === something) this.awaited = undefined;
    });
  }

  override executeCommand<P extends object = object, R = boolean>(...[id, params, options]: Asked<P>): Promise<R> {
    if (this.awaited && ABOUT_SHEETS.test(id)) return this.awaited.then(() => this.executeCommand(id, params, options));
    const batch = this.open();
    if (!this.passes(id, params, options)) return Promise.resolve(false as R);
    this.depth++;
    // What a command does before it waits for something, it does in here.
    const running = super.executeCommand<P, R>(id, params, options);
    this.depth--;
    return running.then((result) => (batch.isRefused ? (false as R) : result));
  }

  override syncExecuteCommand<P extends object = object, R = boolean>(...[id, params, options]: Asked<P>): R {
    const batch = this.open();
    const isNested = this.depth > 0;
    const refuse = (): R => {
      // The command that it came from goes no further.
      if (isNested) throw new CanceledError();
      return false as R;
    };
    if (!this.passes(id, params, options)) return refuse();
    this.depth++;
    try {
      const result = super.syncExecuteCommand<P, R>(id, params, options);
      return batch.isRefused ? refuse() : result;
    } finally {
      this.depth--;
    }
  }

  private passes(id: string, params: object | undefined, options: Options): boolean {
    const type = this._commandRegistry.getCommandType(id);
    if (type === CommandType.COMMAND) return this.mayRun(id, params);
    if (type !== CommandType.MUTATION) return true;
    const batch = this.open();
    if (batch.isRefused) return false;
    if (!admitted(id, params, options)) {
      // What the library hangs on a change that is taken back must still run.
      for (const undo of batch.undo.splice(0).reverse()) super.syncExecuteCommand(SetRangeValuesMutation.id, undo);
      batch.isRefused = true;
      this.onRefused();
      return false;
    }
    if (id === SetRangeValuesMutation.id && !options?.fromFormula) this.remember(batch, params);
    return true;
  }

  private remember(batch: Batch, params: object | undefined): void {
    const { unitId, subUnitId } = params as Values;
    // A workbook that is no longer open has nothing to be taken back.
    const workbook = this.injector.get(IUniverInstanceService).getUniverSheetInstance(unitId);
    if (workbook?.getSheetBySheetId(subUnitId))
      batch.undo.push(SetRangeValuesUndoMutationFactory(this.injector, params as Values));
  }

  /** All mutations of a command run in one go, and nothing else runs meanwhile. */
  private open(): Batch {
    if (!this.batch) queueMicrotask(() => (this.batch = undefined));
    return (this.batch ??= { undo: [], isRefused: false });
  }
}

const ABOUT_SHEETS = /^(?:(?:sheet|formula|sheets-formula)\.command\.|univer\.command\.(?:undo|redo|paste|cut|copy)$)/;

type Asked<P> = [id: string, params?: P, options?: Options];
type Options = Parameters<CommandService["executeCommand"]>[2];
type Values = Parameters<typeof SetRangeValuesUndoMutationFactory>[1];
