import { withoutSheet } from "../formula/sheet-names";
import { readXml } from "../xlsx/xml";
import { shortenCalcChain } from "../xlsx/calc-chain";
import { dropParts } from "../xlsx/drop-parts";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { refuseLog } from "./change-log";
import { naming } from "./naming";
import { withReferences } from "./references";
import { SheetFault } from "./sheet-edit";
import { updateTitles } from "./titles";
import { WorkbookText } from "./workbook-text";

/**
 * Takes a sheet out, with the parts that nothing else needs; what refers to it becomes `#REF!`.
 * @throws SheetFault where the workbook would be left without a sheet to see, or with macros that miss it
 */
export function deleteSheet(opened: OpenWorkbook, draft: PackageDraft, at: number): (typed: string) => string {
  const { source, workbook, book } = opened;
  const { sheets } = workbook;
  const text = new WorkbookText(draft.text(workbook.part), workbook.part);
  const isVisible = (sheet: number) => (text.sheets[sheet]?.attributes.state ?? "visible") === "visible";
  const others = sheets.map((_, i) => i).filter((i) => i !== at);
  if (!others.some(isVisible)) throw new SheetFault("A workbook keeps at least one sheet that is not hidden.");
  if (source.relationships(workbook.part).some(({ type }) => type === "vbaProject"))
    throw new SheetFault("The workbook holds macros, which belong to its sheets; no sheet is deleted from it here.");
  refuseLog(opened);
  refuseSlicers(opened, draft, at);

  const { name, part, sheetId } = sheets[at]!;
  const order = sheets.map((sheet) => sheet.name);
  const tables = book.tables.filter(({ sheet }) => sheet === at).map((table) => table.name);
  const without = (formula: string) => withoutSheet(formula, name, order, tables);
  const place = (sheet: number) => (sheet === at ? undefined : sheet > at ? sheet - 1 : sheet);
  const inFront = others.find((sheet) => sheet > at && isVisible(sheet)) ?? others.filter(isVisible).at(-1)!;
  const { start, end } = text.sheets[at]!;
  const views = text.customViews(sheetId, sheets[inFront]!.sheetId);
  draft.set(workbook.part, text.with([{ start, end, text: "" }, ...text.renumbered(place, place(inFront)), ...views]));

  dropParts(source, draft, workbook.part, part);
  for (const referring of naming(draft, [name, ...tables])) {
    const changed = withReferences(draft.text(referring), referring, {
      formula: without,
      series: (formula) => (without(formula) === formula ? formula : "#REF!"),
    });
    draft.set(referring, changed);
  }
  shortenCalcChain(opened, draft, (id) => id === sheetId);
  updateTitles(
    source,
    draft,
    sheets,
    (titles) => titles.filter((title) => title !== name),
    (title) => (without(title) === title ? title : undefined),
  );
  return without;
}

/**
 * Slicers and timelines are known to the workbook by the number of the sheet whose pivot table they filter, or by that of a
 * table, in a part of their own, which would then count something that is not there.
 * @throws SheetFault
 */
function refuseSlicers({ source, workbook }: OpenWorkbook, draft: PackageDraft, at: number): void {
  const { name, part, sheetId } = workbook.sheets[at]!;
  const links = source.relationships(part);
  const tables = links.flatMap(({ type, target }) => (type === "table" ? idsIn(draft, target) : []));
  const isOn = (cache: string): boolean => {
    let found = false;
    readXml(draft.text(cache), cache, {
      open: ({ attributes: { tabId, tableId } }) => {
        found ||= tabId === sheetId || (tableId !== undefined && tables.includes(tableId));
      },
    });
    return found;
  };
  const caches = source.relationships(workbook.part).filter(({ type }) => /^(?:slicer|timeline)Cache$/.test(type));
  if (links.some(({ type }) => /^(?:slicer|timeline)$/.test(type)) || caches.some(({ target }) => isOn(target)))
    throw new SheetFault(
      `The sheet ${name} stays: slicers or timelines filter what is on it. Take them away in the spreadsheet program first.`,
    );
}

function idsIn(draft: PackageDraft, table: string): string[] {
  const ids: string[] = [];
  if (draft.has(table))
    readXml(draft.text(table), table, {
      open: ({ name, attributes }) => {
        if (name === "table" && attributes.id !== undefined) ids.push(attributes.id);
      },
    });
  return ids;
}
