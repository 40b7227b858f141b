import { element } from "./element";
import type { StuckCells, StuckSheet } from "./host/host";
import type { Outcome } from "./insert";
import { faultMessage, MESSAGES } from "./messages";
import { patiently } from "./patiently";

/**
 * Tells of cells that show #NAME? though the functions are there now, with a button that wakes them. Says nothing
 * where there are none.
 * @param names of the functions that are there
 */
export async function showStuck(
  place: HTMLElement,
  stuck: StuckCells | undefined,
  names: ReadonlySet<string>,
  say: (outcome: Outcome) => void,
): Promise<void> {
  if (!stuck) return;

  const look = async (): Promise<StuckSheet[]> => {
    const sheets = await stuck.find(names);
    const open = sheets.filter(({ isProtected }) => !isProtected);
    const button = element("button", { type: "button" }, MESSAGES.wake);
    button.addEventListener("click", () => {
      button.disabled = true;
      void wake(open).then((outcome) => {
        say(outcome);
        // The button that had the keys is gone.
        if (document.activeElement === document.body)
          (place.querySelector("button") ?? document.querySelector<HTMLElement>("#query"))?.focus();
      });
    });
    place.replaceChildren(element("p", {}, MESSAGES.stuck(sheets)), ...(open.length > 0 ? [button] : []));
    place.hidden = sheets.length === 0;
    return open;
  };

  const wake = async (sheets: readonly StuckSheet[]): Promise<Outcome> => {
    try {
      for (const sheet of sheets) await stuck.wake(sheet);
      const left = count(await look());
      return { ok: left === 0, text: MESSAGES.woken(Math.max(0, count(sheets) - left), left) };
    } catch (thrown) {
      await patiently(
        async () => void (await look()),
        () => {},
      );
      return { ok: false, text: faultMessage(thrown) };
    }
  };

  await patiently(
    async () => void (await look()),
    () => {},
  );
}

const count = (sheets: readonly StuckSheet[]): number => sheets.reduce((sum, { cells }) => sum + cells.length, 0);
