import { SHARED } from "../drawing/index";
import type { ShopJob } from "./book";
import { drawingPages } from "./drawings";
import { hardwarePage } from "./hardware";
import { html, Html } from "./html";
import { jointPages } from "./joints";
import { labelPages } from "./labels";
import { SCRIPT, SCRIPT_HASH } from "./script";
import { setUpsPage } from "./set-ups";
import { sheetPages } from "./sheets";
import { stickPages } from "./stick";
import { STYLE } from "./style";

const SECTIONS = [
  ["set-ups", "Cut list by set-up"],
  ["sheets", "Sheets and their cuts"],
  ["stick", "Story sticks"],
  ["joints", "Joints at full size"],
  ["labels", "Labels"],
  ["hardware", "Hardware by bin"],
  ["drawings", "Drawings"],
] as const;

/**
 * The pages of a job for the shop, as one HTML document that needs nothing else: to print, or to hold at the saw.
 * @param title what the job is called
 */
export function shopPages(job: ShopJob, title: string): string {
  const drawers = job.plan.reduce((count, { opening, drawers }) => count + opening.quantity * drawers.length, 0);
  const page = html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <meta
          http-equiv="Content-Security-Policy"
          content="default-src 'none'; style-src 'unsafe-inline'; script-src '${new Html(SCRIPT_HASH)}'; base-uri 'none'; form-action 'none'"
        />
        <title>Shop pages: ${title}</title>
        <style>
          ${new Html(SHARED.style + STYLE)}
        </style>
      </head>
      <body data-job="${title}">
        ${new Html(SHARED.hatches)}
        <header>
          <h1>Shop pages <bdi>${title}</bdi></h1>
          <p>
            ${drawers} ${drawers === 1 ? "drawer" : "drawers"}, sizes in
            ${job.unit === "in" ? "inches" : "millimeters"}.
          </p>
          <nav class="screen" aria-label="Pages">
            <ul>
              ${SECTIONS.map(
                ([id, words]) =>
                  html`<li>
                    <input type="checkbox" data-print="${id}" checked autocomplete="off" aria-label="Print: ${words}" />
                    <a href="#${id}">${words}</a>
                  </li>`,
              )}
            </ul>
            <p class="minor">What is ticked is printed.</p>
            <p>
              <button type="button" id="print">Print…</button> <button type="button" id="keep">Save as a file</button>
              <button type="button" id="untick">Clear all ticks</button>
            </p>
            <p id="told" role="status"></p>
          </nav>
        </header>
        <main>
          ${setUpsPage(job)} ${sheetPages(job)} ${stickPages(job)} ${jointPages(job)} ${labelPages(job)}
          ${hardwarePage(job)} ${drawingPages(job)}
        </main>
        ${new Html(`<script>${SCRIPT}</script>`)}
      </body>
    </html> `;
  return page.text;
}
