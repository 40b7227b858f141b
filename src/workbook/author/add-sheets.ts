import { provideDynamicMark } from "../edit/dynamic-mark";
import { applySheetEdit } from "../sheets/index";
import { withItems } from "../xlsx/list-edits";
import { openWorkbook } from "../xlsx/open-workbook";
import { PackageDraft } from "../xlsx/package-draft";
import { addStyles } from "./add-styles";
import type { WorkbookDefinition } from "./definition";
import { definedNames } from "./names-part";
import { ruleLooks } from "./rules-part";
import { sheetPart } from "./sheet-part";

/**
 * A workbook's file with more sheets behind its own, which stay as they are.
 * @param workbook whose sheets and names are not taken
 * @throws SheetFault where the workbook takes no sheet
 */
export function addSheets(bytes: Uint8Array, { sheets, styles, names = {} }: WorkbookDefinition): Uint8Array {
  const empty = sheets.reduce((before, { name }) => withEmptySheet(before, name), bytes);
  const opened = openWorkbook(empty);
  const { workbook, source } = opened;
  const draft = new PackageDraft(source);
  const mark = provideDynamicMark(opened, draft);
  const looks = ruleLooks(sheets);
  const first = addStyles(opened, draft, Object.values(styles), looks);
  const known = Object.keys(styles);
  const before = workbook.sheets.length - sheets.length;
  sheets.forEach((sheet, i) => {
    const { part } = workbook.sheets[before + i]!;
    const written = sheetPart(
      sheet,
      (style) => first.style + known.indexOf(style),
      (look) => first.look + looks.indexOf(look),
      mark,
    );
    draft.set(part, written.replace(SPACE, SPACE.exec(draft.text(part))![0]));
  });
  const all = definedNames(sheets, names, before);
  const main = withItems(draft.text(workbook.part), workbook.part, { definedNames: all }, ORDER, false);
  draft.set(workbook.part, main);
  return draft.bytes();
}

function withEmptySheet(bytes: Uint8Array, name: string): Uint8Array {
  const opened = openWorkbook(bytes);
  const ids = opened.workbook.sheets.map((sheet) => sheet.name);
  return applySheetEdit(opened, ids, { kind: "add", id: name, name }).bytes;
}

/** The namespace of a sheet's elements: a file of the standard's other class has another one. */
const SPACE = /xmlns="[^"]*"/;

/** What stands in a workbook's main part, up to what comes behind its names (CT_Workbook: ECMA-376, 18.2.27). */
const ORDER = (
  "fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences " +
  "definedNames calcPr oleSize customWorkbookViews pivotCaches smartTagPr smartTagTypes webPublishing fileRecoveryPr " +
  "webPublishObjects extLst"
).split(" ");
