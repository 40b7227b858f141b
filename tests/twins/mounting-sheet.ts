import type { Rows, Value } from "../libreoffice";
import { planSheet, type SheetJob } from "./plan-sheet";

/** The columns of MOUNTING that a person would work out beside the plan. */
export const MOUNTING_COLUMNS = [
  "Box spacer",
  "Slide spacer",
  "Front past box left",
  "Front past box right",
  "Front below box",
  "Pull height",
  "Pull from left",
  "Second pull",
  "Front screws",
] as const;

/** What no standard of a `SheetJob` says, at its default. */
const DEFAULTS = { in: { "slide height": 1.75, wide: 24 }, mm: { "slide height": 45, wide: 600 } };

/**
 * The plan's sheet, with a column of native formulas for each size of its mounting behind every drawer's row.
 * @returns the sheet, and where its drawers and the new columns begin (from 0)
 */
export function mountingSheet(job: SheetJob): { rows: Rows; first: number; column: number } {
  const { rows, first } = planSheet(job);
  const column = Math.max(...rows.slice(first).map((row) => row.length));
  const names = Object.keys(job.standards);
  const s = (name: string): string => `$B$${names.indexOf(name) + 1}`;
  const mounted = rows.map((row): Value[] => [...row]);
  let r = first;
  job.openings.forEach(({ drawers }, o) => {
    const opening = names.length + o + 1;
    const sides = [share(job, o, 0, s), share(job, o, job.openings.length - 1, s)];
    drawers.forEach((_, d) => {
      const own = r + 1;
      const below = d === drawers.length - 1 ? "0" : `(K${own + 1}+I${own + 1})`;
      const { "slide height": slide, wide } = DEFAULTS[job.unit];
      mounted[r]!.push(
        `=K${own}-${below}`,
        `=M${own}-${slide}/2`,
        ...sides.map((side) => `=(A${opening}-H${own})/2+${side}`),
        `=K${own}-G${own}`,
        `=G${own}+F${own}/2`,
        `=IF(E${own}<${wide},E${own}/2,E${own}/4)`,
        `=IF(E${own}<${wide},"",3*E${own}/4)`,
        `=IF(E${own}<${wide},2,4)`,
      );
      r++;
    });
  });
  return { rows: mounted, first, column };
}

/** How far the fronts reach past one side of an opening, `end` being the place of the last opening on that side. */
function share({ style, faceFrame }: SheetJob, place: number, end: number, s: (name: string) => string): string {
  if (style === "inset") return `-${s("inset gap")}`;
  if (faceFrame) return s("frame overlay");
  return place === end
    ? `${s("cabinet thickness")}-${s("end reveal")}`
    : `(${s("partition thickness")}-${s("front gap")})/2`;
}
