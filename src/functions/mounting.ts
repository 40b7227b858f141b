import { mountingOf, screwsOfFront, type Hung, type Mounting } from "../core/drawer";
import { cellFunction, openings, rowsOfOpenings, standards } from "./calls";
import { lengthResult, table } from "./cells";
import { heightsFrom } from "./words";

/**
 * Tells how every drawer is hung: the spacers under boxes and slides, where the front lies on its box, and where its pulls and screws go.
 * @customfunction
 * @group Plan
 * @param {any[][]} openings One row an opening, as in PLAN
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @returns {any[][]} A table: Drawer, Box spacer (from the box below, or the floor), Slide spacer (from the floor to the slide's lower edge) and Slide centerline (both blank for undermount slides, whose data sheet places them), Front bottom, Front past box left, Front past box right, Front below box, Pull height, Pull from left, Second pull, Front screws, and Heights from behind a face frame; in the unit, heights up from the floor of the opening, which is the top edge of a face frame's rail
 * @throws #VALUE! where a table cannot be read; an opening that cannot be planned gives one row of errors, #N/A where no slide fits, and the others are right
 * @example =DRAWER.MOUNTING({"Opening","Width","Height","Depth","Drawers";"B",24,26.25,23.25,1}) // => {"Drawer","Box spacer","Slide spacer","Slide centerline","Front bottom",…;"B1",0.5,12.375,13.25,-0.75,1.1875,1.1875,1.25,13.0625,6.34375,19.03125,4}
 * @source common practice: spacers under the lowest box and between boxes set slides without measuring
 */
export function MOUNTING(openings: any[][], standards?: any[][]): any[][] {
  return call([openings, standards]);
}

const call = cellFunction([openings, standards], ([, { job }], unit) => {
  // Behind a face frame the floor may be taken for the case's own, which lies lower.
  const framed = job.openings.some(({ standards }) => standards.construction === "face frame");
  const headings = framed ? [...HEADINGS, "Heights from"] : HEADINGS;
  return table(
    headings,
    rowsOfOpenings(job, headings.length, 1, (planned) =>
      [...planned.falseFronts, ...mountingOf(planned)].map((one) => {
        const [hung, screws] = "drawer" in one ? [one.drawer, one.frontScrews] : [one, screwsOfFront(one)];
        return [
          hung.label,
          ...sizes(one).map((size) => (size ? lengthResult(size.value, unit) : "")),
          screws,
          ...(framed ? [heightsFrom(hung.opening)] : []),
        ];
      }),
    ),
  );
});

const HEADINGS = [
  "Drawer",
  "Box spacer",
  "Slide spacer",
  "Slide centerline",
  "Front bottom",
  "Front past box left",
  "Front past box right",
  "Front below box",
  "Pull height",
  "Pull from left",
  "Second pull",
  "Front screws",
];

/** Of a front without a box where it hangs alone. */
const sizes = (one: Mounting | Hung) =>
  "drawer" in one ? sizesOf(one) : HEADINGS.slice(1, -1).map((_, i) => (i === 3 ? one.front.bottom : undefined));

const sizesOf = ({ drawer, ...m }: Mounting) => [
  m.boxSpacer,
  m.slideSpacer,
  drawer.slideCenterline,
  drawer.front.bottom,
  m.pastLeft,
  m.pastRight,
  m.below,
  m.pullHeight,
  m.pulls[0],
  m.pulls[1],
];
