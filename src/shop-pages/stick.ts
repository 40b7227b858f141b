import { checkRuler, storyStick } from "../drawing/index";
import { heightsFrom } from "../functions/words/index";
import type { ShopJob } from "./book";
import { caution } from "./cautions";
import { figure } from "./figure";
import { html, name, type Html } from "./html";

/** The mounting heights of every opening at full size, in sections that are cut out and joined. */
export function stickPages({ plan, unit }: ShopJob): Html {
  return html`<section id="stick" class="page">
    <h2>Story sticks</h2>
    ${caution("stick")}
    ${plan.map(
      (planned, i) =>
        html`<div class="${i === 0 ? "stick" : "stick page"}">
          <h3>Opening ${name(planned.opening.label)}</h3>
          <p class="minor">
            Heights up from ${heightsFrom(planned.opening)}, in ${unit === "in" ? "inches" : "millimeters"}. Slide edge:
            its lower edge; slide mid: its centerline. Cut along the joints and butt the sections.
          </p>
          ${figure(checkRuler())}
          <div class="sections">${storyStick(planned).map(figure)}</div>
        </div>`,
    )}
  </section>`;
}
