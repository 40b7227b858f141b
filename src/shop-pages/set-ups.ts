import { cutList, setUpsOf, type SetUp } from "../core/drawer";
import { showLength } from "../core/length";
import { setUpRows } from "../functions/words/index";
import type { ShopJob } from "./book";
import { caution } from "./cautions";
import { html, name, tick, type Html } from "./html";

/** The cut list by set-up: every setting once, in the order to cut, with a box to tick for each drawer's pieces. */
export function setUpsPage({ plan, unit }: ShopJob): Html {
  // The first says what goes for all of them.
  const steps = setUpsOf(plan, unit);
  const rows = setUpRows(steps, unit);
  const counts = new Map(cutList(plan, false).map((part) => [`${part.name}|${part.drawers[0]!}`, part.quantity]));
  return html`<section id="set-ups" class="page">
    <h2>Cut list by set-up</h2>
    ${caution("phone", String(rows[0]![2]))}
    ${steps.slice(1).map((step, before) => {
      const i = before + 1;
      const [number, operation, setting] = rows[i]!;
      if ("caution" in step) return html`<p class="minor">${String(setting)}</p>`;
      const value = showLength(step.value, unit);
      const key = `${String(operation)} ${String(setting)} ${value}`;
      return html`<div class="step">
        <h3>
          ${tick(key, html`${String(number)}. ${String(operation)}: ${String(setting)} <b class="size">${value}</b>`)}
        </h3>
        <p class="count">${step.pieces} ${step.pieces === 1 ? "piece" : "pieces"}</p>
        ${step.parts.map((part) => partLine(part, key, counts))}
      </div>`;
    })}
  </section>`;
}

/** More drawers than these are not ticked one by one: the page must still open on a phone. */
const MOST_TICKS = 120;

function partLine({ name: part, drawers }: SetUp["parts"][number], key: string, counts: Map<string, number>): Html {
  const times = (drawer: string): string => {
    const count = counts.get(`${part}|${drawer}`) ?? 1;
    return count > 1 ? ` ×${count}` : "";
  };
  if (drawers.length > MOST_TICKS) {
    return html`<p class="ticks">${tick(`${key} ${part}`, html`${part}: ${name(drawers.join(", "))}`)}</p>`;
  }
  return html`<p class="ticks">
    <span class="part">${part}</span>
    ${drawers.map((drawer) => html`${tick(`${key} ${part} ${drawer}`, html`${name(drawer)}${times(drawer)}`)} `)}
  </p>`;
}
