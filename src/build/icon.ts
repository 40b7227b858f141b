import { Resvg } from "@resvg/resvg-js";

/** The sizes that the manifest names: ribbon 16, 32 and 80, list of add-ins 64, and 128 for high resolutions. */
export const ICON_SIZES = [16, 32, 64, 80, 128] as const;

/** Draws an icon as a PNG of `size` × `size` pixels. */
export const renderIcon = (svg: string | Buffer, size: number): Buffer =>
  new Resvg(svg, { fitTo: { mode: "width", value: size }, font: { loadSystemFonts: false } }).render().asPng();
