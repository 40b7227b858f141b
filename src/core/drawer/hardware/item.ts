import { divide, ratio, roundUp, unitsIn, type Rational, type Unit } from "../../length";

/** What is bought or made besides the pieces of the cut list, in the order of its list. */
export const ITEMS = [
  "side-mount slide",
  "center-mount slide",
  "undermount slide",
  "locking device",
  "blocking",
  "slide screw",
  "runner screw",
  "blocking screw",
  "pocket screw",
  "corner screw",
  "corner nail",
  "bottom nail",
  "bottom screw",
  "washer",
  "front screw",
  "pull",
  "shop-made pull",
  "pull screw",
  "file rail",
  "edge band",
  "glue",
] as const;
export type ItemName = (typeof ITEMS)[number];

/** What an item is for; its wording belongs to whoever shows it. */
export const PURPOSES = [
  "none",
  "datasheet",
  "frame",
  "frameUnknown",
  "box",
  "middle",
  "rail",
  "cabinet",
  "partition",
  "blocking",
  "ends",
  "corners",
  "bottom",
  "back",
  "slots",
  "front",
  "frontSolid",
  "falseFront",
  "pull",
  "pullFront",
  "plate",
  "plateFront",
  "filesDepth",
  "filesWidth",
  "joints",
  "packs",
] as const;
export type Purpose = (typeof PURPOSES)[number];

/** Equal items. */
export interface Item {
  name: ItemName;
  /** Its length, a blocking's thickness, a bought pull's spacing; none where there is none, or none is known. */
  size?: Rational;
  /** Pieces or pairs; a length in the job's unit where `unit` is length. */
  quantity: Rational;
  unit: "pair" | "each" | "length" | "pack";
  purpose: Purpose;
  /** A size that tells more about it: a band's width, the length of a blocking or a slot. */
  detail?: Rational;
  /** How wide it is at least. */
  width?: Rational;
  /** The wood that slots are reckoned for, or that pocket screws go into; the kind of folders. */
  wood?: string;
  /** How many are sold together; and of packs, what they hold beyond what is needed. */
  pack?: number;
  left?: Rational;
  /** The thickness of the stock that a screw or nail goes into by its edge or end. */
  stock?: Rational;
  /** What a pair of slides must carry, in lb or kg. */
  rating?: number;
  /** What a screw or nail may not exceed: the stock that it ends in, and what it goes through before. */
  most?: Rational;
  /** What a screw goes through before it holds: it must be longer. */
  through?: Rational;
}

/** How much of an item to buy: lengths go by the foot or the meter, up to the next tenth. */
export const bought = ({ quantity, unit: measure }: Item, unit: Unit): Rational =>
  measure === "length" ? roundUp(divide(quantity, unitsIn(unit === "in" ? "ft" : "m", unit)), ratio(1, 10)) : quantity;

export const isSlide = (name: string): boolean => name.endsWith("slide");
export const isScrew = (name: string): boolean => /screw|nail/.test(name);
