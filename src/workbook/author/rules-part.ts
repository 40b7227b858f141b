import { toStored } from "../edit/formula-text";
import { escapeText } from "../xlsx/xml";
import type { RuleDefinition, RuleLook, SheetDefinition } from "./definition";

/** The looks that the sheets' rules give, in the order in which a file numbers them. */
export const ruleLooks = (sheets: readonly SheetDefinition[]): RuleLook[] => [
  ...new Set(sheets.flatMap(({ rules = [] }) => rules.flatMap((rule) => ("look" in rule ? [rule.look] : [])))),
];

/**
 * A worksheet's rules.
 * @param lookNumber the number of a look among all sheets'
 */
export function rulesXml(rules: readonly RuleDefinition[], lookNumber: (look: RuleLook) => number): string {
  const written = rules.map((rule, i) => {
    const xml =
      "colors" in rule
        ? `<cfRule type="colorScale" priority="${i + 1}">${scale(rule.colors)}</cfRule>`
        : `<cfRule type="expression" dxfId="${lookNumber(rule.look)}" priority="${i + 1}">` +
          `<formula>${escapeText(toStored(rule.when))}</formula></cfRule>`;
    return { area: rule.area, xml };
  });
  // Rules over one range stand in one element: not every program sorts out several.
  const areas = [...new Set(written.map(({ area }) => area))];
  return areas
    .map((area) => {
      const inArea = written.filter((rule) => rule.area === area);
      return `<conditionalFormatting sqref="${area}">${inArea.map(({ xml }) => xml).join("")}</conditionalFormatting>`;
    })
    .join("");
}

function scale(colors: readonly string[]): string {
  const stops = colors.length === 2 ? [MIN, MAX] : [MIN, MIDDLE, MAX];
  return `<colorScale>${stops.join("")}${colors.map((color) => `<color rgb="FF${color}"/>`).join("")}</colorScale>`;
}

const MIN = '<cfvo type="min"/>';
const MIDDLE = '<cfvo type="percentile" val="50"/>';
const MAX = '<cfvo type="max"/>';
