import type { Part, PlannedOpening } from "../drawer";
import {
  add,
  divide,
  Fault,
  isNegative,
  ratio,
  share,
  subtract,
  toDouble,
  total,
  ZERO,
  type Rational,
  type Unit,
} from "../length";
import { finishLines } from "./finish";
import { hardwareLines } from "./hardware";
import { laborLines } from "./labor";
import { charged, words, type Line, type Section } from "./line";
import { rounded } from "./currency";
import type { Rates } from "./rates";
import type { Measure } from "./solid-stock";

/** A job that is planned, and the stock that its parts are cut from. */
export interface CostedJob {
  unit: Unit;
  plan: readonly PlannedOpening[];
  parts: readonly Part[];
  stock: readonly StockCharge[];
}

/** One row of stock, and how much of it the job takes. */
export interface StockCharge {
  material: string;
  thickness?: Rational;
  length?: Rational;
  width?: Rational;
  soldBy: "sheet" | Measure;
  /** Whole sheets, or board feet or cubic meters with their waste. */
  bought: Rational;
  /** Of sheets the part that becomes pieces. */
  used: Rational;
  price: Rational;
}

export interface Quote {
  lines: readonly Line[];
  total: Rational;
  decimals: number;
}

/**
 * A quote from materials and labor to the total. Every amount is rounded where it stands, and all that follows is
 * worked out from what stands there, so that a person with a calculator finds the same.
 * @throws Fault where a rate that the job needs is missing, or a discount takes the price below 0
 */
export function quoteOf({ unit, plan, parts, stock }: CostedJob, rates: Rates): Quote {
  const decimals = rates["currency decimals"];
  const done = (lines: Line[], sum: Rational): Quote => ({
    lines: [...lines, { section: "Total", what: words("total"), amount: sum }],
    total: sum,
    decimals,
  });
  if (plan.length === 0) return done([], ZERO);
  const materials = [
    stockLines("Sheets", stock, rates),
    stockLines("Solid stock", stock, rates),
    hardwareLines(plan, rates, unit),
    finishLines(parts, rates, unit),
  ];
  const labor = laborLines(plan, rates);
  const atCost = sumOf(materials.flat());
  const cost = [...materials, labor].flatMap(withSubtotal);
  const gains = gainLines(add(atCost, sumOf(labor)), rates);
  const extras = rates.extras.map(({ label, amount }) =>
    charged("Extras", { kind: "extra", label }, ratio(1), undefined, amount, decimals),
  );
  const price = total([atCost, sumOf(labor), sumOf(gains), sumOf(extras)]);
  if (isNegative(price)) throw new Fault("quote.belowZero", { price: toDouble(price) });
  const tax = taxLines(price, atCost, rates);
  return done(
    [...cost, ...gains, ...withSubtotal(extras), { section: "Price", what: words("beforeTax"), amount: price }, ...tax],
    add(price, sumOf(tax)),
  );
}

const stockLines = (section: "Sheets" | "Solid stock", stock: readonly StockCharge[], rates: Rates): Line[] =>
  stock
    .filter(({ soldBy }) => (soldBy === "sheet") === (section === "Sheets"))
    .map(({ soldBy, bought, used, price, material, thickness, length, width }) =>
      charged(
        section,
        { kind: "stock", material, thickness, ...(soldBy === "sheet" && { length, width }) },
        soldBy === "sheet" && rates["charge sheets"] === "used" ? used : bought,
        soldBy,
        price,
        rates["currency decimals"],
      ),
    );

/** Overhead on materials and labor, then a markup on the cost, or what makes the margin of the price. */
function gainLines(cost: Rational, { overhead, markup, margin, "currency decimals": decimals }: Rates): Line[] {
  const percent = (section: Section, what: Line["what"], rate: Rational, base: Rational): Line =>
    charged(section, what, rate, "percent", base, decimals);
  const over = overhead ? [percent("Overhead", words("onMaterialsAndLabor"), overhead, cost)] : [];
  const base = add(cost, sumOf(over));
  if (markup) return [...over, percent("Markup", words("onCost"), markup, base)];
  if (!margin) return over;
  // The accounting identity: price = cost / (1 − margin).
  const price = rounded(divide(base, subtract(ratio(1), share(margin, 100))), decimals);
  const line = percent("Margin", words("ofPrice"), margin, price);
  return [...over, { ...line, amount: subtract(price, base) }];
}

function taxLines(price: Rational, materials: Rational, { tax, "tax on": on, ...rates }: Rates): Line[] {
  if (!tax || on === "none") return [];
  const [what, base] = on === "all" ? (["onPrice", price] as const) : (["onMaterials", materials] as const);
  return [charged("Tax", words(what), tax, "percent", base, rates["currency decimals"])];
}

const sumOf = (lines: readonly Line[]): Rational => total(lines.map(({ amount }) => amount ?? ZERO));

const withSubtotal = (lines: readonly Line[]): Line[] =>
  lines.length === 0 ? [] : [...lines, { section: lines[0]!.section, what: words("subtotal"), amount: sumOf(lines) }];
