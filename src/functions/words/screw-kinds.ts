import { isSolidWood, type Item, type ItemName } from "../../core/drawer";
import { less, roundFigure, type Rational, type Unit } from "../../core/length";

/** Gauge and head to ask for, all of them common practice; the makers' data sheets come first. */
export const kindOf = (item: Item, unit: Unit): string => KINDS[item.name]?.(item, unit) ?? "";

const PRACTICE = "(common practice)";
const SHEET = "(common practice; the slide's data sheet decides)";

const KINDS: Partial<Record<ItemName, (item: Item, unit: Unit) => string>> = {
  "slide screw": (_, unit) => `${gauge(8, unit)}, pan head ${SHEET}`,
  "runner screw": (_, unit) => `${gauge(8, unit)}, flat head ${PRACTICE}`,
  "blocking screw": (_, unit) => `${gauge(8, unit)}, flat head ${PRACTICE}`,
  "pocket screw": ({ wood = "" }, unit) =>
    `washer head, ${isSolidWood(wood) ? `fine thread, ${gauge(7, unit)}, in hardwood, coarse, ${gauge(8, unit)}, in softwood` : `coarse thread, ${gauge(8, unit)}`} (common practice; the jig's manual decides)`,
  "corner screw": (item, unit) => `${byStock(item, unit)}, flat head ${PRACTICE}`,
  "corner nail": () => `18 gauge brad ${PRACTICE}`,
  "bottom nail": () => `18 gauge brad ${PRACTICE}`,
  "bottom screw": (item, unit) =>
    `${byStock(item, unit)}, ${item.purpose === "slots" ? "pan head" : "flat head"} ${PRACTICE}`,
  washer: (item, unit) => `for ${byStock(item, unit)} screws`,
  "front screw": (_, unit) => `${gauge(8, unit)}, truss head ${PRACTICE}`,
  "pull screw": ({ purpose }, unit) =>
    purpose === "plate" || purpose === "plateFront"
      ? `${gauge(8, unit)}, pan head ${PRACTICE}`
      : `machine screw ${unit === "in" ? "8-32" : "M4"}, truss head (common practice; see what comes with the pull)`,
};

/** Into the edge or end of thin stock a thinner screw, which does not split it. */
const byStock = ({ stock }: Item, unit: Unit): string => gauge(stock && isThin(stock, unit) ? 6 : 8, unit);

const isThin = (stock: Rational, unit: Unit): boolean => less(stock, roundFigure("5/8", "16", unit));

/** Wood screws by number, or by diameter where they are sold so. */
const gauge = (number: 6 | 7 | 8, unit: Unit): string =>
  unit === "in" ? `No. ${number}` : `${number === 6 ? "3.5" : "4"} mm`;
