import { part } from "./part";
import type { SheetTabs } from "./sheet-tabs";
import { tabOf } from "./tab-menu";

/**
 * A name that is typed into a tab goes to the workbook, which takes it or says why not; until then the tab keeps the name
 * that it had. The library would ask in a window of its own, and leave the tab with neither name behind it.
 */
export function tabNames(tabs: Pick<SheetTabs, "rename">, nameOf: (id: string) => string): void {
  const typed = ({ target }: Event): [label: HTMLElement, tab: HTMLElement] | undefined => {
    const tab = tabOf(target);
    const label = tab?.querySelector<HTMLElement>("[contenteditable]");
    return tab && label ? [label, tab] : undefined;
  };
  const take = (event: FocusEvent): void => {
    const [label, tab] = typed(event) ?? [];
    if (!label || !tab) return;
    const id = tab.dataset["id"]!;
    const [old, name] = [nameOf(id), label.innerText.replaceAll("\u00a0", " ").replaceAll("\n", "")];
    label.textContent = old;
    if (name !== old) tabs.rename(id, name);
  };
  // Escape gives a tab its name back, which the library would not.
  const leave = (event: KeyboardEvent): void => {
    const [label, tab] = typed(event) ?? [];
    if (event.key !== "Escape" || !label || !tab) return;
    event.preventDefault();
    event.stopPropagation();
    label.textContent = nameOf(tab.dataset["id"]!);
    label.blur();
    tab.focus();
  };
  part("grid").addEventListener("focusout", take, true);
  addEventListener("keydown", leave, true);
}
