import type { Drawer, PlannedOpening } from "../core/drawer";
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
import { titled } from "./figure";
import { html, type Html } from "./html";

/** Fronts and sections, cabinet by cabinet. */
export function drawingPages({ plan }: ShopJob): Html {
  return html`<section id="drawings" class="page">
    <h2>Drawings</h2>
    ${caution("drawings")}
    ${plan.map(
      (planned) =>
        html`<div class="drawings">${whole(planned).map(titled)}</div>
          ${planned.drawers.map((drawer) => {
            const [section, across, apart] = ofDrawer(drawer, planned);
            return html`<div class="drawings drawer">
              <div>${[section, across].map(titled)}</div>
              ${titled(apart)}
            </div>`;
          })}`,
    )}
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

/** Spacers stand where there are boxes. */
const whole = (planned: PlannedOpening): Drawing[] => [
  elevation([planned]),
  ...(planned.drawers.length > 0 ? [spacerStack(planned)] : []),
];

const ofOpening = (planned: PlannedOpening): Drawing[] => [
  ...whole(planned),
  ...planned.drawers.flatMap((drawer) => ofDrawer(drawer, planned)),
];

const ofDrawer = (drawer: Drawer, planned: PlannedOpening): [Drawing, Drawing, Drawing] => [
  section(drawer, planned),
  crossSection(drawer, planned),
  boxApart(drawer),
];
