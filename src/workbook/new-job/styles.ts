import type { StyleDefinition } from "../author/definition";
import { STYLES, type Style } from "../example/styles";

/**
 * The example's styles, but that sizes are typed as texts, so that 7/16 stays one; results keep the formats that they
 * bring, in inches and in millimeters; and money has no sign.
 */
export const NEW_JOB_STYLES = Object.fromEntries(
  (Object.entries(STYLES) as [Style, StyleDefinition][]).map(([name, style]) => [name, changed(name, style)]),
) as Record<Style, StyleDefinition>;

function changed(name: Style, style: StyleDefinition): StyleDefinition {
  if (name === "input" || name === "inputText" || name === "inputWord") return { ...style, format: "@" };
  const { format, ...rest } = style;
  if (["result", "inputResult", "columnSize"].includes(name)) return rest;
  return format ? { ...style, format: format.replace(/"\$"/g, "") } : style;
}
