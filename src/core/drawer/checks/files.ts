import { less } from "../../length";
import { filesOf, foldersHang, overBottom, tabsStand } from "../files";
import type { Drawer } from "../plan/plan";
import { doubtful, wrong, type Found } from "./finding";

/** Whether folders go into a box, and whether its load counts them. */
export function checkFiles(drawer: Drawer): Found[] {
  const files = filesOf(drawer);
  if (!files) return [];
  const { opening, stock, place } = drawer;
  const { unit, standards: s } = opening;
  const [inside, room] = [drawer.insideHeight.value, overBottom(drawer)];
  const [hang, stand] = [foldersHang(unit), tabsStand(unit)];
  const { kind, folder } = files;
  const [width, depth] = [stock.insideWidth.value, stock.insideDepth.value];
  return [
    ...(files.rails ? [] : [wrong("files.narrow", { kind, folder, width, depth })]),
    ...(less(inside, hang)
      ? [wrong("files.low", { hang, inside })]
      : less(room, stand)
        ? [doubtful("files.tabs", { stand, room })]
        : []),
    ...((s.load[place] ?? s.load[0]) === "even" ? [doubtful("files.load", {})] : []),
  ];
}
