import type { OpenWorkbook } from "./open-workbook";
import type { PackageDraft } from "./package-draft";
import { readXml } from "./xml";

/** A part to be added: the folder and name that it has beside the workbook's main part, if it is free, and its kind. */
export interface NewPart {
  /** Without `.xml`. */
  name: string;
  /** The last word of the relationship's type, and of the content type. */
  link: string;
  type: string;
  text: string;
}

/** Adds a part that the workbook's main part points to, with its content type. */
export function addPart({ workbook }: OpenWorkbook, draft: PackageDraft, { name, link, type, text }: NewPart): void {
  const folder = workbook.part.slice(0, workbook.part.lastIndexOf("/") + 1);
  let part = `${folder}${name}.xml`;
  for (let i = 1; draft.has(part); i++) part = `${folder}${name}${i}.xml`;
  draft.add(part, text);
  const types = "[Content_Types].xml";
  const kind = `Override PartName="/${part}" ContentType="${TYPE}${type}+xml"`;
  draft.set(types, inserted(draft.text(types), "Types", kind));
  const list = `${folder}_rels/${workbook.part.slice(folder.length)}.rels`;
  const links = draft.text(list);
  const target = part.slice(folder.length);
  const element = `Relationship Id="${freeId(links, list)}" Type="${LINK}${link}" Target="${target}"`;
  draft.set(list, inserted(links, "Relationships", element));
}

const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
const LINK = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";

/** An element put behind the others of a list. */
function inserted(text: string, list: string, element: string): string {
  const end = new RegExp(`</([\\w.-]+:)?${list}\\s*>`);
  return text.replace(end, (tag, prefix = "") => `<${prefix}${element}/>${tag}`);
}

function freeId(text: string, list: string): string {
  const ids = new Set<string>();
  readXml(text, list, {
    open: ({ attributes }) => {
      if (attributes.Id !== undefined) ids.add(attributes.Id);
    },
  });
  let id = 1;
  while (ids.has(`rId${id}`)) id++;
  return `rId${id}`;
}
