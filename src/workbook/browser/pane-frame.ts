import type { Host } from "../../taskpane/host/host";

/** The pane, in a page of its own beside the grid, as it is in the spreadsheet program. */
export interface PaneFrame {
  readonly isOpen: boolean;
  /** Once the grid stands: both run in one thread, and the pane has nothing to say before. */
  load(): void;
}

/**
 * Mounts the pane and the button that opens and closes it.
 * @param host what the pane stands beside, once it is there
 */
export function paneFrame(
  aside: HTMLElement,
  toggle: HTMLButtonElement,
  host: Promise<Host>,
  wide: MediaQueryList,
): PaneFrame {
  window.spreadsheetHost = host;
  const frame = aside.querySelector("iframe")!;
  const open = (shown: boolean): void => {
    const hadKeys = aside.contains(document.activeElement);
    aside.hidden = !shown;
    if (hadKeys && !shown) toggle.focus();
    toggle.setAttribute("aria-expanded", String(shown));
  };
  toggle.addEventListener("click", () => open(aside.hidden));
  aside.querySelector("button")!.addEventListener("click", () => open(false));
  open(wide.matches);
  wide.addEventListener("change", () => open(wide.matches));
  return {
    get isOpen() {
      return !aside.hidden;
    },
    load: () => void (frame.src = "pane.html"),
  };
}
