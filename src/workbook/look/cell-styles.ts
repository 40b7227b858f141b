import { readXml } from "../xlsx/xml";
import { isTrue } from "../xlsx/workbook-part";
import { BUILT_IN_FORMATS } from "./built-in";
import { colorOf } from "./theme-colors";

/** One cell style, as far as a grid shows it. Colors are six hexadecimal digits. */
export interface CellStyle {
  font: Font;
  fill?: string;
  borders: Partial<Record<Side, { line: string; color: string }>>;
  format?: string;
  horizontal?: string;
  vertical?: string;
  wrap: boolean;
  indent: number;
}

export type Side = "left" | "right" | "top" | "bottom";

interface Font {
  name?: string;
  size?: number;
  bold?: boolean;
  italic?: boolean;
  underline?: boolean;
  strike?: boolean;
  color?: string;
}

/** What a rule changes in a cell's style. */
export type StyleChange = Partial<Pick<CellStyle, "font" | "fill" | "borders" | "format">>;

type Attributes = Record<string, string>;

/** Reads the part with the styles: `styles[n]` is what a cell with `s="n"` looks like, `changes[n]` a rule's `dxfId`. */
export function readCellStyles(
  text: string,
  part: string,
  theme: readonly string[],
): { styles: CellStyle[]; changes: StyleChange[] } {
  const reader = new StylesReader(theme);
  readXml(text, part, reader);
  return reader;
}

class StylesReader {
  readonly styles: CellStyle[] = [];
  readonly changes: StyleChange[] = [];
  private readonly fonts: Font[] = [];
  private readonly fills: { color?: string; solid: boolean }[] = [];
  private readonly borders: CellStyle["borders"][] = [];
  private readonly formats = new Map(BUILT_IN_FORMATS);
  private readonly path: string[] = [];
  private side?: Side;

  constructor(private readonly theme: readonly string[]) {}

  open = ({ name, attributes }: { name: string; attributes: Attributes }): void => {
    const [, list, item] = this.path;
    if (name === "numFmt" && list === "numFmts")
      this.formats.set(Number(attributes.numFmtId), attributes.formatCode ?? "");
    else if (list === "fonts") this.inFont(name, attributes);
    else if (list === "fills") this.inFill(name, attributes);
    else if (list === "borders") this.inBorder(name, attributes);
    else if (list === "dxfs") this.inChange(name, attributes);
    else if (list === "cellXfs" && name === "xf") this.styles.push(this.style(attributes));
    else if (list === "cellXfs" && item === "xf" && name === "alignment") align(this.styles.at(-1)!, attributes);
    this.path.push(name);
  };

  close = (): void => {
    this.path.pop();
  };

  /** Fonts, fills and borders of rules stand in no list of their own, and after everything that counts on lists. */
  private inChange(name: string, attributes: Attributes): void {
    const [, , , kind = name] = this.path;
    if (name === "dxf") this.changes.push({});
    else if (kind === "font") this.inFont(name, attributes);
    else if (kind === "fill") this.inFill(name === "bgColor" ? "fgColor" : name, attributes);
    else if (kind === "border") this.inBorder(name, attributes);
    const change = this.changes.at(-1)!;
    if (name === "numFmt") change.format = attributes.formatCode;
    if (kind === "font") change.font = this.fonts.at(-1);
    if (kind === "fill") change.fill = this.fills.at(-1)?.color;
    if (kind === "border") change.borders = this.borders.at(-1);
  }

  private inFont(name: string, attributes: Attributes): void {
    if (name === "font") return void this.fonts.push({});
    const font = this.fonts.at(-1)!;
    const on = attributes.val === undefined || isTrue(attributes.val);
    if (name === "name") font.name = attributes.val;
    if (name === "sz") font.size = Number(attributes.val);
    if (name === "b") font.bold = on;
    if (name === "i") font.italic = on;
    if (name === "u") font.underline = attributes.val !== "none";
    if (name === "strike") font.strike = on;
    if (name === "color") font.color = this.color(attributes);
  }

  private inFill(name: string, attributes: Attributes): void {
    if (name === "fill") return void this.fills.push({ solid: false });
    const fill = this.fills.at(-1)!;
    if (name === "patternFill") fill.solid = attributes.patternType === "solid";
    if (name === "fgColor") fill.color = this.color(attributes);
  }

  private inBorder(name: string, attributes: Attributes): void {
    if (name === "border") return void this.borders.push({});
    const borders = this.borders.at(-1)!;
    if (name === "color") {
      if (this.side && borders[this.side]) borders[this.side]!.color = this.color(attributes) ?? "000000";
      return;
    }
    this.side = ({ left: "left", right: "right", top: "top", bottom: "bottom" } as const)[name as Side];
    if (this.side && attributes.style && attributes.style !== "none") {
      borders[this.side] = { line: attributes.style, color: "000000" };
    }
  }

  private style(attributes: Attributes): CellStyle {
    const fill = this.fills[Number(attributes.fillId ?? 0)];
    const format = this.formats.get(Number(attributes.numFmtId ?? 0));
    return {
      font: this.fonts[Number(attributes.fontId ?? 0)] ?? {},
      fill: fill?.solid ? fill.color : undefined,
      borders: this.borders[Number(attributes.borderId ?? 0)] ?? {},
      format: format === "General" ? undefined : format,
      wrap: false,
      indent: 0,
    };
  }

  private color(attributes: Attributes): string | undefined {
    return colorOf(attributes, this.theme);
  }
}

function align(style: CellStyle, { horizontal, vertical, wrapText, indent }: Attributes): void {
  style.horizontal = horizontal;
  style.vertical = vertical;
  style.wrap = isTrue(wrapText);
  style.indent = Number(indent ?? 0);
}
