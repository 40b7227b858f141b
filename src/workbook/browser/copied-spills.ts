import { ISheetClipboardService } from "@univerjs/sheets-ui";
import { cellData, contentOfGrid } from "./cell-data";
import type { OpenInGrid } from "./session";
import type { Grid } from "./univer";
import { valueAt } from "./worker/results";

/**
 * The library copies what is written into cells. What a formula has spilled into them is copied too: its value for this
 * grid, and for others the text that is shown.
 */
export function copySpills({ univer, api }: Grid, open: () => OpenInGrid): void {
  univer
    .__getInjector()
    .get(ISheetClipboardService)
    .addClipboardHook({
      id: "copy-spills",
      getCellValueBySpecialMatrix(row, column) {
        const sheet = api.getActiveWorkbook()?.getActiveSheet()?.getSheet();
        if (!sheet) return undefined;
        const raw = sheet.getCellRaw(row, column) || undefined;
        // A cell that has looks, or was emptied once, is there and holds nothing.
        if (contentOfGrid(raw, raw?.f || raw?.si || undefined) !== null) return undefined;
        const value = valueAt(open().book.results, sheet.getSheetId(), row, column);
        if (value === null) return undefined;
        return { ...cellData(value), displayV: String(sheet.getCell(row, column)?.v ?? "") };
      },
    });
}
