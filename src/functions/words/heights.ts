import { isFramed, type Opening } from "../../core/drawer";
import { isZero } from "../../core/length";
import { len } from "./wording";

/** What the heights of an opening are measured up from. */
export function heightsFrom(opening: Opening): string {
  if (!isFramed(opening)) return "floor of the opening";
  const offset = opening.standards["floor offset"];
  if (!offset) return "top edge of the rail";
  if (isZero(offset)) return "top edge of the rail, level with the case floor";
  const above = len(offset, opening.unit);
  return `top edge of the rail, ${above} above the case floor: add that to a spacer that stands on the floor`;
}
