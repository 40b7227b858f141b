import { BUILT_IN_FORMATS } from "../look/built-in";
import { addPart } from "../xlsx/add-part";
import { applyEdits, type Edit } from "../text-edits";
import { appended, type List } from "../xlsx/list-edits";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { withAttributes } from "../xlsx/tag-text";
import { escapeAttribute, readXml, type Tag } from "../xlsx/xml";

/** The format that lengths in inches bring, and that numbers typed as fractions are shown in. */
export const FRACTION_FORMAT = "# ??/??";

/** Formats that every workbook has by number (ECMA-376, 18.8.30); those of days look different in each country. */
const BUILT_IN = BUILT_IN_FORMATS.filter(([id]) => id < 14 || id === 20 || id === 21 || id > 44);

/** The numbers below are the program's own. */
const FIRST_OWN = 164;

/** The workbook's cell styles, with number formats added to those that are asked for and have none. */
export class NumberFormats {
  private readonly text: string = "";
  private readonly part: string | undefined;
  private readonly styles: { start: number; end: number; tagEnd: number; format: string }[] = [];
  private readonly formats = new Map<string, string>(BUILT_IN.map(([id, code]) => [String(id), code]));
  private readonly root: Tag;
  private styleList?: List;
  private formatList?: List;
  /** Where a list of styles would stand. */
  private stylesAt = 0;
  private readonly addedStyles: string[] = [];
  private readonly addedFormats: string[] = [];
  private formatCount = 0;
  private readonly known = new Map<string, number>();

  constructor({ source, workbook }: OpenWorkbook) {
    this.part = source.linked(workbook.part, "styles");
    this.text = this.part === undefined ? NO_STYLES : opened(source.text(this.part));
    const path: string[] = [];
    let root: Tag | undefined;
    readXml(this.text, this.part ?? "styles", {
      open: (tag) => {
        const { name, attributes, start, end } = tag;
        const list = path[1];
        if (path.length === 0) {
          root = tag;
          this.stylesAt = end;
        } else if (path.length === 1 && name === "cellXfs") this.styleList = { ...tag, inner: end };
        else if (path.length === 1 && name === "numFmts") this.formatList = { ...tag, inner: end };
        else if (list === "numFmts" && name === "numFmt") {
          this.formats.set(attributes.numFmtId ?? "", attributes.formatCode ?? "");
          this.formatCount++;
        } else if (list === "cellXfs" && name === "xf")
          this.styles.push({ start, end, tagEnd: end, format: attributes.numFmtId ?? "0" });
        path.push(name);
      },
      close: (name, _prefix, start, end) => {
        path.pop();
        if (path.length === 1 && name === "numFmts") this.formatList!.inner = start;
        if (path.length === 1 && name === "cellXfs") this.styleList!.inner = start;
        if (path.length === 1 && BEFORE_STYLES.has(name)) this.stylesAt = end;
        if (path[1] === "cellXfs" && name === "xf") this.styles.at(-1)!.end = end;
      },
    });
    this.root = root!;
    // A file without any style means the plain one, which then must come first.
    if (this.styles.length === 0) this.addedStyles.push(`<${this.root.prefix}xf numFmtId="0"/>`);
  }

  /** The number of the style that is like `base` and has the number format; `base` itself where it has one. */
  like(base: number, format: string): number {
    const style = this.styles[base] ?? this.styles[0];
    if (style && style.format !== "0" && this.formats.get(style.format) !== "General") return base;
    const key = `${base} ${format}`;
    const found = this.known.get(key);
    if (found !== undefined) return found;
    const attributes = { numFmtId: this.numberOf(format), applyNumberFormat: "1" };
    const [tag, inside] = style
      ? [this.text.slice(style.start, style.tagEnd), this.text.slice(style.tagEnd, style.end)]
      : [`<${this.root.prefix}xf/>`, ""];
    this.addedStyles.push(withAttributes(tag, attributes) + inside);
    const number = this.styles.length + this.addedStyles.length - 1;
    this.known.set(key, number);
    return number;
  }

  /** Writes what was added, if anything was; a workbook without a part for it gets one. */
  writeTo(workbook: OpenWorkbook, draft: PackageDraft): void {
    if (this.known.size === 0) return;
    const text = applyEdits(this.text, [...this.formatEdits(), ...this.styleEdits()]);
    if (this.part === undefined) addPart(workbook, draft, { name: "styles", link: "styles", type: "styles", text });
    else draft.set(this.part, text);
  }

  private styleEdits(): Edit[] {
    const added = this.addedStyles.join("");
    const count = this.styles.length + this.addedStyles.length;
    if (this.styleList) return appended(this.text, this.styleList, added, count);
    return [{ start: this.stylesAt, end: this.stylesAt, text: this.list("cellXfs", added, count) }];
  }

  private numberOf(format: string): string {
    for (const [id, code] of this.formats) if (code === format) return id;
    const id = String(Math.max(FIRST_OWN - 1, ...[...this.formats.keys()].map((key) => Number(key) || 0)) + 1);
    this.formats.set(id, format);
    this.addedFormats.push(`<${this.root.prefix}numFmt numFmtId="${id}" formatCode="${escapeAttribute(format)}"/>`);
    return id;
  }

  /** The list of formats comes first in the part. */
  private formatEdits(): Edit[] {
    if (this.addedFormats.length === 0) return [];
    const added = this.addedFormats.join("");
    const count = this.formatCount + this.addedFormats.length;
    if (this.formatList) return appended(this.text, this.formatList, added, count);
    return [{ start: this.root.end, end: this.root.end, text: this.list("numFmts", added, count) }];
  }

  private list(name: string, inside: string, count: number): string {
    const { prefix } = this.root;
    return `<${prefix}${name} count="${count}">${inside}</${prefix}${name}>`;
  }
}

/** The text, its root with an end tag, so that something can be put into it. */
function opened(text: string): string {
  return text.replace(/<([\w.:-]+)((?:\s[^<>]*?)?)\s*\/>\s*$/, (tag, name: string, attributes: string) =>
    /(^|:)styleSheet$/.test(name) ? `<${name}${attributes}></${name}>` : tag,
  );
}

/** What stands before the list of styles (CT_Stylesheet: ECMA-376, 18.8.39). */
const BEFORE_STYLES = new Set(["numFmts", "fonts", "fills", "borders", "cellStyleXfs"]);

/** The styles that a workbook without a part for them has, as the least that the spreadsheet program wants. */
const NO_STYLES =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
  '<fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>' +
  "</styleSheet>";
