import { BUILT_IN_FORMATS } from "../look/builtIn";
import type { OpenWorkbook } from "../xlsx/openWorkbook";
import { applyEdits, type Edit } from "../xlsx/edits";
import { withAttributes } from "../xlsx/tagText";
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
  private root?: Tag;
  private styleList?: Tag;
  /** `inner` is where the list's end tag begins. */
  private formatList?: Tag & { inner: number };
  private readonly addedStyles: string[] = [];
  private readonly addedFormats: string[] = [];
  private formatCount = 0;
  private readonly known = new Map<string, number>();

  constructor({ source, workbook }: OpenWorkbook) {
    this.part = source.relationships(workbook.part).find(({ type }) => type === "styles")?.target;
    if (this.part === undefined || !source.has(this.part)) return;
    this.text = source.text(this.part);
    const path: string[] = [];
    readXml(this.text, this.part, {
      open: (tag) => {
        const { name, attributes, start, end } = tag;
        const list = path[1];
        if (path.length === 0) this.root = tag;
        else if (name === "cellXfs") this.styleList = tag;
        else if (name === "numFmts") this.formatList = { ...tag, inner: end };
        else if (list === "numFmts" && name === "numFmt") {
          this.formats.set(attributes.numFmtId ?? "", attributes.formatCode ?? "");
          this.formatCount++;
        } else if (list === "cellXfs" && name === "xf")
          this.styles.push({ start, end, tagEnd: end, format: attributes.numFmtId ?? "0" });
        path.push(name);
      },
      close: (name, _prefix, start, end) => {
        path.pop();
        if (name === "numFmts") this.formatList!.inner = start;
        if (path[1] === "cellXfs" && name === "xf") this.styles.at(-1)!.end = end;
      },
    });
  }

  /** The number of the style that is like `base` and has the number format; `base` itself where it has one. */
  like(base: number, format: string): number {
    const style = this.styles[base];
    if (!style || (style.format !== "0" && this.formats.get(style.format) !== "General")) return base;
    const key = `${base} ${format}`;
    const found = this.known.get(key);
    if (found !== undefined) return found;
    const tag = withAttributes(this.text.slice(style.start, style.tagEnd), {
      numFmtId: this.numberOf(format),
      applyNumberFormat: "1",
    });
    this.addedStyles.push(tag + this.text.slice(style.tagEnd, style.end));
    const number = this.styles.length + this.addedStyles.length - 1;
    this.known.set(key, number);
    return number;
  }

  /** The part's new text; undefined where nothing was added. */
  get changed(): { part: string; text: string } | undefined {
    if (this.addedStyles.length === 0 || !this.styleList || this.part === undefined) return undefined;
    const { start, end } = this.styleList;
    const at = this.styles.at(-1)!.end;
    const count = String(this.styles.length + this.addedStyles.length);
    const edits: Edit[] = [
      ...this.formatEdits(),
      { start, end, text: withAttributes(this.text.slice(start, end), { count }) },
      { start: at, end: at, text: this.addedStyles.join("") },
    ];
    return { part: this.part, text: applyEdits(this.text, edits) };
  }

  private numberOf(format: string): string {
    for (const [id, code] of this.formats) if (code === format) return id;
    const id = String(Math.max(FIRST_OWN - 1, ...[...this.formats.keys()].map((key) => Number(key) || 0)) + 1);
    this.formats.set(id, format);
    const { prefix } = this.styleList!;
    this.addedFormats.push(`<${prefix}numFmt numFmtId="${id}" formatCode="${escapeAttribute(format)}"/>`);
    return id;
  }

  /** The list of formats comes first in the part. */
  private formatEdits(): Edit[] {
    if (this.addedFormats.length === 0) return [];
    const added = this.addedFormats.join("");
    const count = String(this.formatCount + this.addedFormats.length);
    const { prefix } = this.styleList!;
    const list = this.formatList;
    if (!list || list.selfClosing) {
      const [start, end] = list ? [list.start, list.end] : [this.root!.end, this.root!.end];
      return [{ start, end, text: `<${prefix}numFmts count="${count}">${added}</${prefix}numFmts>` }];
    }
    return [
      { start: list.start, end: list.end, text: withAttributes(this.text.slice(list.start, list.end), { count }) },
      { start: list.inner, end: list.inner, text: added },
    ];
  }
}
