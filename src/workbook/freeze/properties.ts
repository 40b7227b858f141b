import { applyEdits, type Edit } from "../text-edits";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { escapeAttribute, escapeText, readXml, type Tag } from "../xlsx/xml";

/** Sets texts among the file's properties that have names of their own (ECMA-376, 22.3); others stay. */
export function setProperties(
  { source }: OpenWorkbook,
  draft: PackageDraft,
  values: Readonly<Record<string, string>>,
): void {
  const known = source.linked("", "custom-properties");
  const part = known ?? freePart(draft);
  const before = known === undefined ? EMPTY : draft.text(known);
  const after = withProperties(before, part, values);
  if (known !== undefined) return draft.set(known, after);
  draft.add(part, after);
  const types = "[Content_Types].xml";
  insert(draft, types, "Types", `Override PartName="/${part}" ContentType="${TYPE}"`);
  const list = "_rels/.rels";
  insert(draft, list, "Relationships", `Relationship Id="${freeId(draft.text(list))}" Type="${LINK}" Target="${part}"`);
}

const TYPE = "application/vnd.openxmlformats-officedocument.custom-properties+xml";
const LINK = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/custom-properties";
const VALUES = "http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes";
const SPACE = "http://schemas.openxmlformats.org/officeDocument/2006/custom-properties";
const EMPTY = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Properties xmlns="${SPACE}"></Properties>`;
/** The kind that all properties of one's own have (MS-OLEPS, FMTID_UserDefinedProperties). */
const FORMAT = "{D5CDD505-2E9C-101B-9397-08002B2CF9AE}";

function withProperties(text: string, part: string, values: Readonly<Record<string, string>>): string {
  const edits: Edit[] = [];
  let pid = 1;
  let root: Tag | undefined;
  let inner = 0;
  let old: number | undefined;
  let depth = 0;
  readXml(text, part, {
    open(tag) {
      if (depth++ === 0) root = tag;
      if (tag.name !== "property") return;
      pid = Math.max(pid, Number(tag.attributes.pid) || 1);
      if ((tag.attributes.name ?? "") in values) old = tag.start;
    },
    close(name, _prefix, start, end) {
      if (--depth === 0) inner = start;
      if (name === "property" && old !== undefined) edits.push({ start: old, end, text: "" });
      if (name === "property") old = undefined;
    },
  });
  const { prefix } = root!;
  const added = Object.entries(values)
    .map(
      ([name, value]) =>
        `<${prefix}property fmtid="${FORMAT}" pid="${++pid}" name="${escapeAttribute(name)}">` +
        `<vt:lpwstr xmlns:vt="${VALUES}">${escapeText(value)}</vt:lpwstr></${prefix}property>`,
    )
    .join("");
  if (!root!.selfClosing) return applyEdits(text, [...edits, { start: inner, end: inner, text: added }]);
  const opened = text.slice(root!.start, root!.end).replace(/\s*\/>$/, ">");
  return applyEdits(text, [{ start: root!.start, end: root!.end, text: `${opened}${added}</${prefix}${root!.name}>` }]);
}

function freePart(draft: PackageDraft): string {
  let part = "docProps/custom.xml";
  for (let i = 1; draft.has(part); i++) part = `docProps/custom${i}.xml`;
  return part;
}

function insert(draft: PackageDraft, part: string, list: string, element: string): void {
  const end = new RegExp(`</([\\w.-]+:)?${list}\\s*>`);
  draft.set(
    part,
    draft.text(part).replace(end, (tag, prefix = "") => `<${prefix}${element}/>${tag}`),
  );
}

function freeId(text: string): string {
  let id = 1;
  while (text.includes(`"rId${id}"`)) id++;
  return `rId${id}`;
}
