import { Resvg } from "@resvg/resvg-js";

/** The sizes that the manifest and the page name: ribbon 16, 32 and 80, list of add-ins 32, and 64 for high resolutions. */
export const ICON_SIZES = [16, 32, 64, 80] as const;

/** Draws an icon as a PNG of `size` × `size` pixels. */
export const renderIcon = (svg: string | Buffer, size: number): Buffer =>
  new Resvg(svg, { fitTo: { mode: "width", value: size }, font: { loadSystemFonts: false } }).render().asPng();
