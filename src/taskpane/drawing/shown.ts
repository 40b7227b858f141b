import { svgOf, type Drawing } from "../../drawing/index";

/**
 * A drawing in the pane: as large as it is to scale, smaller where the pane is narrow, as long as its letters can be
 * read; then it is moved sideways.
 */
export function shown(drawing: Drawing): SVGSVGElement {
  const picture = document.importNode(
    new DOMParser().parseFromString(svgOf(drawing), "image/svg+xml").documentElement,
    true,
  ) as Element as SVGSVGElement;
  const width = drawing.box.right - drawing.box.left;
  picture.removeAttribute("height");
  picture.setAttribute("width", "100%");
  picture.style.minWidth = `${width * LEAST}mm`;
  picture.style.maxWidth = `${width}mm`;
  return picture;
}

/** How small a drawing is shown at least, of its own size. */
const LEAST = 0.72;
