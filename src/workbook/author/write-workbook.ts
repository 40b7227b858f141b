import { strToU8, zipSync } from "fflate";
import { METADATA } from "../edit/dynamic-mark";
import { escapeText } from "../xlsx/xml";
import type { WorkbookDefinition } from "./definition";
import { definedNames } from "./names-part";
import { ruleLooks } from "./rules-part";
import { sheetPart } from "./sheet-part";
import { stylesPart } from "./styles-part";

/** Writes a workbook out as the bytes of an .xlsx file. The same definition gives the same bytes. */
export function writeWorkbook({ sheets, styles, names: defined = {} }: WorkbookDefinition): Uint8Array {
  const names = Object.keys(styles);
  const styleNumber = (style: string): number => names.indexOf(style) + 1;
  const looks = ruleLooks(sheets);
  const parts: Record<string, string> = {
    "[Content_Types].xml": contentTypes(sheets.length),
    "_rels/.rels": relationships([["officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": workbookPart(sheets, defined),
    "xl/_rels/workbook.xml.rels": relationships([
      ...sheets.map((_, i): [string, string] => ["worksheet", `worksheets/sheet${i + 1}.xml`]),
      ["styles", "styles.xml"],
      ["sheetMetadata", "metadata.xml"],
    ]),
    "xl/styles.xml": stylesPart(Object.values(styles), looks),
    "xl/metadata.xml": METADATA,
  };
  sheets.forEach((sheet, i) => {
    parts[`xl/worksheets/sheet${i + 1}.xml`] = sheetPart(sheet, styleNumber, (look) => looks.indexOf(look));
  });
  const packed = Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)]));
  return zipSync(packed, { mtime: new Date(1980, 0, 1) });
}

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const SHEET_ML = "application/vnd.openxmlformats-officedocument.spreadsheetml";

function contentTypes(sheets: number): string {
  const override = (part: string, type: string) =>
    `<Override PartName="/xl/${part}" ContentType="${SHEET_ML}.${type}+xml"/>`;
  return (
    `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">` +
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
    '<Default Extension="xml" ContentType="application/xml"/>' +
    override("workbook.xml", "sheet.main") +
    Array.from({ length: sheets }, (_, i) => override(`worksheets/sheet${i + 1}.xml`, "worksheet")).join("") +
    override("styles.xml", "styles") +
    override("metadata.xml", "sheetMetadata") +
    "</Types>"
  );
}

function relationships(targets: [type: string, target: string][]): string {
  const links = targets.map(
    ([type, target], i) => `<Relationship Id="rId${i + 1}" Type="${OFFICE}/${type}" Target="${target}"/>`,
  );
  return `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${links.join("")}</Relationships>`;
}

function workbookPart(sheets: WorkbookDefinition["sheets"], names: Readonly<Record<string, string>>): string {
  const listed = sheets.map(
    ({ name }, i) => `<sheet name="${escapeText(name)}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`,
  );
  const all = definedNames(sheets, names, 0);
  return (
    `${HEAD}<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${OFFICE}">` +
    `<bookViews><workbookView/></bookViews><sheets>${listed.join("")}</sheets>` +
    `${all.length > 0 ? `<definedNames>${all.join("")}</definedNames>` : ""}</workbook>`
  );
}
