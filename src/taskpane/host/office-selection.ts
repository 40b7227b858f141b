import type { Run } from "./run";

interface Heard {
  context: unknown;
  remove(): void;
}

/**
 * Calls `tell` after every change of the selection and, where the program tells of it, after the workbook has been
 * worked out anew, until the function that it gives back is called.
 */
export async function whenSelectionChanges(
  run: Run,
  tell: () => Promise<void>,
  { tellsCalculated }: { tellsCalculated: boolean },
): Promise<() => Promise<void>> {
  const soon = once(tell);
  const events = await run(async (context) => {
    const { workbook } = context;
    const heard: Heard[] = [workbook.onSelectionChanged.add(tell)];
    if (tellsCalculated) heard.push(workbook.worksheets.onCalculated.add(soon.ask));
    await context.sync();
    return heard;
  });
  return async () => {
    soon.forget();
    await Excel.run(events[0]!.context as Excel.RequestContext, async (context) => {
      for (const event of events) event.remove();
      await context.sync();
    });
  };
}

/** The program tells of every sheet by itself: what is asked for in a row is done once. */
function once(work: () => Promise<void>) {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  return {
    async ask(): Promise<void> {
      clearTimeout(waiting);
      waiting = setTimeout(() => void work(), PAUSE);
    },
    forget: (): void => clearTimeout(waiting),
  };
}

/** Milliseconds of quiet, after which the workbook is taken for worked out. */
const PAUSE = 200;
