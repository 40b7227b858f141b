import type { SheetDefinition, StyleDefinition, WorkbookDefinition } from "../../workbook/author/definition";
import { areaName, styleAreas, type Area } from "./style-areas";

/** Gives a sheet's cells their looks and formats, before anything is written into them. */
export function styleCells(
  sheet: Excel.Worksheet,
  definition: SheetDefinition,
  styles: WorkbookDefinition["styles"],
): void {
  for (const [name, areas] of styleAreas(definition)) {
    const style = styles[name]!;
    for (const some of inReach(areas)) look(sheet.getRanges(some.map(areaName).join(",")).format, style);
    for (const area of areas) {
      const range = sheet.getRange(areaName(area));
      if (style.format !== undefined) range.numberFormat = formats(area, style.format);
      drawBorders(range, style.borders ?? {}, area);
    }
  }
}

/** A list of ranges takes some thousand characters. */
function inReach(areas: readonly Area[]): Area[][] {
  return Array.from({ length: Math.ceil(areas.length / AT_A_TIME) }, (_, i) =>
    areas.slice(i * AT_A_TIME, (i + 1) * AT_A_TIME),
  );
}

const AT_A_TIME = 400;

function look(
  format: Excel.RangeFormat,
  { font = {}, fill, horizontal, vertical, wrap, indent }: StyleDefinition,
): void {
  const { name, size, bold, italic, color = INK } = font;
  if (name !== undefined) format.font.name = name;
  if (size !== undefined) format.font.size = size;
  if (bold) format.font.bold = true;
  if (italic) format.font.italic = true;
  format.font.color = `#${color}`;
  if (fill) format.fill.color = `#${fill}`;
  if (horizontal)
    format.horizontalAlignment = ({ left: "Left", center: "Center", right: "Right" } as const)[horizontal];
  if (vertical) format.verticalAlignment = ({ top: "Top", center: "Center", bottom: "Bottom" } as const)[vertical];
  if (wrap) format.wrapText = true;
  if (indent !== undefined) format.indentLevel = indent;
}

/** What is written without a color of its own. */
const INK = "2C241C";

const formats = ({ top, left, bottom, right }: Area, format: string): string[][] =>
  Array.from({ length: bottom - top + 1 }, () => Array<string>(right - left + 1).fill(format));

function drawBorders(
  range: Excel.Range,
  drawn: NonNullable<StyleDefinition["borders"]>,
  { top, left, bottom, right }: Area,
): void {
  const draw = (side: Edge, { line, color }: { line: Line; color: string }): void => {
    const border = range.format.borders.getItem(side);
    border.style = "Continuous";
    border.weight = WEIGHTS[line];
    border.color = `#${color}`;
  };
  for (const [side, border] of Object.entries(drawn) as [Side, { line: Line; color: string }][]) {
    draw(EDGES[side], border);
    const isInside = side === "top" || side === "bottom" ? bottom > top : right > left;
    if (isInside) draw(side === "top" || side === "bottom" ? "InsideHorizontal" : "InsideVertical", border);
  }
}

type Edge = (typeof EDGES)[Side] | "InsideHorizontal" | "InsideVertical";
type Side = "left" | "right" | "top" | "bottom";
type Line = "thin" | "medium" | "thick";
const EDGES = { left: "EdgeLeft", right: "EdgeRight", top: "EdgeTop", bottom: "EdgeBottom" } as const;
const WEIGHTS = { thin: "Thin", medium: "Medium", thick: "Thick" } as const;
