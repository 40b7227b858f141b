import { applyEdits, type Edit } from "../text-edits";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { withAttributes } from "../xlsx/tag-text";
import { decodeEscapes, readXml, type Tag } from "../xlsx/xml";
import { NeedsReader } from "./needs";

/**
 * Takes rules about looks and entries out whose formulas cannot stay, with the lists that are empty then; the later kinds
 * in a sheet's extensions too.
 * @param only the sheet that stands alone
 */
export function withoutRules(opened: OpenWorkbook, draft: PackageDraft, only: number | undefined): void {
  const reader = new NeedsReader(opened.book);
  opened.sheets.forEach((sheet, i) => {
    if (!sheet || (only !== undefined && i !== only)) return;
    const isGone = (formula: string): boolean => {
      const { addIn, elsewhere } = reader.of(formula, i);
      return addIn || (elsewhere && only !== undefined);
    };
    draft.set(sheet.part, without(draft.text(sheet.part), sheet.part, isGone));
  });
}

const RULES = new Set(["cfRule", "dataValidation"]);
const FORMULAS = new Set(["formula", "formula1", "formula2", "f"]);
/** What may not stand there empty. */
const LISTS = new Set("conditionalFormatting conditionalFormattings dataValidations ext extLst".split(" "));

interface Element {
  tag: Tag;
  text: string;
  kept: number;
  gone: number;
  edits: Edit[];
}

function without(text: string, part: string, isGone: (formula: string) => boolean): string {
  const open: Element[] = [];
  let edits: Edit[] = [];
  let rule: { isGone: boolean } | undefined;
  readXml(text, part, {
    open(tag) {
      open.push({ tag, text: "", kept: 0, gone: 0, edits: [] });
      if (RULES.has(tag.name)) rule = { isGone: false };
    },
    text(found) {
      if (rule) open.at(-1)!.text += found;
    },
    close(name, _prefix, _start, end) {
      const element = open.pop()!;
      const parent = open.at(-1);
      if (rule && FORMULAS.has(name) && isGone(decodeEscapes(element.text))) rule.isGone = true;
      const goes = RULES.has(name) ? rule!.isGone : LISTS.has(name) && element.gone > 0 && element.kept === 0;
      if (RULES.has(name)) rule = undefined;
      if (goes) element.edits = [{ start: element.tag.start, end, text: "" }];
      else if (element.gone > 0 && "count" in element.tag.attributes) {
        const { start, end: tagEnd } = element.tag;
        const tag = withAttributes(text.slice(start, tagEnd), { count: String(element.kept) });
        element.edits.push({ start, end: tagEnd, text: tag });
      }
      if (!parent) return void (edits = element.edits);
      if (goes) parent.gone++;
      else if (name !== "sqref") parent.kept++;
      parent.edits.push(...element.edits);
    },
  });
  return applyEdits(text, edits);
}
