import { ICommandService } from "@univerjs/core";
import { GuardedCommands } from "./guarded-commands";
import { part } from "./part";
import type { Grid } from "./univer";

/** Lets nothing else be changed while something is done. */
export type StandStill = <T>(during: () => Promise<T>) => Promise<T>;

/**
 * Presses and keys on the grid are let go meanwhile, so that nobody types into a sheet that is about to go, and commands
 * from elsewhere wait. What was being typed is put into its cell first.
 */
export function standStill({ univer, api }: Grid): StandStill {
  const commands = univer.__getInjector().get(ICommandService) as GuardedCommands;
  let going = 0;
  const letGo = (event: Event): void => {
    const target = event.target as Node;
    if (going === 0 || !(target === document.body || part("grid").contains(target))) return;
    event.stopImmediatePropagation();
    if (WRITES.has(event.type)) event.preventDefault();
  };
  for (const type of [...PRESSES, ...WRITES]) addEventListener(type, letGo, { capture: true, passive: false });
  return async (during) => {
    const workbook = api.getActiveWorkbook();
    const typed = workbook?.isCellEditing() ? workbook.endEditingAsync(true) : undefined;
    going++;
    const done = (typed ?? Promise.resolve()).then(during);
    const ended = done.then(
      () => undefined,
      () => undefined,
    );
    commands.waitFor(ended);
    try {
      return await done;
    } finally {
      going--;
    }
  };
}

const PRESSES = ["keydown", "pointerdown", "mousedown", "dblclick", "contextmenu"] as const;
const WRITES: ReadonlySet<string> = new Set(["beforeinput", "paste", "cut", "drop"]);
