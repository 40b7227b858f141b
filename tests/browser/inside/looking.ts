import { IRenderManagerService } from "@univerjs/engine-render";
import { IMarkSelectionService, SheetSkeletonManagerService } from "@univerjs/sheets-ui";
import { redraw } from "../../../src/workbook/browser/redraw";
import type { Started } from "./agreement";

/** What a person reads in a range of the sheet in front, as it is drawn. */
export function shown({ grid }: Started, range: string): string[][] {
  const book = grid.api.getActiveWorkbook()!;
  const sheet = book.getActiveSheet().getSheet();
  const { startRow, endRow, startColumn, endColumn } = book.getActiveSheet().getRange(range).getRange();
  const texts: string[][] = [];
  for (let row = startRow; row <= endRow; row++) {
    const line: string[] = [];
    for (let column = startColumn; column <= endColumn; column++) line.push(words(sheet.getCell(row, column)?.v));
    texts.push(line);
  }
  return texts;
}

/** Fractions are drawn with room for more digits. */
const words = (drawn: unknown): string =>
  String(drawn ?? "")
    .trim()
    .replaceAll(/\s+/g, " ");

/** The middle of a cell's edge to the right, in the page. */
export function edgeOf({ grid, work }: Started, row: number, column: number): { x: number; y: number } {
  const render = grid.univer.__getInjector().get(IRenderManagerService).getRenderById(work.opened.unitId)!;
  const skeleton = render.with(SheetSkeletonManagerService).getCurrentSkeleton()!;
  const { startY, endX, endY } = skeleton.getCellWithCoordByIndex(row, column);
  const { left, top } = render.engine.getCanvasElement().getBoundingClientRect();
  return { x: left + endX, y: top + (startY + endY) / 2 };
}

const picture = () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));

/** Whether the picture of the grid is the one that it is when all of it is drawn anew. */
export async function isDrawn({ grid, work }: Started): Promise<boolean> {
  const pictures = () =>
    [...document.querySelectorAll<HTMLCanvasElement>("#grid canvas")].map((one) => one.toDataURL());
  await work.opened.calculation.settled();
  // The dashes around what was copied last wander.
  grid.univer.__getInjector().get(IMarkSelectionService).removeAllShapes();
  await picture();
  const before = pictures();
  redraw(grid, work.opened.unitId);
  await picture();
  return JSON.stringify(before) === JSON.stringify(pictures());
}
