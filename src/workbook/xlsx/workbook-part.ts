import { FileFault } from "./fault";
import type { Package } from "./package";
import { decodeEscapes, readXml } from "./xml";

export interface SheetEntry {
  name: string;
  /** The number that calcChain knows it by. */
  sheetId: string;
  part: string;
  /** A sheet of cells; charts and dialogs have none. */
  isWorksheet: boolean;
}

export interface WorkbookPart {
  part: string;
  sheets: SheetEntry[];
  names: { name: string; text: string; sheet?: number }[];
  date1904: boolean;
}

/** Finds the workbook's main part through the archive's relationships, and what it lists. */
export function readWorkbookPart(source: Package): WorkbookPart {
  const main = source.relationships("").find(({ type }) => type === "officeDocument");
  if (!main) throw notAWorkbook(source);
  const type = source.contentType(main.target);
  if (/binary/i.test(type)) throw new FileFault("The file is a binary .xlsb workbook; save it as .xlsx first.");
  if (!/(sheet|template|addin)\.(main|macroEnabled\.main)\+xml$/i.test(type)) throw notAWorkbook(source);
  const result: WorkbookPart = { part: main.target, sheets: [], names: [], date1904: false };
  const targets = new Map(source.relationships(main.target).map((found) => [found.id, found]));
  let named: { name: string; text: string; sheet?: number } | undefined;
  readXml(source.text(main.target), main.target, {
    open({ name, attributes }) {
      if (name === "workbookPr") result.date1904 = isTrue(attributes.date1904);
      if (name === "sheet") result.sheets.push(sheetEntry(attributes, targets));
      if (name === "definedName")
        named = { name: attributes.name ?? "", text: "", sheet: numberOf(attributes.localSheetId) };
    },
    text: (text) => {
      if (named) named.text += text;
    },
    close(name) {
      if (name !== "definedName" || !named) return;
      result.names.push({ ...named, text: decodeEscapes(named.text) });
      named = undefined;
    },
  });
  // Each would be read anew, a thousand times over if it is listed so often.
  const listed = new Set<string>();
  for (const { name, part } of result.sheets) {
    if (listed.has(part))
      throw new FileFault(`The workbook lists its sheet “${name}” and another as one and the same part.`);
    listed.add(part);
  }
  if (result.sheets.length === 0) throw new FileFault("The workbook has no sheets.");
  return result;
}

function sheetEntry(
  attributes: Record<string, string>,
  targets: Map<string, { type: string; target: string }>,
): SheetEntry {
  const id = Object.entries(attributes).find(([key]) => key.endsWith(":id"))?.[1] ?? "";
  const found = targets.get(id);
  if (!found) throw new FileFault(`The workbook lists the sheet “${attributes.name}”, which it does not contain.`);
  return {
    name: decodeEscapes(attributes.name ?? ""),
    sheetId: attributes.sheetId ?? "",
    part: found.target,
    isWorksheet: found.type === "worksheet",
  };
}

function notAWorkbook(source: Package): FileFault {
  if (source.has("mimetype") && source.has("content.xml")) {
    return new FileFault("The file is an OpenDocument file; save it as .xlsx first.");
  }
  return new FileFault("The file is no .xlsx workbook.");
}

export function isTrue(value: string | undefined): boolean {
  return value === "1" || value === "true" || value === "on";
}

function numberOf(value: string | undefined): number | undefined {
  return value === undefined ? undefined : Number(value);
}
