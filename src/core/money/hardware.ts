import { bought, groupsOf, hardwareOf, type Item, type PlannedOpening } from "../drawer";
import { isZero, keyOf, total, type Unit } from "../length";
import { charged, type Line, type What } from "./line";
import { needed, type PriceName, type Rates } from "./rates";

/**
 * What HARDWARE lists, at its prices: slides by length, screws and nails of all sizes together, pulls, edge band.
 * What no rate is for stands there with its quantity and no amount.
 * @throws Fault `rates.missing`
 */
export function hardwareLines(plan: readonly PlannedOpening[], rates: Rates, unit: Unit): Line[] {
  const items = ofAnyRating(hardwareOf(plan));
  const decimals = rates["currency decimals"];
  const lines: Line[] = [];
  for (const item of items.filter(({ name }) => !isScrew(name) && name !== "shop-made pull")) {
    const rate = rateFor(item);
    const quantity = bought(item, unit);
    const what: What = { kind: "hardware", name: item.name, ...(item.size && { size: item.size }) };
    lines.push(
      rate
        ? charged("Hardware", what, quantity, item.unit, needed(rates, rate), decimals)
        : { section: "Hardware", what: { ...what, unpriced: true }, quantity, unit: item.unit },
    );
  }
  const screws = total(items.filter(({ name }) => isScrew(name)).map(({ quantity }) => quantity));
  const what: What = { kind: "hardware", name: "screw" };
  const line = (): Line => charged("Hardware", what, screws, "each", needed(rates, "screw price"), decimals);
  return isZero(screws) ? lines : [...lines.filter(isPriced), line(), ...lines.filter((each) => !isPriced(each))];
}

/** One price for slides of a length, whatever they carry. */
const ofAnyRating = (items: readonly Item[]): Item[] =>
  groupsOf(items, ({ name, size, purpose }, i) =>
    // Slides are sold by their length.
    /slide$/.test(name) ? `${name} ${keyOf(size!)} ${purpose}` : String(i),
  ).map((same) => ({
    ...same[0]!,
    quantity: total(same.map(({ quantity }) => quantity)),
  }));

const isPriced = ({ rate }: Line): boolean => rate !== undefined;
const isScrew = (name: string): boolean => /screw|nail/.test(name);

function rateFor({ name }: Item): PriceName | undefined {
  if (/slide$/.test(name)) return "slide price";
  if (name === "pull") return "pull price";
  return name === "edge band" ? "edge band price" : undefined;
}
