import { hardwareOf } from "../core/drawer";
import { showLength } from "../core/length";
import { hardwareRow } from "../functions/words/index";
import type { ShopJob } from "./book";
import { caution } from "./cautions";
import { html, tick, type Html } from "./html";

/** What is bought, a bin for each kind and size. */
export function hardwarePage({ plan, unit }: ShopJob): Html {
  return html`<section id="hardware" class="page">
    <h2>Hardware by bin</h2>
    ${caution("hardware")}
    <ol class="bins">
      ${hardwareOf(plan).map((item, i) => {
        const [what, , quantity, measure, note] = hardwareRow(item, unit).map(String) as string[];
        const size = item.size ? `, ${showLength(item.size, unit)}` : "";
        const count = `${quantity} ${measure}`;
        const said = html`<b>Bin ${i + 1}: ${what}${size}</b> <b class="size">${count}</b> ${note}`;
        return html`<li>${tick(`bin ${what}${size} ${count}`, said)}</li>`;
      })}
    </ol>
  </section>`;
}
