import type { PlannedOpening } from "../core/drawer";
import {
  backCorners,
  boxApart,
  checkRuler,
  crossSection,
  elevation,
  joints,
  section,
  sheetLayout,
  spacerStack,
  storyStick,
  type Drawing,
} from "../drawing/index";
import type { ShopJob } from "./book";
import { caution } from "./cautions";
import { figure } from "./figure";
import { html, type Html } from "./html";

/** Fronts and sections, cabinet by cabinet. */
export function drawingPages({ plan }: ShopJob): Html {
  return html`<section id="drawings" class="page">
    <h2>Drawings</h2>
    ${caution("drawings")}
    <div class="drawings">${plan.flatMap(ofOpening).map(figure)}</div>
  </section>`;
}

/** All drawings of a job, each at its own size. */
export function shopDrawings({ plan, unit, sheets }: ShopJob): Drawing[] {
  let number = 0;
  const layouts =
    "why" in sheets
      ? []
      : sheets.groups.flatMap((group) =>
          group.solution.sheets.map((_, i) => sheetLayout(group, i + 1, ++number, unit, sheets.safe)),
        );
  const sticks = plan.flatMap(storyStick);
  return [...plan.flatMap(ofOpening), ...sticks, ...joints(plan), ...backCorners(plan), checkRuler(), ...layouts];
}

const ofOpening = (planned: PlannedOpening): Drawing[] => [
  elevation([planned]),
  spacerStack(planned),
  ...planned.drawers.flatMap((drawer) => [section(drawer, planned), crossSection(drawer, planned), boxApart(drawer)]),
];
