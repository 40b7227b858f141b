import { piecesOf, type Piece } from "../core/drawer";
import { showNumber, type Unit } from "../core/length";
import { edgesWords, pieceLabel } from "../functions/words/index";
import type { ShopJob } from "./book";
import { caution } from "./cautions";
import { html, name, type Html } from "./html";

/** Sizes of a sheet of labels, as a person types them. */
interface LabelSheet {
  width: string;
  height: string;
  across: string;
  down: string;
  left: string;
  top: string;
  gapAcross: string;
  gapDown: string;
}

/** For plain paper and scissors, on letter as on A4. */
const PLAIN: Readonly<Record<Unit, LabelSheet>> = {
  in: {
    width: "2 3/8 in",
    height: "1 1/4 in",
    across: "3",
    down: "7",
    left: "5/8 in",
    top: "5/8 in",
    gapAcross: "0 in",
    gapDown: "0 in",
  },
  mm: {
    width: "60 mm",
    height: "32 mm",
    across: "3",
    down: "7",
    left: "15 mm",
    top: "15 mm",
    gapAcross: "0 mm",
    gapDown: "0 mm",
  },
};

const WORDS: Readonly<Record<keyof LabelSheet, string>> = {
  width: "Width of a label",
  height: "Height of a label",
  across: "Labels across",
  down: "Labels down",
  left: "From the paper's left edge",
  top: "From the paper's top edge",
  gapAcross: "Gap between labels across",
  gapDown: "Gap between labels down",
};

/** A label for every piece, on sheets of labels of any size. */
export function labelPages({ plan, unit }: ShopJob): Html {
  const pieces = piecesOf(plan, unit);
  return html`<section id="labels" class="page">
    <h2>Labels</h2>
    ${caution("labels")}
    <form class="measures screen" id="label-sheet">
      <p>The sheet of labels, measured: write 2 3/8 in or 60 mm.</p>
      ${(Object.keys(WORDS) as (keyof LabelSheet)[]).map(
        (field) =>
          html`<label
            >${WORDS[field]} <input name="${field}" value="${PLAIN[unit][field]}" autocomplete="off"
          /></label>`,
      )}
    </form>
    <div class="labels" id="label-pages" role="group" tabindex="0" aria-label="Labels" data-unit="${unit}">
      ${pieces.map((piece) => label(piece, unit))}
    </div>
  </section>`;
}

function label(piece: Piece, unit: Unit): Html {
  const { length, width, thickness, material, grain } = piece.part;
  const edges = edgesWords(piece.bands, unit);
  const size = [length, width, thickness].map((one) => showNumber(one, unit)).join(" × ");
  return html`<div class="label">
    <b>${name(pieceLabel(piece))}</b>
    <span class="size">${size} ${unit}</span>
    <span>${name(material)}${grain === "length" ? ", grain along the first size" : ""}</span>
    ${edges === "" ? undefined : html`<span>Band: ${edges}</span>`}
    <span>Set-ups ${piece.setUps.join(", ")}</span>
  </div>`;
}
