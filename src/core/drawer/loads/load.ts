import { once } from "../once";
import { Fault, toDouble, type Unit } from "../../length";
import { evenLoad, STANDARD_GRAVITY } from "../../wood";
import type { Write } from "../size";
import type { Drawer } from "../plan/plan";
import { boxWeight } from "./weight";

/** What a drawer carries, in lb or kg, and what its slides must. */
export interface Carried {
  /** What lies in it. */
  load: number;
  how: (write: Write) => string;
  /** The drawer itself. */
  box: number;
  total: number;
}

/** @throws Fault `load.count` where there are neither one load nor as many as drawers */
export const carriedBy = once((drawer: Drawer): Carried => {
  const { weight: load, how } = loadOf(drawer);
  const box = boxWeight(drawer);
  return { load, how, box, total: load + box };
});

interface Load {
  weight: number;
  how: (write: Write) => string;
}

function loadOf({ opening, stock, place }: Drawer): Load {
  const { standards: s, unit, drawers } = opening;
  const asked = s.load;
  if (asked.length !== 1 && asked.length !== drawers.length) {
    throw new Fault("load.count", { given: asked.length, count: drawers.length });
  }
  const own = asked[asked.length === 1 ? 0 : place]!;
  if (typeof own === "number") return { weight: own, how: () => "as asked for" };
  const [width, depth] = [stock.insideWidth.value, stock.insideDepth.value];
  if (own === "files") {
    const rows = Math.max(1, Math.floor(toDouble(width) / FILE_WIDTH[unit]));
    const words = rows === 1 ? "one row" : `${rows} rows`;
    return {
      weight: rows * toDouble(depth) * FILES[unit],
      how: (write) =>
        `files: ${words} of inside depth ${write(depth)}, at ${FILES[unit] * PER[unit].times} ${PER[unit].words}`,
    };
  }
  const rate = s["load rate"];
  return {
    weight: evenLoad(width, depth, unit === "in" ? rate : rate * STANDARD_GRAVITY, unit),
    how: (write) =>
      `inside ${write(width)} × ${write(depth)}, at an even ${rate} ${unit === "in" ? "lb/ft²" : "kg/m²"} (an estimate)`,
  };
}

/** A row of standing files, in lb an inch or kg a millimeter. @source common practice */
const FILES: Record<Unit, number> = { in: 2, mm: 0.036 };
const PER: Record<Unit, { times: number; words: string }> = {
  in: { times: 1, words: "lb an inch" },
  mm: { times: 10, words: "kg a centimeter" },
};

/** What a row of letter files takes of the width. @source common practice */
const FILE_WIDTH: Record<Unit, number> = { in: 12, mm: 305 };
