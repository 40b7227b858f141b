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

/** What of the grid's picture changes when all of it is drawn anew: nothing where each change was drawn by itself. */
export async function undrawn({ grid, work }: Started): Promise<string | undefined> {
  await work.opened.calculation.settled();
  // The dashes around what was copied last wander.
  grid.univer.__getInjector().get(IMarkSelectionService).removeAllShapes();
  const before = await still();
  redraw(grid, work.opened.unitId);
  return difference(before, await still());
}

/** The picture once it has stopped changing: a slow machine draws a change some frames late. */
async function still(): Promise<ImageData[]> {
  let last = pictures();
  for (let same = 0, looks = 0; same < 4 && looks < 200; looks++) {
    await nextFrame();
    const next = pictures();
    same = difference(last, next) === undefined ? same + 1 : 0;
    last = next;
  }
  return last;
}

const nextFrame = () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));

const pictures = (): ImageData[] =>
  [...document.querySelectorAll<HTMLCanvasElement>("#grid canvas")]
    .filter((canvas) => canvas.width > 0 && canvas.height > 0)
    .map((canvas) => canvas.getContext("2d")!.getImageData(0, 0, canvas.width, canvas.height));

function difference(before: ImageData[], after: ImageData[]): string | undefined {
  if (before.length !== after.length) return `${before.length} canvases became ${after.length}`;
  for (const [i, { data, width }] of before.entries()) {
    const changed = [...data.keys()].filter((at) => data[at] !== after[i]!.data[at]).map((at) => Math.floor(at / 4));
    if (changed.length === 0) continue;
    const [from, to] = [changed[0]!, changed.at(-1)!].map((pixel) => `${pixel % width},${Math.floor(pixel / width)}`);
    return `canvas ${i}: ${changed.length} values from ${from} to ${to}`;
  }
  return undefined;
}
