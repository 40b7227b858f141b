import { focusGrid } from "./focus-grid";
import type { Grid } from "./univer";

/** Whether nothing has the keys, for what had them is gone, disabled or shut. */
export const areKeysLost = (): boolean => !document.activeElement || document.activeElement === document.body;

/** Keys that are lost go to the grid. */
export const findKeys = (grid: Grid): void => void (areKeysLost() && focusGrid(grid));

/**
 * Behind a dialog the keys are where they were. Browsers see to that, but for those that were in the pane's frame.
 * @param frame the pane's
 */
export function keepKeys(grid: Grid, frame: HTMLIFrameElement): void {
  let inPane: HTMLElement | undefined;
  for (const dialog of document.querySelectorAll("dialog")) {
    dialog.addEventListener("beforetoggle", ({ newState }) => {
      if (newState === "open")
        inPane = document.activeElement === frame ? (frame.contentDocument!.activeElement as HTMLElement) : undefined;
    });
    dialog.addEventListener("close", () => {
      // What is closed may hold them a moment longer.
      if (dialog.contains(document.activeElement)) (document.activeElement as HTMLElement).blur();
      if (areKeysLost() && inPane) {
        frame.focus();
        inPane.focus();
      }
      findKeys(grid);
    });
  }
}
