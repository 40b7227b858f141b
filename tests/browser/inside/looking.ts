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

/** Where the sheet's picture changes when all of it is drawn anew: nowhere where each change was drawn by itself. */
export async function undrawn({ grid, work }: Started): Promise<string | undefined> {
  await work.opened.calculation.settled();
  const injector = grid.univer.__getInjector();
  // The dashes around what was copied last wander.
  injector.get(IMarkSelectionService).removeAllShapes();
  // Those of the editors, whose caret blinks, are no pictures of the sheet.
  const canvas = injector.get(IRenderManagerService).getRenderById(work.opened.unitId)!.engine.getCanvasElement();
  const before = await still(canvas);
  redraw(grid, work.opened.unitId);
  return difference(before, await still(canvas));
}

/** The picture once it has stopped changing: a slow machine draws a change some frames late. */
async function still(canvas: HTMLCanvasElement): Promise<ImageData> {
  let last = picture(canvas);
  for (let same = 0, looks = 0; same < 3 && looks < 200; looks++) {
    await nextFrame();
    const next = picture(canvas);
    same = difference(last, next) === undefined ? same + 1 : 0;
    last = next;
  }
  return last;
}

const nextFrame = () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));

const picture = (canvas: HTMLCanvasElement): ImageData =>
  canvas.getContext("2d")!.getImageData(0, 0, canvas.width, canvas.height);

function difference(before: ImageData, after: ImageData): string | undefined {
  if (before.width !== after.width || before.height !== after.height) return "its size";
  const [one, other] = [before, after].map(({ data }) => new Uint32Array(data.buffer));
  const first = one!.findIndex((pixel, at) => pixel !== other![at]);
  if (first < 0) return undefined;
  const last = one!.findLastIndex((pixel, at) => pixel !== other![at]);
  const [from, to] = [first, last].map((at) => `${at % before.width},${Math.floor(at / before.width)}`);
  return `from ${from} to ${to}`;
}
