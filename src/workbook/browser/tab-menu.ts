import { ICommandService } from "@univerjs/core";
import { RenameSheetOperation } from "@univerjs/sheets-ui";
import { focusGrid } from "./focus-grid";
import { part } from "./part";
import { seenSheets, showSheet } from "./seen-sheets";
import type { SheetTabs } from "./sheet-tabs";
import type { Grid } from "./univer";

/** The menu on a sheet's tab: by the other mouse button, a long touch, or the key for menus. */
export function tabMenu(grid: Grid, tabs: SheetTabs): void {
  const commands = grid.univer.__getInjector().get(ICommandService);
  const menu = part("tab-menu");
  const items = [...menu.querySelectorAll("button")];
  let id = "";
  const seen = (): string[] => seenSheets(grid);
  const close = (): void => {
    const hadKeys = menu.contains(document.activeElement);
    menu.hidden = true;
    if (hadKeys) focusGrid(grid);
  };
  const open = (tab: HTMLElement): void => {
    id = tab.dataset["id"]!;
    const at = seen().indexOf(id);
    for (const item of items)
      item.disabled = (item.value === "left" && at === 0) || (item.value === "right" && at === seen().length - 1);
    menu.hidden = false;
    const { left, top } = tab.getBoundingClientRect();
    menu.style.left = `${Math.max(4, Math.min(left, innerWidth - menu.offsetWidth - 4))}px`;
    menu.style.top = `${Math.max(4, top - menu.offsetHeight - 4)}px`;
    items[0]!.focus();
  };
  const ofId = (sheet: string): HTMLElement | null => tabOf(document.querySelector(`${TAB}[data-id="${sheet}"]`));
  /** Once the tab is drawn as that of the sheet in front, for the library renames no other. */
  const inFront = (tab: HTMLElement, go: (tab: HTMLElement) => void, looks = 60): void => {
    const now = ofId(tab.dataset["id"]!);
    if (!now || looks === 0) return;
    if (now.ariaSelected === "true") setTimeout(go, 0, now);
    else requestAnimationFrame(() => inFront(tab, go, looks - 1));
  };
  const ways: Record<string, () => void> = {
    add: () => tabs.add(),
    rename: () => void commands.executeCommand(RenameSheetOperation.id, { subUnitId: id }),
    left: () => tabs.move(id, seen().indexOf(id) - 1),
    right: () => tabs.move(id, seen().indexOf(id) + 1),
    delete: () => tabs.delete(id),
  };
  // The library takes a second press within 300 ms for a double one; where the name is done within half a second of it, it
  // then drags the tab. So the second press is kept from it, and the browser tells what is double.
  let pressed: { tab: HTMLElement; at: number } | undefined;
  const keepSecondPress = (event: PointerEvent): void => {
    const tab = tabOf(event.target);
    if (!tab || tab.querySelector("[contenteditable]") || event.button !== 0) return;
    // By the library's own clock, for a press that is held later than that drags the tab.
    const at = Date.now();
    if (pressed?.tab === tab && at - pressed.at <= 300) event.stopPropagation();
    pressed = { tab, at };
  };
  part("grid").addEventListener("pointerdown", keepSecondPress, true);
  part("grid").addEventListener("dblclick", (event) => {
    const tab = tabOf(event.target);
    if (tab && !tab.querySelector("[contenteditable]")) inFront(tab, ways["rename"]!);
  });
  // Whoever points at a tab goes on typing in its sheet; by keys the tab is left as any other part of the page.
  part("grid").addEventListener("click", (event) => {
    const tab = tabOf(event.target);
    if (tab && event.detail === 1 && !tab.querySelector("[contenteditable]")) focusGrid(grid);
  });
  part("grid").addEventListener("contextmenu", (event) => {
    const tab = tabOf(event.target);
    if (!tab || tab.querySelector("[contenteditable]")) return;
    event.preventDefault();
    inFront(tab, open);
  });
  part("grid").addEventListener("keydown", (event) => {
    const tab = tabOf(event.target);
    const isMenuKey = event.key === "ContextMenu" || (event.key === "F10" && event.shiftKey);
    if (!isMenuKey || !tab) return;
    event.preventDefault();
    showSheet(grid, tab.dataset["id"]!);
    inFront(tab, open);
  });
  menu.addEventListener("click", (event) => {
    const item = (event.target as HTMLElement).closest("button");
    if (!item) return;
    close();
    ways[item.value]!();
  });
  menu.addEventListener("keydown", (event) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (event.key === "Escape" || event.key === "Tab") {
      close();
      ofId(id)?.focus();
    } else if (step !== undefined) {
      const usable = items.filter(({ disabled }) => !disabled);
      const at = usable.indexOf(document.activeElement as HTMLButtonElement);
      usable[(at + step + usable.length) % usable.length]!.focus();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  });
  addEventListener("pointerdown", ({ target }) => !menu.contains(target as Node) && close(), true);
  addEventListener("resize", close);
}

const TAB = '#grid [data-u-comp="slide-tab-item"]';

export const tabOf = (target: EventTarget | null): HTMLElement | null =>
  target instanceof Element ? target.closest<HTMLElement>(TAB) : null;
