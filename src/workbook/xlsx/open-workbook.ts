import type { Area } from "../address";
import type { Book } from "../engine/engine";
import { readDynamicMarks } from "./metadata";
import { Package } from "./package";
import { readSheet } from "./read-sheet";
import { sheetModel } from "./sheet-model";
import type { SheetText } from "./sheet-text";
import { readSharedStrings } from "./strings";
import { readTable } from "./tables";
import { readWorkbookPart, type WorkbookPart } from "./workbook-part";

/** A workbook's file, opened: what the engine works out, and the texts that its results are written into. */
export interface OpenWorkbook {
  source: Package;
  workbook: WorkbookPart;
  /** By the sheet's number; none for sheets without cells. */
  sheets: (SheetText | undefined)[];
  sharedStrings: string[];
  book: Book;
}

/** @throws FileFault where the bytes are no usable workbook */
export function openWorkbook(bytes: Uint8Array): OpenWorkbook {
  const source = Package.open(bytes);
  const workbook = readWorkbookPart(source);
  const textOf = (type: string) => {
    const part = source.linked(workbook.part, type);
    return part === undefined ? undefined : { text: source.text(part), part };
  };
  const strings = textOf("sharedStrings");
  const sharedStrings = strings ? readSharedStrings(strings.text, strings.part) : [];
  const metadata = textOf("sheetMetadata");
  const marks = metadata ? readDynamicMarks(metadata.text, metadata.part) : new Set<string>();
  const sheets = workbook.sheets.map(({ part, isWorksheet }) =>
    isWorksheet ? readSheet(source.text(part), part, marks) : undefined,
  );
  const book: Book = {
    sheets: sheets.map((sheet, i) => sheetModel(workbook.sheets[i]!.name, sheet, sharedStrings)),
    names: workbook.names,
    tables: [],
    date1904: workbook.date1904,
  };
  const tables = new Set<string>();
  sheets.forEach((sheet, i) => sheet && addTables(source, book, i, sheet, tables));
  return { source, workbook, sheets, sharedStrings, book };
}

/** @param read the tables' parts that have been read: one that is pointed to more often is one table all the same */
function addTables(source: Package, book: Book, index: number, sheet: SheetText, read: Set<string>): void {
  const filters: Area[] = book.sheets[index]!.filters;
  if (sheet.filter) filters.push(sheet.filter);
  for (const { type, target } of source.relationships(sheet.part)) {
    if (type !== "table" || read.has(target)) continue;
    read.add(target);
    const table = readTable(source.text(target), target);
    if (!table) continue;
    book.tables.push({ ...table, sheet: index });
    if (table.filter) filters.push(table.filter);
  }
}
