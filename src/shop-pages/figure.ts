import { svgOf, type Drawing } from "../drawing/index";
import { html, Html, name } from "./html";

/** What stands across on letter and on A4 within the margins, in millimeters. */
export const PAPER_WIDTH = 188;

/** A drawing in its true size on paper; on a phone it is moved sideways where it is wider. */
export function figure(drawing: Drawing): Html {
  return html`<div class="picture" role="group" tabindex="0" aria-label="${drawing.title}">
    ${new Html(svgOf(drawing, { inPage: true }))}
  </div>`;
}

/** The same under its title, where nothing else says what it shows. */
export const titled = (drawing: Drawing): Html =>
  html`<figure>
    <figcaption>${name(drawing.title)}</figcaption>
    ${figure(drawing)}
  </figure>`;

export const widthOf = ({ box }: Drawing): number => box.right - box.left;
