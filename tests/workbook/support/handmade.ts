import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";

/** A workbook's file put together part by part, with the XML written as the spreadsheet program stores it. */
export interface Handmade {
  sheets: { name: string; xml: string; rels?: string }[];
  /** Inside `workbook`, after `sheets`: defined names and the like. */
  workbook?: string;
  properties?: string;
  /** Further parts by name. */
  parts?: Record<string, string>;
  /** Relationships of the workbook to those parts: type's last word → target. */
  links?: Record<string, string>;
  contentTypes?: string;
}

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n';

/** A dynamic array's mark: cells with `cm="1"` are dynamic. */
export const METADATA = `${HEAD}<metadata xmlns="${MAIN}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

/** A worksheet part round its rows. */
export function sheetXml(rows: string, { before = '<dimension ref="A1"/>', after = "" } = {}): string {
  return `${HEAD}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}" xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006" mc:Ignorable="x14ac" xmlns:x14ac="http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac">${before}<sheetViews><sheetView tabSelected="1" workbookViewId="0"/></sheetViews><sheetFormatPr defaultRowHeight="15" x14ac:dyDescent="0.25"/><sheetData>${rows}</sheetData>${after}<pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/></worksheet>`;
}

/** The file's bytes. Dynamic arrays are always possible. */
export function handmade({
  sheets,
  workbook = "",
  properties = "",
  parts = {},
  links = {},
  contentTypes = "",
}: Handmade): Uint8Array {
  const relation = (id: string, type: string, target: string) =>
    `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}"/>`;
  const allLinks = { sheetMetadata: "metadata.xml", ...links };
  const files: Record<string, string> = {
    "[Content_Types].xml": `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>${contentTypes}</Types>`,
    "_rels/.rels": `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relation("rId1", "officeDocument", "xl/workbook.xml")}</Relationships>`,
    "xl/workbook.xml": `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}">${properties}<sheets>${sheets
      .map(({ name }, i) => `<sheet name="${name}" sheetId="${i + 1}" r:id="sheet${i + 1}"/>`)
      .join("")}</sheets>${workbook}</workbook>`,
    "xl/_rels/workbook.xml.rels": `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${sheets
      .map((_, i) => relation(`sheet${i + 1}`, "worksheet", `worksheets/sheet${i + 1}.xml`))
      .join("")}${Object.entries(allLinks)
      .map(([type, target], i) => relation(`more${i}`, type, target))
      .join("")}</Relationships>`,
    "xl/metadata.xml": METADATA,
    ...Object.fromEntries(sheets.map(({ xml }, i) => [`xl/worksheets/sheet${i + 1}.xml`, xml])),
    ...Object.fromEntries(
      sheets.flatMap(({ rels }, i) =>
        rels
          ? [
              [
                `xl/worksheets/_rels/sheet${i + 1}.xml.rels`,
                `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${rels}</Relationships>`,
              ],
            ]
          : [],
      ),
    ),
    ...parts,
  };
  return zip(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));
}

/** One sheet named Bench with these rows. */
export function oneSheet(rows: string, more: Partial<Handmade> & { before?: string; after?: string } = {}): Uint8Array {
  const { before, after, ...rest } = more;
  return handmade({ sheets: [{ name: "Bench", xml: sheetXml(rows, { before, after }) }], ...rest });
}

export function relationshipXml(id: string, type: string, target: string): string {
  return `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}"/>`;
}

export function zip(files: Zippable): Uint8Array {
  return zipSync(files, { mtime: new Date(2026, 0, 2, 3, 4, 6) });
}

export function parts(bytes: Uint8Array): Record<string, string> {
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, data]) => [name, strFromU8(data)]));
}

/** The text of the first sheet. */
export function sheetOf(bytes: Uint8Array, number = 1): string {
  return parts(bytes)[`xl/worksheets/sheet${number}.xml`]!;
}

/** What stands in a cell: its element in the text. */
export function cellOf(bytes: Uint8Array, address: string, number = 1): string | undefined {
  return new RegExp(`<c r="${address}"[^>]*?(/>|>.*?</c>)`, "s").exec(sheetOf(bytes, number))?.[0];
}

/** The file with one part's text put in place of what it was. */
export function withPart(bytes: Uint8Array, name: string, text: string): Uint8Array {
  return zip({ ...unzipSync(bytes), [name]: strToU8(text) });
}
