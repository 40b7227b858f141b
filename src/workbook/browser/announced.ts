import type { Selection } from "../../taskpane/host/host";

/** Milliseconds that the selection stands still before it is told: who holds an arrow hears where it ends. */
const STILL = 250;

/**
 * Tells a screen reader the selected cell, what it says and what is wrong in it: a grid that is painted says nothing.
 * @param line of the page, read out as it changes
 */
export function announced(line: HTMLElement): (selection: Selection) => void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  return ({ address, value, message = "" }) => {
    clearTimeout(waiting);
    const shown = value === "" ? "empty" : String(value);
    waiting = setTimeout(() => (line.textContent = `${address} ${shown} ${message}`.trim()), STILL);
  };
}
