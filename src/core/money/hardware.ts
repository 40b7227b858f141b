import { bought, groupsOf, hardwareOf, isScrew, isSlide, type Item, type PlannedOpening } from "../drawer";
import { equal, isZero, keyOf, parseLength, total, type Rational, type Unit } from "../length";
import { charged, type Line, type What } from "./line";
import { needed, type PriceName, type Rates } from "./rates";

/**
 * What HARDWARE lists, at its prices: slides by length, screws and nails of all sizes together, pulls, edge band.
 * What no rate is for stands there with its quantity and no amount.
 * @throws Fault `rates.missing`
 */
export function hardwareLines(plan: readonly PlannedOpening[], rates: Rates, unit: Unit): Line[] {
  const all = hardwareOf(plan);
  const [packs, single] = [all.filter(({ left }) => left), all.filter(({ left }) => !left)];
  const items = ofAnyRating([...single, ...packs.filter(({ name }) => isSlide(name)).map(leftOver)]);
  const decimals = rates["currency decimals"];
  const lines: Line[] = [];
  for (const item of items.filter(({ name }) => !isScrew(name) && name !== "shop-made pull")) {
    const rate = rateFor(item);
    const quantity = bought(item, unit);
    const what: What = { kind: "hardware", name: item.name, ...(item.size && { size: item.size }) };
    lines.push(
      rate
        ? charged("Hardware", what, quantity, item.unit, priceOf(item, rate, rates, unit), decimals)
        : { section: "Hardware", what: { ...what, unpriced: true }, quantity, unit: item.unit },
    );
  }
  const screws = total(
    [...items, ...packs.map(leftOver)].filter(({ name }) => isScrew(name)).map(({ quantity }) => quantity),
  );
  const what: What = { kind: "hardware", name: "screw" };
  const line = (): Line => charged("Hardware", what, screws, "each", needed(rates, "screw price"), decimals);
  return isZero(screws) ? lines : [...lines.filter(isPriced), line(), ...lines.filter((each) => !isPriced(each))];
}

/** Whole packs are paid for: what they hold beyond what is needed counts as needed. */
const leftOver = ({ left, ...item }: Item): Item => ({
  ...item,
  quantity: left!,
  unit: item.name === "center-mount slide" ? "each" : "pair",
  purpose: /^(center|under)/.test(item.name) ? "datasheet" : "none",
});

/** Of a slide that of its length, where there is one. */
const priceOf = ({ name, size }: Item, rate: PriceName, rates: Rates, unit: Unit): Rational =>
  (isSlide(name) && rates.slidePrices?.find(({ length }) => size && equal(parseLength(length, unit), size))?.price) ||
  needed(rates, rate);

/** One price for slides of a length, whatever they carry. */
const ofAnyRating = (items: readonly Item[]): Item[] =>
  groupsOf(items, ({ name, size, purpose }, i) =>
    // Slides are sold by their length.
    isSlide(name) ? `${name} ${keyOf(size!)} ${purpose}` : String(i),
  ).map((same) => ({
    ...same[0]!,
    quantity: total(same.map(({ quantity }) => quantity)),
  }));

const isPriced = ({ rate }: Line): boolean => rate !== undefined;

function rateFor({ name }: Item): PriceName | undefined {
  if (isSlide(name)) return "slide price";
  if (name === "pull") return "pull price";
  return name === "edge band" ? "edge band price" : undefined;
}
