import { fold } from "../wildcards";

/** The same number for numbers that are equal, which they are where their first fifteen digits are. */
export const numberKey = (value: number): number =>
  Number.isInteger(value) && Math.abs(value) < 1e15 ? value + 0 : Number(value.toPrecision(15));

/** The same for texts that differ in nothing but case. No error's code begins so. */
export const textKey = (text: string): string => `"${fold(text)}`;

/** The number that a text counts as, where it reads as one without any sign of a date or of money. */
export function readAsNumber(text: string): number | undefined {
  const match = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)(%?)\s*$/.exec(text);
  return match ? Number(match[1]) / (match[2] ? 100 : 1) : undefined;
}
