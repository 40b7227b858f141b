import { backCorners, checkRuler, joints } from "../drawing/index";
import type { ShopJob } from "./book";
import { caution } from "./cautions";
import { figure, titled } from "./figure";
import { html, type Html } from "./html";

/** Every distinct corner of the boxes at full size, and what undermount slides want of the backs. */
export function jointPages({ plan }: ShopJob): Html {
  return html`<section id="joints" class="page">
    <h2>Joints at full size</h2>
    ${caution("joints")} ${figure(checkRuler())}
    <div class="drawings">${[...joints(plan), ...backCorners(plan)].map(titled)}</div>
  </section>`;
}
