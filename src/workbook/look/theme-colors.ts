import { readXml } from "../xlsx/xml";
import { INDEXED_COLORS } from "./built-in";

/** The theme's colors in the order in which styles number them: light and dark change places. */
export function readThemeColors(text: string, part: string): string[] {
  const found: string[] = [];
  let inScheme = false;
  readXml(text, part, {
    open({ name, attributes }) {
      if (name === "clrScheme") inScheme = true;
      if (inScheme && name === "srgbClr") found.push(attributes.val ?? "000000");
      if (inScheme && name === "sysClr") found.push(attributes.lastClr ?? "000000");
    },
    close(name) {
      if (name === "clrScheme") inScheme = false;
    },
  });
  const [dark1, light1, dark2, light2, ...accents] = found;
  return [light1, dark1, light2, dark2, ...accents].filter((color) => color !== undefined);
}

/** A color of the theme, lighter (tint over 0) or darker. */
function tinted(color: string, tint: number): string {
  const channels = [0, 2, 4].map((at) => Number.parseInt(color.slice(at, at + 2), 16));
  const moved = channels.map((channel) => (tint < 0 ? channel * (1 + tint) : channel + (255 - channel) * tint));
  return moved.map((channel) => Math.round(channel).toString(16).padStart(2, "0")).join("");
}

/** The color that an element's attributes name in one of three ways: itself, by the theme, or by the old palette. */
export function colorOf(attributes: Record<string, string>, colors: readonly string[]): string | undefined {
  const { rgb, theme, indexed, tint } = attributes;
  const base = rgb?.slice(-6) ?? (theme === undefined ? INDEXED_COLORS[Number(indexed)] : colors[Number(theme)]);
  return base === undefined ? undefined : tinted(base, Number(tint ?? 0));
}
