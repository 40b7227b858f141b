import { readDynamicMarks } from "../xlsx/metadata";
import type { OpenWorkbook } from "../xlsx/openWorkbook";
import { newEntry } from "../xlsx/new-entry";

/**
 * The value of `cm` that marks a formula which may spill. Where the workbook has no record of such formulas, one is
 * added; where it has records of other kinds only, none is given, and the formula is stored as an older array formula.
 */
export function provideDynamicMark(opened: OpenWorkbook, replaced: Map<string, Uint8Array>): string | undefined {
  const { source, workbook } = opened;
  const part = source.relationships(workbook.part).find(({ type }) => type === "sheetMetadata")?.target;
  if (part !== undefined && source.has(part)) return [...readDynamicMarks(source.text(part), part)][0];
  const folder = workbook.part.slice(0, workbook.part.lastIndexOf("/") + 1);
  const name = `${folder}metadata.xml`;
  if (source.has(name)) return undefined;
  const list = `${folder}_rels/${workbook.part.slice(folder.length)}.rels`;
  const encode = (text: string) => new TextEncoder().encode(text);
  source.archive.entries.push(newEntry(name, source.archive));
  replaced.set(name, encode(METADATA));
  const types = source.text("[Content_Types].xml");
  replaced.set(
    source.entryName("[Content_Types].xml"),
    encode(types.replace(/<\/(\w+:)?Types>/, `<$1Override PartName="/${name}" ContentType="${TYPE}"/>$&`)),
  );
  const links = source.text(list);
  const id = freeId(links);
  replaced.set(
    source.entryName(list),
    encode(
      links.replace(/<\/(\w+:)?Relationships>/, `<$1Relationship Id="${id}" Type="${LINK}" Target="metadata.xml"/>$&`),
    ),
  );
  return "1";
}

function freeId(links: string): string {
  for (let i = 1; ; i++) if (!links.includes(`"rIdDynamic${i}"`)) return `rIdDynamic${i}`;
}

const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
const LINK = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata";

/** The record of formulas that may spill, as the spreadsheet program writes it. */
export const METADATA =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
