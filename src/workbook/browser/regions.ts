import { focusGrid } from "./focus-grid";
import { part } from "./part";
import type { Grid } from "./univer";

/** A part of the page that the keys go round by. */
interface Region {
  isShown(): boolean;
  isHere(): boolean;
  enter(): void;
}

/**
 * Goes on to the next part of the page, and round again: grid, sheets' tabs, pane, its search, toolbar.
 * @param step 1, or -1 for back
 */
export function goOn(event: KeyboardEvent, grid: Grid, step: 1 | -1): void {
  event.preventDefault();
  event.stopPropagation();
  const shown = regions(grid).filter((region) => region.isShown());
  const here = shown.findIndex((region) => region.isHere());
  const next = here < 0 ? 0 : (here + step + shown.length) % shown.length;
  shown[next]!.enter();
}

function regions(grid: Grid): Region[] {
  const frame = part("pane").querySelector("iframe")!;
  const isShown = (id: string): boolean => part(id).offsetParent !== null;
  const inSearch = (): boolean => frame.contentDocument?.activeElement?.id === "query";
  const inPane = (): boolean => part("pane").contains(document.activeElement);
  const tab = (): HTMLElement | null => document.querySelector(`${TAB}[aria-selected="true"]`);
  const inTabs = (): boolean => Boolean(document.activeElement?.closest(TAB));
  return [
    {
      isShown: () => true,
      isHere: () => part("grid").contains(document.activeElement) && !inTabs(),
      enter: () => focusGrid(grid),
    },
    { isShown: () => tab() !== null, isHere: inTabs, enter: () => tab()!.focus() },
    {
      isShown: () => isShown("pane"),
      isHere: () => inPane() && !inSearch(),
      enter() {
        frame.contentDocument?.querySelector<HTMLElement>("#query")?.blur();
        frame.focus();
      },
    },
    {
      isShown: () => isShown("pane"),
      isHere: () => inPane() && inSearch(),
      enter() {
        frame.focus();
        frame.contentDocument?.querySelector<HTMLElement>("#query")?.focus();
      },
    },
    {
      isShown: () => isShown("tools"),
      isHere: () => part("tools").contains(document.activeElement),
      enter: () => part("tools").querySelector<HTMLElement>("button:enabled")?.focus(),
    },
  ];
}

const TAB = '#grid [data-u-comp="slide-tab-item"]';
