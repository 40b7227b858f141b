import { withoutSheet } from "../formula/sheet-names";
import { shortenCalcChain } from "../xlsx/calcChain";
import { dropParts } from "../xlsx/drop-parts";
import type { OpenWorkbook } from "../xlsx/openWorkbook";
import type { PackageDraft } from "../xlsx/package-draft";
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

  const { name, part, sheetId } = sheets[at]!;
  const order = sheets.map((sheet) => sheet.name);
  const tables = book.tables.filter(({ sheet }) => sheet === at).map((table) => table.name);
  const without = (formula: string) => withoutSheet(formula, name, order, tables);
  const place = (sheet: number) => (sheet === at ? undefined : sheet > at ? sheet - 1 : sheet);
  const inFront = others.find((sheet) => sheet > at && isVisible(sheet)) ?? others.filter(isVisible).at(-1)!;
  const { start, end } = text.sheets[at]!;
  draft.set(workbook.part, text.with([{ start, end, text: "" }, ...text.renumbered(place, place(inFront))]));

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
