import { applyEdits, type Edit } from "../text-edits";
import { decodeEscapes, encodeEscapes, escapeText, readXml, type Tag } from "../xlsx/xml";

/** The sheet's text with a line at the left of its printed foot, where nothing stands there yet. */
export function withFooter(text: string, part: string, line: string): string {
  const footers: { tag: Tag; inner: number; end: number; text: string }[] = [];
  let holder: { tag: Tag; inner: number; end: number } | undefined;
  let prefix = "";
  let after = 0;
  const path: string[] = [];
  readXml(text, part, {
    open(tag) {
      if (path.length === 0) [prefix, after] = [tag.prefix, tag.end];
      if (path.length === 1 && tag.name === "headerFooter") holder = { tag, inner: tag.end, end: tag.end };
      if (path[1] === "headerFooter" && /Footer$/.test(tag.name))
        footers.push({ tag, inner: tag.end, end: tag.end, text: "" });
      path.push(tag.name);
    },
    text(found) {
      const last = footers.at(-1);
      if (last && path[1] === "headerFooter" && path.at(-1) === last.tag.name) last.text += found;
    },
    close(name, _prefix, start, end) {
      path.pop();
      if (path.length === 1 && BEFORE_FOOTER.has(name)) after = end;
      if (path.length === 1 && name === "headerFooter") Object.assign(holder!, { inner: start, end });
      if (path.length === 2 && path[1] === "headerFooter" && /Footer$/.test(name))
        Object.assign(footers.at(-1)!, { inner: start, end });
    },
  });
  const edits = footers.flatMap(({ tag, inner, end, text: old }): Edit[] => {
    const now = withLine(decodeEscapes(old), line);
    if (now === undefined) return [];
    const written = escapeText(encodeEscapes(now));
    if (tag.selfClosing)
      return [{ start: tag.start, end, text: `<${prefix}${tag.name}>${written}</${prefix}${tag.name}>` }];
    return [{ start: tag.end, end: inner, text: written }];
  });
  if (!footers.some(({ tag }) => tag.name === "oddFooter")) {
    const odd = `<${prefix}oddFooter>${escapeText(encodeEscapes(LEFT + line))}</${prefix}oddFooter>`;
    edits.push(
      ...(holder ? inHolder(text, holder, odd, prefix) : [{ start: after, end: after, text: held(odd, prefix) }]),
    );
  }
  return applyEdits(text, edits);
}

const LEFT = "&L&8";
/** What the spreadsheet program takes (ECMA-376, 18.3.1.58). */
const LONGEST = 255;

/** What stands before the first mark of a place is in the middle. */
function withLine(old: string, line: string): string | undefined {
  const now = /&[LCR]/i.test(old) || old === "" ? `${LEFT}${line}${old}` : `${LEFT}${line}&C${old}`;
  return /&L/i.test(old) || now.length > LONGEST ? undefined : now;
}

const held = (inside: string, prefix: string): string => `<${prefix}headerFooter>${inside}</${prefix}headerFooter>`;

/** The odd pages' foot comes after their head, and before all others. */
function inHolder(
  text: string,
  { tag, inner, end }: { tag: Tag; inner: number; end: number },
  odd: string,
  prefix: string,
): Edit[] {
  const opened = text.slice(tag.start, tag.end);
  if (tag.selfClosing)
    return [{ start: tag.start, end, text: `${opened.replace(/\s*\/>$/, ">")}${odd}</${prefix}headerFooter>` }];
  const head = /<\/(?:[\w.-]+:)?oddHeader\s*>|<(?:[\w.-]+:)?oddHeader\s*\/>/.exec(text.slice(tag.end, inner));
  const at = head ? tag.end + head.index + head[0].length : tag.end;
  return [{ start: at, end: at, text: odd }];
}

/** What stands before it in a sheet (CT_Worksheet: ECMA-376, 18.3.1.99). */
const BEFORE_FOOTER = new Set(
  (
    "sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios " +
    "autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations " +
    "hyperlinks printOptions pageMargins pageSetup"
  ).split(" "),
);
