import { cellName, parseArea, type Area } from "../address";
import { decodeEscapes, readXml } from "../xlsx/xml";
import { isTrue } from "../xlsx/workbook-part";
import type { StyleChange } from "./cell-styles";
import { colorOf } from "./theme-colors";

/** A look that depends on what cells hold. */
export interface Condition {
  areas: Area[];
  priority: number;
  /** Where it holds, rules after it do not count. */
  stops: boolean;
  /** A formula that must be true, as it stands for the first area's upper left cell, and what it then changes. */
  test?: { formula: string; change: StyleChange };
  /** Numbers colored by where they lie between the least and the greatest. */
  scale?: Stop[];
}

/** One color of a scale, and the number that it stands at. */
export interface Stop {
  type: string;
  value: string;
  color: string;
}

/**
 * Reads a worksheet's rules: color scales, and whatever has a formula. Bars, icons and rules about ranks have none, are
 * not shown and stay in the file.
 */
export function readConditions(
  text: string,
  part: string,
  changes: readonly StyleChange[],
  colors: readonly string[],
): Condition[] {
  const found: Condition[] = [];
  let areas: Area[] = [];
  let rule: Rule | undefined;
  let inFormula = false;
  readXml(text, part, {
    open({ name, attributes }) {
      // Rules of a later kind stand in an extension, and have their ranges elsewhere.
      if (name === "conditionalFormatting") areas = areasOf(attributes.sqref ?? "");
      else if (name === "cfRule" && areas.length > 0) rule = { attributes, formulas: [], points: [], colors: [] };
      else if (name === "formula" && rule) inFormula = rule.formulas.push("") > 0;
      else if (name === "cfvo") rule?.points.push(attributes);
      else if (name === "color") rule?.colors.push(colorOf(attributes, colors) ?? "ffffff");
    },
    text(heard) {
      if (inFormula && rule) rule.formulas[rule.formulas.length - 1] += decodeEscapes(heard);
    },
    close(name) {
      if (name === "formula") inFormula = false;
      if (name !== "cfRule" || !rule) return;
      const condition = conditionOf(rule, areas, changes);
      if (condition) found.push(condition);
      rule = undefined;
    },
  });
  return found.sort((a, b) => a.priority - b.priority);
}

/** What a grid asks of every cell that it shows; a person's sheet has some dozens of rules. */
const MOST = { rules: 1_000, areas: 10_000 };

/** The rules that count most, as many as can be asked of every cell. */
export function mostImportant(conditions: readonly Condition[]): Condition[] {
  let areas = 0;
  const end = conditions.findIndex((condition, i) => i >= MOST.rules || (areas += condition.areas.length) > MOST.areas);
  return conditions.slice(0, end < 0 ? undefined : end);
}

interface Rule {
  attributes: Record<string, string>;
  formulas: string[];
  points: Record<string, string>[];
  colors: string[];
}

function conditionOf(rule: Rule, areas: Area[], changes: readonly StyleChange[]): Condition | undefined {
  const { type, priority, stopIfTrue, dxfId } = rule.attributes;
  const basis = { areas, priority: Number(priority ?? 0), stops: isTrue(stopIfTrue) };
  if (type === "colorScale") {
    const stops = rule.points.map(({ type = "num", val = "" }, i) => ({
      type,
      value: val,
      color: rule.colors[i] ?? "ffffff",
    }));
    return { ...basis, scale: stops };
  }
  const formula = type === "cellIs" ? comparison(rule, areas[0]!) : rule.formulas[0];
  const change = changes[Number(dxfId)];
  return formula && change ? { ...basis, test: { formula, change } } : undefined;
}

/** A rule about the cell's own value, as a formula. */
function comparison({ attributes, formulas }: Rule, { top, left }: Area): string | undefined {
  const [first, second] = formulas.map((formula) => `(${formula})`);
  const own = cellName(top, left);
  const { operator = "" } = attributes;
  if (operator === "between") return `AND(${own}>=${first},${own}<=${second})`;
  if (operator === "notBetween") return `OR(${own}<${first},${own}>${second})`;
  return operator in OPERATORS ? `${own}${OPERATORS[operator]}${first}` : undefined;
}

const OPERATORS: Record<string, string> = {
  equal: "=",
  notEqual: "<>",
  lessThan: "<",
  lessThanOrEqual: "<=",
  greaterThan: ">",
  greaterThanOrEqual: ">=",
};

const areasOf = (sqref: string): Area[] => sqref.split(/\s+/).flatMap((ref) => parseArea(ref) ?? []);
