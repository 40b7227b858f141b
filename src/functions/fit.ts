import { fitOf, verdictOf } from "../core/drawer";
import { cellFunction, openings, rowsOfOpenings, standards } from "./calls";
import { lengthResult, table } from "./cells";
import { verdictWords } from "./words";

/**
 * Tells whether the boxes will fit their slides once every measurement and cut has erred by its tolerance.
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN; the tolerances are among them
 * @returns {any[][]} A table: Drawer, Nominal, Least, Most (all errors add up), Likely least, Likely most (they make up for one another), Allowed least, Allowed most (by the slide), Verdict; side space per side, in the unit
 * @throws #VALUE! where a table cannot be read; an opening that cannot be planned gives one row of errors, #N/A where no slide fits, and the others are right
 * @example =DRAWER.FIT({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,23.25,1}) // => {"Drawer","Nominal","Least","Most","Likely least",…;"B1",0.5,0.4609375,0.5390625,0.4765625,0.5234375,0.5,0.53125,"May bind: up to 1/32 in short a side. Make the boxes 1/32 in narrower, and measure closer: opening and stock vary more than the slide allows."}
 * @source common practice: worst case by sums, likely case by the root of the sum of squares
 */
export function FIT(openings: any[][], standards?: any[][]): any[][] {
  return call([openings, standards]);
}

const call = cellFunction([openings, standards], ([, { job }], unit) =>
  table(
    HEADINGS,
    rowsOfOpenings(job, HEADINGS.length, 1, (planned) => {
      if (planned.drawers.length === 0) return [];
      const fit = fitOf(planned);
      const { nominal, least, most, likelyLeast, likelyMost, allowedLeast, allowedMost } = fit;
      const sizes = [nominal, least, most, likelyLeast, likelyMost, allowedLeast, allowedMost];
      const row = [
        ...sizes.map((size) => lengthResult(size, unit)),
        verdictWords(verdictOf(fit), planned.opening.standards.slide, unit),
      ];
      return planned.drawers.map(({ label }) => [label, ...row]);
    }),
  ),
);

const HEADINGS = [
  "Drawer",
  "Nominal",
  "Least",
  "Most",
  "Likely least",
  "Likely most",
  "Allowed least",
  "Allowed most",
  "Verdict",
];
