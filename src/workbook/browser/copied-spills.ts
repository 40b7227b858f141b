import { ISheetClipboardService } from "@univerjs/sheets-ui";
import { contains } from "../address";
import type { OpenInGrid } from "./session";
import { sheetIndex } from "./snapshot";
import type { Grid } from "./univer";

/** The library copies what is written into cells; what a formula has spilled into them is copied as it is shown. */
export function copySpills({ univer, api }: Grid, open: () => OpenInGrid): void {
  univer
    .__getInjector()
    .get(ISheetClipboardService)
    .addClipboardHook({
      id: "copy-spills",
      getCellValueBySpecialMatrix(row, column) {
        const sheet = api.getActiveWorkbook()?.getActiveSheet()?.getSheet();
        if (!sheet || sheet.getCellRaw(row, column)) return undefined;
        const index = sheetIndex(sheet.getSheetId());
        for (const { sheet: on, area } of open().book.results.spills.values())
          if (on === index && contains(area, row, column)) return sheet.getCell(row, column) ?? undefined;
        return undefined;
      },
    });
}
