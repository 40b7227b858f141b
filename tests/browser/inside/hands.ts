import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY, ICommandService, RedoCommand, UndoCommand, type IRange } from "@univerjs/core";
import { IEditorService } from "@univerjs/docs-ui";
import {
  AutoFillCommand,
  ClearSelectionContentCommand,
  InsertSheetCommand,
  RemoveSheetCommand,
  SetColWidthCommand,
  SetWorksheetNameCommand,
  SetWorksheetOrderCommand,
} from "@univerjs/sheets";
import { ISheetClipboardService, SheetPasteShortKeyCommand } from "@univerjs/sheets-ui";
import type { Started } from "./agreement";

/** What a person does in the page, done from inside of it, through what the page's own keys and handles call. */
export type Hands = ReturnType<typeof hands>;

/** What was copied last. */
interface Clipboard {
  text: string;
  html: string;
}

export function hands({ grid }: Started) {
  const injector = grid.univer.__getInjector();
  const commands = injector.get(ICommandService);
  const book = () => grid.api.getActiveWorkbook()!;
  const clipboard: Clipboard = { text: "", html: "" };
  keepClipboard(clipboard);
  const run = (id: string, params?: object) => commands.executeCommand(id, params);
  return {
    clipboard,
    run,
    undo: () => run(UndoCommand.id),
    redo: () => run(RedoCommand.id),
    clear: () => run(ClearSelectionContentCommand.id),
    select: (range: IRange) => void book().getActiveSheet().getRange(range).activate(),
    async type(text: string) {
      book().startEditing();
      injector.get(IEditorService).getEditor(DOCS_NORMAL_EDITOR_UNIT_ID_KEY)!.replaceText(text);
      await book().endEditingAsync(true);
    },
    async copy() {
      await injector.get(ISheetClipboardService).copy();
    },
    async paste({ text, html }: Partial<Clipboard> = clipboard) {
      await run(SheetPasteShortKeyCommand.id, { textContent: text, htmlContent: html });
      // What comes from elsewhere is put in a moment later.
      await new Promise((resolve) => setTimeout(resolve));
    },
    fill: (sourceRange: IRange, targetRange: IRange, applyType?: string) =>
      run(AutoFillCommand.id, {
        sourceRange,
        targetRange,
        ...(applyType ? { applyType } : {}),
        unitId: book().getId(),
        subUnitId: book().getActiveSheet().getSheetId(),
      }),
    widen: (column: number, value: number) =>
      run(SetColWidthCommand.id, {
        ranges: [{ startRow: 0, endRow: 0, startColumn: column, endColumn: column }],
        value,
      }),
    async sheet(at: number) {
      const sheets = book().getSheets();
      book().setActiveSheet(sheets[at % sheets.length]!);
    },
    addSheet: () => run(InsertSheetCommand.id),
    renameSheet: (subUnitId: string, name: string) => run(SetWorksheetNameCommand.id, { subUnitId, name }),
    moveSheet: (subUnitId: string, order: number) => run(SetWorksheetOrderCommand.id, { subUnitId, order }),
    deleteSheet: (subUnitId: string) => run(RemoveSheetCommand.id, { subUnitId }),
    insert: (formula: string) => window.spreadsheetHost!.then((host) => host.insertFormula(formula)),
  };
}

/** The test has a clipboard of its own, which nobody else on the machine writes to. */
function keepClipboard(own: Clipboard): void {
  Object.assign(navigator.clipboard, {
    async write([item]: ClipboardItem[]) {
      own.text = await (await item!.getType("text/plain")).text();
      own.html = await (await item!.getType("text/html")).text();
    },
    read: async () => [
      new ClipboardItem({
        "text/plain": new Blob([own.text], { type: "text/plain" }),
        ...(own.html ? { "text/html": new Blob([own.html], { type: "text/html" }) } : {}),
      }),
    ],
  });
}
