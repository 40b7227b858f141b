import type { Unit } from "../../core/length";
import type { Argument } from "./argument";
import { word } from "./word";

/**
 * The unit of numbers without a mark, and of the result. Lengths stand to its left and are read before it is checked,
 * for faults go from left to right: until then a bad unit is inches.
 */
export function unit(name: string): Argument<Unit> {
  const read = word<Unit>(name, ["in", "mm"]).read;
  return {
    name,
    read,
    unitFirst(raw) {
      try {
        return read(raw, { unit: "in", raw: [], earlier: [] });
      } catch {
        return "in";
      }
    },
  };
}
