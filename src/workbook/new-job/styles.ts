import type { StyleDefinition } from "../author/index";
import { STYLES, type Style } from "../example/styles";
import type { Unit } from "../../core/length/index";

/** The example's styles, but for what a shop types: sizes are texts, so that 7/16 stays one, and money has no sign. */
export const stylesOf = (unit: Unit): Record<Style, StyleDefinition> =>
  Object.fromEntries(
    (Object.entries(STYLES) as [Style, StyleDefinition][]).map(([name, style]) => [name, changed(name, style, unit)]),
  ) as Record<Style, StyleDefinition>;

const TYPED: readonly Style[] = ["input", "inputText", "inputWord"];

function changed(name: Style, style: StyleDefinition, unit: Unit): StyleDefinition {
  if (TYPED.includes(name)) return { ...style, format: "@" };
  const { format, ...rest } = style;
  if (format === STYLES.result.format && unit === "mm") return rest;
  return format ? { ...style, format: format.replace('"$"', "") } : style;
}
