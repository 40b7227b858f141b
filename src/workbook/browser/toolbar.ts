import { ICommandService, IUndoRedoService, RedoCommand, UndoCommand } from "@univerjs/core";
import { focusGrid } from "./focus-grid";
import { part } from "./part";
import { goOn } from "./regions";
import { goToSheet } from "./seen-sheets";
import type { Grid } from "./univer";
import type { Work } from "./work";

/** What the toolbar sets going. */
export interface Actions {
  open(file: File): void;
  save(): void;
  example(): void;
  begin(): void;
  print(): void;
  freeze(): void;
  shopPages(): void;
}

/** Makes the buttons, their keys and the browser's own question on leaving work. */
export function toolbar(grid: Grid, work: Work, actions: Actions): void {
  undoButtons(grid);
  const chooser = part<HTMLInputElement>("chooser");
  chooser.addEventListener("change", () => {
    const [file] = chooser.files ?? [];
    if (file) actions.open(file);
    chooser.value = "";
  });
  part("open").addEventListener("click", () => unlessUnsaved(work, () => chooser.click()));
  part("new").addEventListener("click", () => unlessUnsaved(work, actions.begin));
  part("example").addEventListener("click", () => unlessUnsaved(work, actions.example));
  part("save").addEventListener("click", actions.save);
  part("print").addEventListener("click", actions.print);
  part("freeze").addEventListener("click", actions.freeze);
  part("shop-pages").addEventListener("click", actions.shopPages);
  addEventListener("beforeunload", (event) => {
    if (!work.isSaved) event.preventDefault();
  });
  const frame = part("pane").querySelector("iframe")!;
  const listener = (event: KeyboardEvent): void => onKey(event, grid);
  addEventListener("keydown", listener, true);
  // Keys that are pressed in the pane stay in its frame.
  frame.addEventListener("load", () => frame.contentWindow!.addEventListener("keydown", listener, true));
  frame.contentWindow!.addEventListener("keydown", listener, true);
}

function onKey(event: KeyboardEvent, grid: Grid): void {
  if (event.key === "F6") return goOn(event, grid, event.shiftKey ? -1 : 1);
  if (event.key === "F1") {
    event.preventDefault();
    const help = part<HTMLDialogElement>("keys-help");
    if (!document.querySelector("dialog[open]")) help.showModal();
    return;
  }
  const step = { PageUp: -1, PageDown: 1 }[event.key] as 1 | -1 | undefined;
  // With Alt too, for a browser may keep the others for its own tabs.
  if (step && event.ctrlKey && !event.shiftKey && !document.querySelector("dialog[open]")) {
    event.preventDefault();
    event.stopPropagation();
    return goToSheet(grid, step);
  }
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return;
  const button = BUTTONS.get(event.key.toLowerCase());
  if (!button) return;
  event.preventDefault();
  part(button).click();
}

const BUTTONS = new Map([
  ["o", "open"],
  ["s", "save"],
  ["p", "print"],
]);

function undoButtons(grid: Grid): void {
  const injector = grid.univer.__getInjector();
  const commands = injector.get(ICommandService);
  const [undo, redo] = [part<HTMLButtonElement>("undo"), part<HTMLButtonElement>("redo")];
  undo.addEventListener("click", () => void commands.executeCommand(UndoCommand.id));
  redo.addEventListener("click", () => void commands.executeCommand(RedoCommand.id));
  injector.get(IUndoRedoService).undoRedoStatus$.subscribe(({ undos, redos }) => {
    const hadKeys = [undo, redo].find((button) => button === document.activeElement);
    undo.disabled = undos === 0;
    redo.disabled = redos === 0;
    if (hadKeys?.disabled) focusGrid(grid);
  });
}

/** Goes on at once where all work is saved, and asks first where it is not. */
export function unlessUnsaved(work: Work, go: () => void, stay: () => void = () => undefined): void {
  if (work.isSaved) return go();
  const ask = part<HTMLDialogElement>("ask");
  if (ask.open) return stay();
  part("ask-name").textContent = work.name;
  ask.returnValue = "keep";
  ask.addEventListener("close", () => (ask.returnValue === "leave" ? go() : stay()), { once: true });
  ask.showModal();
}
