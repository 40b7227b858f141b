import { HoverManagerService } from "@univerjs/sheets-ui";
import type { Selection } from "../../taskpane/host/host";
import type { Grid } from "./univer";

/** How long the pointer rests on a cell before it tells, in milliseconds: as long as a title takes in a browser. */
const REST = 400;
/** The library's canvas of the sheet: the formula's line has one of its own. */
const SHEET = 'canvas[id^="univer-sheet-main-canvas"]';
/** Between the cell and what is said of it, in pixels. */
const AWAY = 6;

/**
 * What is wrong in a cell stands beside it while the pointer rests on it, and goes as soon as anything moves. The
 * selected cell's message has a line of its own, which keys and screen readers reach.
 * @param read what a cell says
 * @param tip where it is written; placed over the grid
 */
export function tellAtPointer(
  { univer }: Grid,
  grid: HTMLElement,
  tip: HTMLElement,
  read: (sheet: string, row: number, column: number) => Selection,
): void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const hide = (): void => {
    clearTimeout(waiting);
    tip.hidden = true;
  };
  for (const event of ["pointerleave", "pointerdown", "wheel"])
    grid.addEventListener(event, hide, { capture: true, passive: true });
  addEventListener("keydown", hide, { capture: true, passive: true });

  const hover = univer.__getInjector().get(HoverManagerService);
  hover.currentCell$.subscribe((cell) => {
    hide();
    if (!cell) return;
    const { subUnitId, row, col } = cell.location;
    waiting = setTimeout(() => {
      const { message, value } = read(subUnitId, row, col);
      const canvas = grid.querySelector(SHEET);
      if (message === undefined || !canvas) return;
      tip.textContent = `${String(value)} ${message}`;
      tip.hidden = false;
      putBeside(tip, canvas.getBoundingClientRect(), cell.position);
    }, REST);
  });
}

/** Below the cell, or above it where there is no room below; never beyond the window's edges. */
function putBeside(
  tip: HTMLElement,
  canvas: DOMRect,
  { startX, startY, endY }: { startX: number; startY: number; endY: number },
): void {
  const { width, height } = tip.getBoundingClientRect();
  const below = canvas.top + endY + AWAY;
  const top = below + height > innerHeight ? canvas.top + startY - AWAY - height : below;
  tip.style.left = `${Math.max(AWAY, Math.min(canvas.left + startX, innerWidth - width - AWAY))}px`;
  tip.style.top = `${Math.max(AWAY, top)}px`;
}
