import type { OpenWorkbook } from "../xlsx/openWorkbook";
import { applyEdits, type Edit } from "../xlsx/edits";
import { withAttributes } from "../xlsx/tagText";
import { readXml } from "../xlsx/xml";

/** The format that lengths in inches bring, and that numbers typed as fractions are shown in. */
export const FRACTION_FORMAT = "# ??/??";

/** The same, which every workbook has by that number (ECMA-376, 18.8.30). */
const FRACTION = "13";

/** The workbook's cell styles, with fraction formats added to those that are asked for and have no format. */
export class FractionStyles {
  private readonly text: string = "";
  private readonly part: string | undefined;
  private readonly styles: { start: number; end: number; tagEnd: number; format: string }[] = [];
  private listTag?: { start: number; end: number };
  private readonly added: string[] = [];
  private readonly known = new Map<number, number>();

  constructor({ source, workbook }: OpenWorkbook) {
    this.part = source.relationships(workbook.part).find(({ type }) => type === "styles")?.target;
    if (this.part === undefined || !source.has(this.part)) return;
    this.text = source.text(this.part);
    let inList = false;
    readXml(this.text, this.part, {
      open: ({ name, attributes, start, end }) => {
        if (name === "cellXfs") {
          inList = true;
          this.listTag = { start, end };
        } else if (inList && name === "xf") {
          this.styles.push({ start, end, tagEnd: end, format: attributes.numFmtId ?? "0" });
        }
      },
      close: (name, _prefix, _start, end) => {
        if (name === "cellXfs") inList = false;
        if (inList && name === "xf") this.styles.at(-1)!.end = end;
      },
    });
  }

  /** The number of the style that is like `base` and shows fractions; `base` itself where it has a format. */
  like(base: number): number {
    const style = this.styles[base];
    if (!style || style.format !== "0") return base;
    const found = this.known.get(base);
    if (found !== undefined) return found;
    const tag = withAttributes(this.text.slice(style.start, style.tagEnd), {
      numFmtId: FRACTION,
      applyNumberFormat: "1",
    });
    this.added.push(tag + this.text.slice(style.tagEnd, style.end));
    const number = this.styles.length + this.added.length - 1;
    this.known.set(base, number);
    return number;
  }

  /** The part's new text; undefined where nothing was added. */
  get changed(): { part: string; text: string } | undefined {
    if (this.added.length === 0 || !this.listTag || this.part === undefined) return undefined;
    const { start, end } = this.listTag;
    const at = this.styles.at(-1)!.end;
    const count = String(this.styles.length + this.added.length);
    const edits: Edit[] = [
      { start, end, text: withAttributes(this.text.slice(start, end), { count }) },
      { start: at, end: at, text: this.added.join("") },
    ];
    return { part: this.part, text: applyEdits(this.text, edits) };
  }
}
