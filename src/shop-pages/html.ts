import { drawable } from "../drawing/index";

/** HTML that may stand as it is; every other text is escaped where it goes into a page. */
export class Html {
  constructor(readonly text: string) {}
}

type Hole = Html | string | number | undefined | readonly Hole[];

/** HTML with holes: what goes into them is text, whatever it looks like, unless it is HTML itself. */
export const html = (parts: TemplateStringsArray, ...holes: Hole[]): Html =>
  new Html(parts.map((part, i) => part + (i < holes.length ? filled(holes[i]) : "")).join(""));

const filled = (hole: Hole): string => {
  if (hole === undefined) return "";
  if (hole instanceof Html) return hole.text;
  if (typeof hole === "string" || typeof hole === "number") return escaped(drawable(String(hole)));
  return hole.map(filled).join("");
};

const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A name of a person's own, whose direction of reading is its own affair. */
export const name = (text: string): Html => html`<bdi>${text}</bdi>`;

/**
 * A box to tick, remembered by what it stands for.
 * @param key what is done; where the job changes it, it is to be done again
 */
export const tick = (key: string, what: Hole): Html =>
  html`<label class="tick"><input type="checkbox" data-tick="${key}" /> <span>${what}</span></label>`;
