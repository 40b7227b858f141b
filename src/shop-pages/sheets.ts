import { showLength, type Unit } from "../core/length";
import { sawCuts, type SawCut } from "../core/sheets";
import { sheetLayout, type Drawing } from "../drawing/index";
import type { LaidOutGroup } from "../functions/calls/index";
import { cutWords } from "../functions/words/index";
import type { ShopJob } from "./book";
import { caution } from "./cautions";
import { figure, PAPER_WIDTH, widthOf } from "./figure";
import { html, name, tick, type Html } from "./html";

/** Every sheet on a page of its own: how it is laid out, and its cuts in their order, to be ticked. */
export function sheetPages({ sheets, unit }: ShopJob): Html {
  if ("why" in sheets) {
    return html`<section id="sheets" class="page">
      <h2>Sheets</h2>
      <p>${sheets.why}</p>
    </section>`;
  }
  const { groups, safe } = sheets;
  let number = 0;
  const pages = groups.flatMap((group) => {
    const cuts = sawCuts(group.solution, safe);
    return group.solution.sheets.map((_, i) => {
      number++;
      const drawing = fitting((room) => sheetLayout(group, i + 1, number, unit, safe, room));
      return html`<div class="${number === 1 ? "sheet" : "sheet page"}">
        <h3>Sheet ${number}</h3>
        ${figure(drawing)}
        <ol class="cuts">
          ${cuts.filter(({ sheet }) => sheet === i + 1).map((cut) => cutLine(cut, number, group, unit))}
        </ol>
      </div>`;
    });
  });
  return html`<section id="sheets" class="page">
    <h2>Sheets and their cuts</h2>
    ${caution("sheets")} ${pages}
  </section>`;
}

function cutLine(cut: SawCut, sheet: number, group: LaidOutGroup, unit: Unit): Html {
  const [from, gives] = cutWords(cut, group, unit);
  const setting = showLength(cut.setting, unit);
  const what = html`${cut.step}. ${cut.kind}, keep <b class="size">${setting}</b>, from ${name(from)}: ${name(gives)}`;
  return html`<li>${tick(`sheet ${sheet} ${cut.step} ${cut.kind} ${setting} ${gives}`, what)}</li>`;
}

/** As large as the paper takes it, so that its scale is true. */
function fitting(draw: (room: { length: number; width: number }) => Drawing): Drawing {
  let drawing = draw(ROOMS[0]!);
  for (const room of ROOMS.slice(1)) if (widthOf(drawing) > PAPER_WIDTH) drawing = draw(room);
  return drawing;
}

const ROOMS = [165, 155, 130, 100, 70].map((length) => ({ length, width: 105 }));
