import { SaxesParser } from "saxes";
import { FileFault, shown } from "./fault";
import { readPlainXml, splitName } from "./plain-xml";
import type { Handlers } from "./xml-handlers";

/** Well beyond what the formats' schemas ask for, so that a small file cannot fill the memory by one element. */
const MOST = { attributes: 256, depth: 256 };

/**
 * Walks through an XML part and says where everything stands. Document types are refused,
 * and with them every entity of a file's own; so are elements beyond all measure.
 */
export function readXml(text: string, part: string, handlers: Handlers): void {
  if (readPlainXml(text, handlers)) return;
  const parser = new SaxesParser();
  let tagStart = 0;
  let attributes = 0;
  let depth = 0;
  const excess = (most: number, what: string): FileFault =>
    new FileFault(`The file's part ${shown(part)} has more than ${most} ${what}, which no workbook needs.`);
  parser.on("error", (error) => {
    throw new FileFault(`The file's part ${shown(part)} is not well-formed: ${shown(error.message)}`);
  });
  parser.on("doctype", () => {
    throw new FileFault(`The file's part ${shown(part)} declares a document type, which no workbook needs.`);
  });
  parser.on("opentagstart", (tag) => {
    // The name has just been read, and the character after it; its bracket is the last one before that.
    tagStart = text.lastIndexOf("<", parser.position - 1 - tag.name.length);
    attributes = 0;
    if (++depth > MOST.depth) throw excess(MOST.depth, "elements inside one another");
  });
  parser.on("attribute", () => {
    if (++attributes > MOST.attributes) throw excess(MOST.attributes, "attributes in one element");
  });
  parser.on("opentag", (tag) => {
    const [name, prefix] = splitName(tag.name);
    handlers.open?.({
      name,
      prefix,
      attributes: tag.attributes,
      start: tagStart,
      end: parser.position,
      selfClosing: tag.isSelfClosing,
    });
  });
  parser.on("closetag", (tag) => {
    depth--;
    const [name, prefix] = splitName(tag.name);
    const end = parser.position;
    handlers.close?.(name, prefix, tag.isSelfClosing ? end : text.lastIndexOf("<", end - 1), end);
  });
  const heard = (found: string) => handlers.text?.(found);
  parser.on("text", heard);
  parser.on("cdata", heard);
  parser.write(text).close();
}

/** A part's bytes as text, its byte order mark and line ends included; only UTF-8 is written by spreadsheet programs. */
export function decode(bytes: Uint8Array, part: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new FileFault(`The file's part ${shown(part)} is not UTF-8 text.`);
  }
}

export function escapeText(text: string): string {
  return text.replace(/[&<>]/g, (character) => (character === "&" ? "&amp;" : character === "<" ? "&lt;" : "&gt;"));
}

/** A text for an attribute, whichever quotes stand round it. */
export function escapeAttribute(text: string): string {
  return escapeText(text)
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&apos;")
    .replace(/[\t\n\r]/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** Files write control characters in texts as `_x000D_`, and an underscore that would look like one as `_x005F_`. */
export function decodeEscapes(text: string): string {
  if (!text.includes("_x")) return text;
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

export function encodeEscapes(text: string): string {
  return text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    .replace(
      /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g,
      (character) => `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`,
    );
}

export type { Tag } from "./xml-handlers";
