import { escapeText } from "../xlsx/xml";
import type { RuleLook, StyleDefinition } from "./definition";

/**
 * The part with the styles: number 0 is the spreadsheet's own, the given ones follow in their order.
 * @param looks what rules change, in their order
 */
export function stylesPart(styles: readonly StyleDefinition[], looks: readonly RuleLook[]): string {
  const { numFmts, fonts, fills, borders, cellXfs, dxfs } = styleItems(styles, looks, OWN_FIRST);
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
    list("numFmts", numFmts) +
    list("fonts", [font({}), ...fonts]) +
    list("fills", [
      '<fill><patternFill patternType="none"/></fill>',
      '<fill><patternFill patternType="gray125"/></fill>',
      ...fills,
    ]) +
    list("borders", [border({}), ...borders]) +
    '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
    list("cellXfs", [xf({}, { format: 0, font: 0, fill: 0, border: 0 }), ...cellXfs]) +
    '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>' +
    list("dxfs", dxfs) +
    "</styleSheet>"
  );
}

/** The numbers that the first of ours get in each list. */
export interface First {
  format: number;
  font: number;
  fill: number;
  border: number;
}

/** Formats of one's own begin with 164; two fills stand in every workbook. */
const OWN_FIRST: First = { format: 164, font: 1, fill: 2, border: 1 };

/** What styles and looks add to each list of the part. */
export function styleItems(
  styles: readonly StyleDefinition[],
  looks: readonly RuleLook[],
  first: First,
): Record<"numFmts" | "fonts" | "fills" | "borders" | "cellXfs" | "dxfs", string[]> {
  const formats = [...new Set([...styles, ...looks].flatMap(({ format }) => format ?? []))];
  const numbers = new Map(formats.map((format, i) => [format, first.format + i]));
  return {
    numFmts: formats.map((format) => numberFormat(format, numbers)),
    fonts: styles.map(font),
    fills: styles.map(fill),
    borders: styles.map(border),
    cellXfs: styles.map((style, i) =>
      xf(style, {
        format: numbers.get(style.format ?? "") ?? 0,
        font: first.font + i,
        fill: style.fill ? first.fill + i : 0,
        border: first.border + i,
      }),
    ),
    dxfs: looks.map((look) => change(look, numbers)),
  };
}

const list = (name: string, items: string[]): string =>
  items.length === 0 ? "" : `<${name} count="${items.length}">${items.join("")}</${name}>`;

const numberFormat = (format: string, numbers: ReadonlyMap<string, number>): string =>
  `<numFmt numFmtId="${numbers.get(format)}" formatCode="${quoted(format)}"/>`;

function xf(style: StyleDefinition, { format, font, fill, border }: First): string {
  const { horizontal, vertical, wrap, indent } = style;
  const alignment = attributes({ horizontal, vertical, wrapText: wrap ? "1" : undefined, indent });
  const head = `<xf numFmtId="${format}" fontId="${font}" fillId="${fill}" borderId="${border}" xfId="0"`;
  const applied = `${head} applyNumberFormat="1" applyFont="1" applyFill="1" applyBorder="1" applyAlignment="1"`;
  return alignment ? `${applied}><alignment${alignment}/></xf>` : `${applied}/>`;
}

function font({ font = {} }: StyleDefinition): string {
  const { name = "Calibri", size = 11, bold, italic, color = "2C241C" } = font;
  const marks = `${bold ? "<b/>" : ""}${italic ? "<i/>" : ""}`;
  return `<font>${marks}<sz val="${size}"/><color rgb="FF${color}"/><name val="${name}"/></font>`;
}

/** What a rule changes, and nothing else; a solid fill's color is the background's here (ECMA-376, 18.8.14). */
function change({ font, fill, borders, format }: RuleLook, numbers: ReadonlyMap<string, number>): string {
  const { bold, italic, color } = font ?? {};
  const marks = `${bold ? "<b/>" : ""}${italic ? "<i/>" : ""}${color ? `<color rgb="FF${color}"/>` : ""}`;
  return (
    `<dxf>${marks ? `<font>${marks}</font>` : ""}${format ? numberFormat(format, numbers) : ""}` +
    (fill
      ? `<fill><patternFill patternType="solid"><fgColor rgb="FF${fill}"/><bgColor rgb="FF${fill}"/></patternFill></fill>`
      : "") +
    `${borders ? border({ borders }) : ""}</dxf>`
  );
}

function fill({ fill }: StyleDefinition): string {
  if (!fill) return '<fill><patternFill patternType="none"/></fill>';
  return `<fill><patternFill patternType="solid"><fgColor rgb="FF${fill}"/><bgColor indexed="64"/></patternFill></fill>`;
}

function border({ borders = {} }: StyleDefinition): string {
  const sides = (["left", "right", "top", "bottom"] as const).map((side) => {
    const drawn = borders[side];
    return drawn ? `<${side} style="${drawn.line}"><color rgb="FF${drawn.color}"/></${side}>` : `<${side}/>`;
  });
  return `<border>${sides.join("")}<diagonal/></border>`;
}

const attributes = (named: Record<string, string | number | undefined>): string =>
  Object.entries(named)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${value}"`)
    .join("");

const quoted = (text: string): string => escapeText(text).replaceAll('"', "&quot;");
