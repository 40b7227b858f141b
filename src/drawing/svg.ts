import type { Drawing, Label, Stroke } from "./drawing";
import { mm } from "./paper";
import { drawable } from "./text";

export interface SvgOptions {
  /** Black on white whatever the reader prefers: for pictures that are kept. */
  onPaper?: boolean;
  /** Styles and hatches stand once in the page that it is put into, as `SHARED` has them. */
  inPage?: boolean;
}

/** A drawing as the text of an SVG file, as large as it is to scale. */
export function svgOf(
  { title, about, box, strokes, labels }: Drawing,
  { onPaper = false, inPage = false }: SvgOptions = {},
): string {
  const { left, top } = box;
  const [width, height] = [box.right - left, box.bottom - top];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="drawing" role="img" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="${[left, top, width, height].map(mm).join(" ")}">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(about)}</desc>`,
    ...(inPage ? [] : [`<style>${STYLE}${onPaper ? "" : DARK}</style>`, HATCHES]),
    `<rect class="paper" x="${mm(left)}" y="${mm(top)}" width="${mm(width)}" height="${mm(height)}"/>`,
    ...strokes.map(strokeOf),
    ...labels.map(labelOf),
    "</svg>",
    "",
  ].join("\n");
}

const strokeOf = ({ path, line, fill }: Stroke): string =>
  `<path class="${line}${fill ? ` ${fill}` : ""}" d="${path}"/>`;

function labelOf({ text, before, after, whole, x, y, size, anchor, isTurned, of }: Label): string {
  const place = `x="${mm(x)}" y="${mm(y)}"${isTurned ? ` transform="rotate(-90 ${mm(x)} ${mm(y)})"` : ""}`;
  const more = anchor === "start" ? "" : ` text-anchor="${anchor}"`;
  const says = of === undefined ? "" : ` data-of="${escaped(drawable(of))}"`;
  const tip = whole === undefined ? "" : `<title>${escaped(whole)}</title>`;
  const letters = `<text ${place} font-size="${mm(size)}"${more}`;
  if (!before && !after) return `${letters}${says}>${tip}${escaped(text)}</text>`;
  const [ahead, behind] = [before ? `${escaped(before)} ` : "", after ? ` ${escaped(after)}` : ""];
  return `${letters}>${tip}${ahead}<tspan${says}>${escaped(text)}</tspan>${behind}</text>`;
}

const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** Widths as ISO 128-2 pairs them (from memory): narrow lines half as wide as wide ones. */
const STYLE = [
  ".drawing{color:#000;--ground:#fff;background:var(--ground)}",
  ".drawing path{fill:none;stroke:currentColor;stroke-width:.18;stroke-linejoin:round}",
  ".drawing .visible{stroke-width:.35}",
  ".drawing .hidden{stroke-dasharray:1.6 .8}",
  ".drawing .center{stroke-dasharray:4 .7 .5 .7}",
  ".drawing .paper{fill:var(--ground);stroke:none}",
  ".drawing path.paper{stroke:currentColor}",
  ".drawing .dot{fill:currentColor}",
  ".drawing .cut{fill:url(#hatch-cut)}",
  ".drawing .end{fill:url(#hatch-end)}",
  ".drawing pattern path{stroke-width:.13}",
  '.drawing text{fill:currentColor;font-family:Arial,Helvetica,"Liberation Sans",sans-serif;unicode-bidi:isolate;paint-order:stroke;stroke:var(--ground);stroke-width:.7px;stroke-linejoin:round}',
  // A name that reads from right to left does not turn round the size in its line.
  ".drawing tspan{unicode-bidi:isolate}",
].join("");

const DARK = "@media screen and (prefers-color-scheme:dark){.drawing{color:#f2e9db;--ground:#1e1a16}}";

/** Section hatching at 45°, the other way round for the next part. */
const HATCHES =
  '<defs><pattern id="hatch-cut" width="1.4" height="1.4" patternUnits="userSpaceOnUse"><path d="M-.2 1.6L1.6 -.2M-.2 .2L.2 -.2M1.2 1.6L1.6 1.2"/></pattern>' +
  '<pattern id="hatch-end" width="1.1" height="1.1" patternUnits="userSpaceOnUse"><path d="M-.2 -.2L1.3 1.3M-.2 .9L.2 1.3M.9 -.2L1.3 .2"/></pattern></defs>';

/** What the drawings of one page share: the text of its style, and an element that shows nothing. */
export const SHARED = {
  style: STYLE + DARK,
  hatches: `<svg width="0" height="0" aria-hidden="true" style="position:absolute">${HATCHES}</svg>`,
} as const;
