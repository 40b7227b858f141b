import { IRenderManagerService, type Spreadsheet } from "@univerjs/engine-render";
import { SheetSkeletonManagerService } from "@univerjs/sheets-ui";
import type { Grid } from "./univer";

/** Draws all that is seen anew. The library itself draws only the cells that a change names. */
export function redraw({ univer }: Grid, unitId: string): void {
  const render = univer.__getInjector().get(IRenderManagerService).getRenderById(unitId);
  if (!render) return;
  render.with(SheetSkeletonManagerService).reCalculate();
  (render.mainComponent as Spreadsheet | null)?.makeForceDirty(true);
  render.scene.makeDirty();
}
