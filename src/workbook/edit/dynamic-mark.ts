import { addPart } from "../xlsx/add-part";
import { applyEdits, type Edit } from "../text-edits";
import { readDynamicMarks } from "../xlsx/metadata";
import { appended, readLists, type Counted } from "../xlsx/list-edits";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { readXml } from "../xlsx/xml";

/**
 * The value of `cm` that marks a formula which may spill. Where the workbook has no record of such formulas, one is
 * added, beside records of other kinds if there are any.
 */
export function provideDynamicMark(opened: OpenWorkbook, draft: PackageDraft): string {
  const { source, workbook } = opened;
  const part = source.linked(workbook.part, "sheetMetadata");
  if (part === undefined) {
    addPart(opened, draft, { name: "metadata", link: "sheetMetadata", type: "sheetMetadata", text: METADATA });
    return "1";
  }
  const text = source.text(part);
  const [known] = readDynamicMarks(text, part);
  if (known !== undefined) return known;
  const { text: recorded, mark } = withDynamicRecord(text, part);
  draft.set(part, recorded);
  return mark;
}

/** The lists of the part, in the order in which they must stand (CT_Metadata: ECMA-376, 18.9.10). */
const ORDER = [
  "metadataTypes",
  "metadataStrings",
  "mdxMetadata",
  "futureMetadata",
  "cellMetadata",
  "valueMetadata",
  "extLst",
];

/** Records of other kinds keep their numbers: the new one comes last in each list. */
function withDynamicRecord(text: string, part: string): { text: string; mark: string } {
  const { root, lists } = readLists(text, part);
  const types = typesOf(text, part);
  const { prefix } = root;
  if (root.selfClosing) {
    const opened = text.slice(0, root.end).replace(/\s*\/>$/, ">");
    return withDynamicRecord(`${opened}</${prefix}${root.name}>`, part);
  }
  const element = (name: string, inside: string, attributes = "") =>
    `<${prefix}${name}${attributes}>${inside}</${prefix}${name}>`;
  const edits: Edit[] = [];
  const add = (list: Counted | undefined, name: string, inside: string, attributes: string) => {
    if (list) return void edits.push(...appended(text, list, inside, list.items + 1));
    const at = lists.find((later) => ORDER.indexOf(later.name) > ORDER.indexOf(name))?.start ?? root.inner;
    edits.push({ start: at, end: at, text: element(name, inside, attributes) });
  };
  const named = (name: string) => lists.find((list) => list.name === name);
  let type = types.indexOf(KIND) + 1;
  if (type === 0) {
    type = types.push(KIND);
    add(named("metadataTypes"), "metadataTypes", RECORD_TYPE.replace("<", `<${prefix}`), ' count="1"');
  }
  const future = lists.find((list) => list.name === "futureMetadata" && list.attributes.name === KIND);
  if (!future?.items) {
    const record = element("bk", element("extLst", element("ext", PROPERTIES, ` uri="${URI}"`)));
    add(future, "futureMetadata", record, ` name="${KIND}" count="1"`);
  }
  const cells = named("cellMetadata");
  add(cells, "cellMetadata", element("bk", `<${prefix}rc t="${type}" v="0"/>`), ' count="1"');
  return { text: applyEdits(text, edits), mark: String((cells?.items ?? 0) + 1) };
}

function typesOf(text: string, part: string): string[] {
  const types: string[] = [];
  readXml(text, part, {
    open: ({ name, attributes }) => {
      if (name === "metadataType") types.push(attributes.name ?? "");
    },
  });
  return types;
}

const KIND = "XLDAPR";
const URI = "{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}";
const SPACE = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
const PROPERTIES = `<xda:dynamicArrayProperties xmlns:xda="${SPACE}" fDynamic="1" fCollapsed="0"/>`;
const RECORD_TYPE =
  `<metadataType name="${KIND}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" ` +
  'rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>';

/** The record of formulas that may spill, as the spreadsheet program writes it. */
export const METADATA =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  `<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="${SPACE}">` +
  `<metadataTypes count="1">${RECORD_TYPE}</metadataTypes>` +
  `<futureMetadata name="${KIND}" count="1"><bk><extLst><ext uri="${URI}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>` +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
