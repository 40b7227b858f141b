import type { HostPicture } from "./host";
import type { Run } from "./run";

/** Puts pictures beside what stands on the sheet of the selected cell, over no cell that holds anything. */
export const addPicture =
  (run: Run) =>
  ({ png, name, description, width }: HostPicture): Promise<{ sheet: string; isRenewed: boolean }> =>
    run(async (context) => {
      const cell = context.workbook.getActiveCell();
      const { worksheet } = cell;
      const used = worksheet.getUsedRangeOrNullObject();
      const { shapes } = worksheet;
      cell.load("top, left, width");
      used.load("left, width");
      worksheet.load("name");
      shapes.load("items/name, items/left, items/top, items/width, items/height");
      await context.sync();
      const former = shapes.items.find((shape) => shape.name === name);
      const left = GAP + Math.max(cell.left + cell.width, used.isNullObject ? 0 : used.left + used.width);
      const place = former ?? { left, top: below(shapes.items, left, left + width, cell.top), width };
      const shape = shapes.addImage(png);
      Object.assign(shape, { name, altTextDescription: description, lockAspectRatio: true, placement: "OneCell" });
      Object.assign(shape, { left: place.left, top: place.top, width: place.width });
      former?.delete();
      await context.sync();
      return { sheet: worksheet.name, isRenewed: former !== undefined };
    });

/** In points, between a picture and what is next to it. */
const GAP = 12;

interface Box {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** The first place from `top` on that is beneath every picture in the way. */
function below(others: readonly Box[], left: number, right: number, top: number): number {
  const inTheWay = others.filter((other) => other.left < right && other.left + other.width > left);
  return Math.max(
    top,
    ...inTheWay.filter((other) => other.top + other.height > top).map((other) => other.top + other.height + GAP),
  );
}
