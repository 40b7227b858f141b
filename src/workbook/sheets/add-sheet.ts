import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { withAttributes } from "../xlsx/tag-text";
import { escapeAttribute, readXml } from "../xlsx/xml";
import { refuseLog } from "./change-log";
import { SheetFault } from "./sheet-edit";
import { updateTitles } from "./titles";
import { WorkbookText } from "./workbook-text";

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** Adds an empty sheet. What it is called in the file's own terms is taken from a sheet that is there. */
export function addSheet(opened: OpenWorkbook, draft: PackageDraft, name: string, place: number): void {
  refuseLog(opened);
  const { source, workbook } = opened;
  const like = workbook.sheets.find(({ isWorksheet }) => isWorksheet);
  if (!like) throw new SheetFault("The workbook has no sheet with cells that a new one could be like.");
  const folder = workbook.part.slice(0, workbook.part.lastIndexOf("/") + 1);
  const part = freePart(draft, folder);
  const link = addLink(draft, folder, workbook.part, part);
  addType(draft, part, source.contentType(like.part));
  draft.add(part, `${HEAD}<worksheet xmlns="${namespace(draft.text(like.part), like.part)}"><sheetData/></worksheet>`);

  const text = new WorkbookText(draft.text(workbook.part), workbook.part);
  const sheetId = Math.max(0, ...text.sheets.map(({ attributes }) => Number(attributes.sheetId) || 0)) + 1;
  const known = text.sheets[workbook.sheets.indexOf(like)]!;
  const idName = Object.keys(known.attributes).find((key) => key.endsWith(":id"))!;
  const tag = /^<[^\s/>]+/.exec(text.tag(workbook.sheets.indexOf(like)))![0];
  const element = withAttributes(`${tag}/>`, {
    name: escapeAttribute(name),
    sheetId: String(sheetId),
    [idName]: link,
  });
  const at = text.sheets[place]?.start ?? text.sheets.at(-1)!.end;
  const counted = text.renumbered((sheet) => (sheet >= place ? sheet + 1 : sheet));
  draft.set(workbook.part, text.with([...counted, { start: at, end: at, text: element }]));
  const before = workbook.sheets.slice(0, place).filter(({ isWorksheet }) => isWorksheet).length;
  updateTitles(source, draft, workbook.sheets, (titles) => titles.toSpliced(before, 0, name));
}

function freePart(draft: PackageDraft, folder: string): string {
  for (let i = 1; ; i++) {
    const part = `${folder}worksheets/sheet${i}.xml`;
    if (!draft.has(part)) return part;
  }
}

/** Has the workbook's main part point to the sheet, and gives the link's name. */
function addLink(draft: PackageDraft, folder: string, main: string, part: string): string {
  const list = `${folder}_rels/${main.slice(folder.length)}.rels`;
  const text = draft.text(list);
  const ids = new Set<string>();
  let type = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet";
  readXml(text, list, {
    open: ({ attributes }) => {
      if (attributes.Id !== undefined) ids.add(attributes.Id);
      if (attributes.Type?.endsWith("/worksheet")) type = attributes.Type;
    },
  });
  let id = 1;
  while (ids.has(`rId${id}`)) id++;
  const target = part.slice(folder.length);
  draft.set(
    list,
    text.replace(
      /<\/([\w.-]+:)?Relationships\s*>/,
      (end, prefix = "") => `<${prefix}Relationship Id="rId${id}" Type="${type}" Target="${target}"/>${end}`,
    ),
  );
  return `rId${id}`;
}

function addType(draft: PackageDraft, part: string, type: string): void {
  const list = "[Content_Types].xml";
  draft.set(
    list,
    draft
      .text(list)
      .replace(
        /<\/([\w.-]+:)?Types\s*>/,
        (end, prefix = "") => `<${prefix}Override PartName="/${part}" ContentType="${type}"/>${end}`,
      ),
  );
}

/** The namespace of a sheet's elements: there are two, one of each of the standard's classes. */
function namespace(text: string, part: string): string {
  let found = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  readXml(text, part, {
    open: ({ name, prefix, attributes }) => {
      if (name !== "worksheet") return;
      found = attributes[prefix ? `xmlns:${prefix.slice(0, -1)}` : "xmlns"] ?? found;
    },
  });
  return found;
}
