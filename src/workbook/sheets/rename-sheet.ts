import { sameName, withSheetRenamed } from "../formula/sheet-names";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { withAttributes } from "../xlsx/tag-text";
import { encodeEscapes, escapeAttribute } from "../xlsx/xml";
import { naming, refuseUnknown } from "./naming";
import { withReferences } from "./references";
import { updateTitles } from "./titles";
import { WorkbookText } from "./workbook-text";

/**
 * Gives a sheet another name, everywhere in the file.
 * @throws SheetFault where a part names it in a way that is not known here
 */
export function renameSheet(
  { source, workbook }: OpenWorkbook,
  draft: PackageDraft,
  at: number,
  name: string,
): (typed: string) => string {
  const old = workbook.sheets[at]!.name;
  const renamed = (formula: string) => withSheetRenamed(formula, old, name);
  for (const part of naming(draft, [old])) {
    const text = withReferences(draft.text(part), part, {
      formula: renamed,
      link: renamed,
      sheet: (sheet) => (sameName(sheet, old) ? name : sheet),
    });
    if (!sameName(name, old)) refuseUnknown(text, part, old);
    draft.set(part, text);
  }
  const text = new WorkbookText(draft.text(workbook.part), workbook.part);
  const { start, tagEnd } = text.sheets[at]!;
  const tag = withAttributes(text.tag(at), { name: escapeAttribute(encodeEscapes(name)) });
  draft.set(workbook.part, text.with([{ start, end: tagEnd, text: tag }]));
  updateTitles(
    source,
    draft,
    workbook.sheets,
    (titles) => titles.map((title) => (title === old ? name : title)),
    renamed,
  );
  return renamed;
}
