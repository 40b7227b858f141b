import { MaxRectsPacker, PACKING_LOGIC, type IRectangle } from "maxrects-packer";
import { packingInstances, type PackingInstance } from "../handbook/sheet-instances";

/**
 * What a general-purpose packer of rectangles needs for the published instances: no kerf, and no need to cut from edge
 * to edge, so that it has more freedom than ours; it takes no time to improve. Its best of all its settings is counted.
 */
export function benchReference(every: number): void {
  const instances = packingInstances.filter((_, i) => i % every === 0);
  for (const turning of [false, true]) {
    const start = performance.now();
    const sheets = instances.reduce((sum, instance) => sum + fewest(instance, turning), 0);
    const time = (performance.now() - start).toFixed(0);
    const way = turning ? "turning" : "oriented";
    console.log(`maxrects-packer ${way}: ${sheets} sheets of ${instances.length}, not cut edge to edge; ${time} ms`);
  }
}

const fewest = (instance: PackingInstance, turning: boolean): number =>
  Math.min(
    ...[PACKING_LOGIC.MAX_AREA, PACKING_LOGIC.MAX_EDGE].flatMap((logic) =>
      [false, true].map((smart) => packed(instance, { logic, smart, allowRotation: turning })),
    ),
  );

function packed(
  { id, W, H, items, lb }: PackingInstance,
  options: { logic: PACKING_LOGIC; smart: boolean; allowRotation: boolean },
): number {
  const packer = new MaxRectsPacker<IRectangle>(W, H, 0, { ...options, pot: false, square: false });
  packer.addArray(items.map(([width, height]) => ({ width, height, x: 0, y: 0 })));
  const pieces = packer.bins.reduce((sum, { rects }) => sum + rects.length, 0);
  if (pieces !== items.length || packer.bins.length < (options.allowRotation ? lb.R : lb.O))
    throw new Error(`maxrects-packer's answer to ${id} is none.`);
  return packer.bins.length;
}
