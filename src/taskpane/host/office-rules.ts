import type { RuleDefinition, RuleLook } from "../../workbook/author/definition";

/** Looks that depend on what cells hold. Each new one comes before those that are there, so that the first is added last. */
export function addRules(sheet: Excel.Worksheet, rules: readonly RuleDefinition[]): void {
  for (const rule of [...rules].reverse()) {
    const { conditionalFormats } = sheet.getRange(rule.area);
    if ("colors" in rule) colorScale(conditionalFormats.add("ColorScale"), rule.colors);
    else {
      const { custom } = conditionalFormats.add("Custom");
      custom.rule.formula = rule.when;
      change(custom.format, rule.look);
    }
  }
}

function change(format: Excel.ConditionalRangeFormat, { font, fill, borders = {}, format: shown }: RuleLook): void {
  if (font?.bold) format.font.bold = true;
  if (font?.italic) format.font.italic = true;
  if (font?.color) format.font.color = `#${font.color}`;
  if (fill) format.fill.color = `#${fill}`;
  if (shown !== undefined) format.numberFormat = shown;
  for (const [side, { color }] of Object.entries(borders)) {
    const border = format.borders.getItem(SIDES[side as keyof typeof SIDES]);
    border.style = "Continuous";
    border.color = `#${color}`;
  }
}

const SIDES = { left: "EdgeLeft", right: "EdgeRight", top: "EdgeTop", bottom: "EdgeBottom" } as const;

function colorScale({ colorScale }: Excel.ConditionalFormat, colors: readonly string[]): void {
  const stop = (type: "LowestValue" | "Percentile" | "HighestValue", color: string, formula?: string) => ({
    type,
    color: `#${color}`,
    ...(formula === undefined ? {} : { formula }),
  });
  colorScale.criteria = {
    minimum: stop("LowestValue", colors[0]!),
    ...(colors.length === 3 ? { midpoint: stop("Percentile", colors[1]!, "50") } : {}),
    maximum: stop("HighestValue", colors[colors.length - 1]!),
  };
}
