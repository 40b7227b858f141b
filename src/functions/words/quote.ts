import { toDouble, showLength, showNumber, type Unit } from "../../core/length";
import type { Line, Quote, What } from "../../core/money";
import type { CellResult } from "../cells";
import { titled } from "../cells";

/** The rows of a quote: section, item, quantity, unit, rate, amount. */
export const quoteRows = ({ lines }: Quote, unit: Unit): CellResult[][] =>
  lines.map(({ section, what, quantity, unit: measure, rate, amount }) => [
    section,
    itemOf(what, unit),
    quantity ? toDouble(quantity) : "",
    measure ? measureWord(measure, unit) : "",
    rate ? toDouble(rate) : "",
    amount ? toDouble(amount) : "",
  ]);

function itemOf(what: What, unit: Unit): string {
  switch (what.kind) {
    case "words":
      return WORDS[what.words];
    case "extra":
      return titled(what.label || "extra");
    case "hardware": {
      const name = what.name === "screw" ? "Screws and nails" : titled(what.name);
      const size = what.size && what.name !== "pull" ? `, ${showLength(what.size, unit)}` : "";
      return `${name}${size}${what.unpriced ? " (no rate of its own)" : ""}`;
    }
    case "stock":
      return (
        [
          what.material,
          what.thickness && showLength(what.thickness, unit),
          what.length && what.width && `${showNumber(what.length, unit)} × ${showLength(what.width, unit)}`,
        ]
          .filter(Boolean)
          .join(", ") || "All materials"
      );
  }
}

/** What a quantity is counted in, by the name that it has in a quote and a hardware list. */
export const measureWord = (measure: Measure, unit: Unit): string => MEASURES[measure]?.[unit] ?? measure;

type Measure = NonNullable<Line["unit"]>;

const MEASURES: { [M in Measure]?: Record<Unit, string> } = {
  length: { in: "foot", mm: "meter" },
  area: { in: "square foot", mm: "square meter" },
  percent: { in: "%", mm: "%" },
};

const WORDS: Record<Extract<What, { kind: "words" }>["words"], string> = {
  boxFinish: "Boxes",
  frontFinish: "Fronts",
  boxes: "Boxes",
  fronts: "Fronts",
  fitting: "Fitting",
  subtotal: "Subtotal",
  onMaterialsAndLabor: "On materials and labor",
  onCost: "On cost",
  ofPrice: "Of price",
  beforeTax: "Before tax",
  onPrice: "On price",
  onMaterials: "On materials at cost",
  total: "",
};
