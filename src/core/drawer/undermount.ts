import { isZero, ZERO, type Rational } from "../length";
import type { StandardName, Standards } from "./standards";

export const isUndermount = ({ slide }: Standards): boolean => slide === "undermount";

/**
 * By how much a box is shorter than its slide.
 * @source common practice, where the data sheet's word is not known: as deep as its slide is long
 */
export const depthDifference = (s: Standards): Rational =>
  (isUndermount(s) && s["undermount depth difference"]) || ZERO;

/** From the sides' lower edge up to the bottom. */
export const bottomRecess = (s: Standards): Rational => (s["bottom fit"] === "applied" ? ZERO : s["groove offset"]);

/** Only a back that hangs below its bottom stands in the slide's way. */
export const hangsBelow = (s: Standards): boolean => s["bottom fit"] === "grooved";

/** What a data sheet states is needed of it, as far as it is not known; what it asks nothing of needs no more. */
export function unstated(s: Standards, names: readonly StandardName[] = STATED): StandardName[] {
  if (!isUndermount(s)) return [];
  const asks = (name: StandardName): boolean => {
    if (NOTCH.includes(name)) return hangsBelow(s) && NOTCH.every((other) => !isNone(s, other));
    return !/ hook (inset|height|depth)$/.test(name) || !isNone(s, "undermount hook hole");
  };
  return names.filter((name) => s[name] === undefined && asks(name));
}

/** It was said that the data sheet asks for nothing. */
const isNone = (s: Standards, name: StandardName): boolean => {
  const value = s[name] as Rational | undefined;
  return value !== undefined && isZero(value);
};

const NOTCH: readonly StandardName[] = ["undermount notch width", "undermount notch height"];

/** What is cut and drilled into the back. */
export const OF_THE_BACK: readonly StandardName[] = [
  ...NOTCH,
  "undermount hook hole",
  "undermount hook inset",
  "undermount hook height",
  "undermount hook depth",
];

const STATED: readonly StandardName[] = [
  "undermount thickest side",
  "undermount space below",
  "undermount space above",
  "undermount bottom recess",
  "undermount depth difference",
  ...OF_THE_BACK,
];
