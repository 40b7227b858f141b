import type { OpenWorkbook } from "../xlsx/open-workbook";
import { SheetFault } from "./sheet-edit";

/**
 * A workbook that several people changed at once, in the program's older way, keeps a log, which counts the sheets.
 * @throws SheetFault
 */
export function refuseLog({ source, workbook }: OpenWorkbook): void {
  if (source.relationships(workbook.part).some(({ type }) => type === "revisionHeaders"))
    throw new SheetFault(
      "The workbook is shared in the older way and keeps a log of all changes; no sheet is added or deleted in it here.",
    );
}
