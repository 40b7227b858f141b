import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IStyleData,
} from "@univerjs/core";
import type { CellStyle, Side, StyleChange } from "../look/index";

/** The file's cell styles, by their numbers, in the grid's words. */
export const gridStyles = (styles: readonly CellStyle[]): Record<string, IStyleData> =>
  Object.fromEntries(styles.map((style, i) => [String(i), gridStyle(style)]));

function gridStyle({ font, fill, borders, format, horizontal, vertical, wrap, indent }: CellStyle): IStyleData {
  return given({
    ...gridChange({ font, fill, borders, format }),
    ht: HORIZONTAL[horizontal ?? ""],
    vt: VERTICAL[vertical ?? ""] ?? VerticalAlign.BOTTOM,
    tb: wrap ? WrapStrategy.WRAP : undefined,
    pd: indent > 0 ? (horizontal === "right" ? { r: indent * INDENT } : { l: indent * INDENT }) : undefined,
  });
}

/** What a rule changes in a cell's style, in the grid's words. */
export const gridChange = ({ font = {}, fill, borders = {}, format }: StyleChange): IStyleData =>
  given({
    ff: font.name && `${font.name}, ${fallback(font.name)}`,
    fs: font.size,
    bl: flag(font.bold),
    it: flag(font.italic),
    ul: font.underline ? { s: BooleanNumber.TRUE } : undefined,
    st: font.strike ? { s: BooleanNumber.TRUE } : undefined,
    cl: font.color ? { rgb: `#${font.color}` } : undefined,
    bg: fill ? { rgb: `#${fill}` } : undefined,
    bd: gridBorders(borders),
    n: format ? { pattern: format } : undefined,
  });

const given = (style: IStyleData): IStyleData =>
  Object.fromEntries(Object.entries(style).filter(([, value]) => value !== undefined));

/** What stands in for a font that this machine lacks. */
export function fallback(name: string): string {
  if (/georgia|times|cambria|garamond|palatino|antiqua/i.test(name)) return "Palatino, 'Palatino Linotype', serif";
  return /consolas|courier|mono/i.test(name) ? "monospace" : "Carlito, 'Segoe UI', Arial, sans-serif";
}

/** Pixels. */
const INDENT = 9;

const flag = (on: boolean | undefined): BooleanNumber | undefined => (on ? BooleanNumber.TRUE : undefined);

const HORIZONTAL: Record<string, HorizontalAlign> = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  justify: HorizontalAlign.JUSTIFIED,
};

const VERTICAL: Record<string, VerticalAlign> = {
  top: VerticalAlign.TOP,
  center: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
};

const LINES: Record<string, BorderStyleTypes> = {
  thin: BorderStyleTypes.THIN,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  double: BorderStyleTypes.DOUBLE,
  medium: BorderStyleTypes.MEDIUM,
  thick: BorderStyleTypes.THICK,
};

const SIDES: Record<Side, "l" | "r" | "t" | "b"> = { left: "l", right: "r", top: "t", bottom: "b" };

function gridBorders(borders: CellStyle["borders"]): IStyleData["bd"] {
  const drawn = Object.entries(borders).map(([side, { line, color }]) => [
    SIDES[side as Side],
    { s: LINES[line] ?? BorderStyleTypes.THIN, cl: { rgb: `#${color}` } },
  ]);
  return drawn.length === 0 ? undefined : Object.fromEntries(drawn);
}
