import { Fault } from "./fault";
import { add, multiply, negate, ratio, type Rational } from "./rational";
import { unitsIn, type Mark, type Unit } from "./unit";

/** Bounds of a length: `positive` more than 0, `not negative` 0 or more, `any` either side of 0. */
export type Sign = "positive" | "not negative" | "any";

/**
 * Reads a length text, digit by digit: `23 7/16`, `23-7/16"`, `.4375`, `1' 11 7/16"`, `2 ft 3 in`, `595 mm`,
 * `59,5 cm`, `5½`. A text with a mark is converted to `unit`; one without is in `plain`.
 * @param plain the mark that a text without one is taken to have: that of `unit` where nothing else is said
 * @returns the exact length in `unit`
 * @throws Fault `length.unreadable`, `length.doubtfulComma`, `length.zeroDenominator`, each with the text
 * @example parseLength(`1' 11 7/16"`, "in") // 23 7/16
 */
export function parseLength(text: string, unit: Unit, plain: Mark = unit): Rational {
  const parts = text.length <= LONGEST ? PATTERN.exec(tidy(text))?.groups : undefined;
  if (!parts) throw new Fault("length.unreadable", { text });
  const length = parts.foot ? feetAndInches(text, parts, unit) : marked(text, parts, unit, plain);
  return parts.sign ? negate(length) : length;
}

type Parts = Record<string, string | undefined>;

/** Longer texts are no lengths, and would only slow the pattern down. */
const LONGEST = 60;

/** A whole number, a fraction, a mixed number or a decimal; its groups end in `n`. */
const quantityPattern = (n: string): string =>
  `(?:(?:(?<whole${n}>\\d+)[ -])?(?<top${n}>\\d+) ?/ ?(?<under${n}>\\d+)` +
  `|(?<units${n}>\\d*)(?<point${n}>[.,])(?<decimals${n}>\\d+)|(?<count${n}>\\d+))`;

const INCH = `"|in\\.?|inch(?:es)?`;
const PATTERN = new RegExp(
  `^(?<sign>- ?)?(?:` +
    `${quantityPattern("Feet")} ?(?<foot>'|ft\\.?|foot|feet)(?: ?${quantityPattern("Inches")} ?(?:${INCH}))?` +
    `|${quantityPattern("Lone")} ?(?<mark>${INCH}|mm|cm|m)?)$`,
);

function feetAndInches(text: string, parts: Parts, unit: Unit): Rational {
  const feet = multiply(quantity(text, parts, "Feet")!, unitsIn("ft", unit));
  const inches = quantity(text, parts, "Inches");
  if (!inches) return feet;
  // 1 1/2' 3" is more likely a slip of the pen than a length.
  if (!parts.countFeet) throw new Fault("length.unreadable", { text });
  return add(feet, multiply(inches, unitsIn("in", unit)));
}

function marked(text: string, parts: Parts, unit: Unit, plain: Mark): Rational {
  const size = quantity(text, parts, "Lone")!;
  const mark = parts.mark ? (METRIC.has(parts.mark) ? (parts.mark as Mark) : "in") : plain;
  return mark === unit ? size : multiply(size, unitsIn(mark, unit));
}

const METRIC = new Set(["mm", "cm", "m"]);

function quantity(text: string, parts: Parts, n: string): Rational | undefined {
  const count = parts[`count${n}`];
  if (count !== undefined) return ratio(BigInt(count));
  const decimals = parts[`decimals${n}`];
  if (decimals !== undefined) return decimal(text, parts[`units${n}`]!, parts[`point${n}`]!, decimals);
  const under = parts[`under${n}`];
  return under === undefined ? undefined : mixed(text, parts[`whole${n}`], parts[`top${n}`]!, under);
}

function decimal(text: string, units: string, point: string, decimals: string): Rational {
  if (point === "," && decimals.length === 3) throw new Fault("length.doubtfulComma", { text });
  return ratio(BigInt(units + decimals), 10n ** BigInt(decimals.length));
}

function mixed(text: string, whole: string | undefined, top: string, under: string): Rational {
  const [t, u] = [BigInt(top), BigInt(under)];
  if (u === 0n) throw new Fault("length.zeroDenominator", { text });
  if (whole === undefined) return ratio(t, u);
  // 3 17/16 has lost a digit somewhere: which, nobody can tell.
  if (t >= u) throw new Fault("length.unreadable", { text });
  return ratio(BigInt(whole) * u + t, u);
}

const VULGAR = "¼-¾⅐-⅞";

/** What is copied along with a text and takes no room: zero-width spaces and joiners, soft hyphens, direction marks. */
export const withoutInvisible = (text: string): string => text.replace(/\p{Cf}/gu, "");

/** Typographic marks as the keyboard's, one space where there are several, a vulgar fraction spelled out. */
function tidy(text: string): string {
  const lower = withoutInvisible(text).trim().toLowerCase();
  if (/^(?!.*'')[!-~]*(?: [!-~]+)*$/.test(lower)) return lower;
  return lower
    .replace(new RegExp(`(\\d?)\\s*([${VULGAR}])`, "g"), (_, digit: string, sign: string) => {
      const spelled = sign.normalize("NFKD");
      return digit ? `${digit} ${spelled}` : spelled;
    })
    .replace(/[！-～]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/[⁄∕]/g, "/")
    .replace(/[″”“]/g, '"')
    .replace(/[′’‘]/g, "'")
    .replace(/''/g, '"')
    .replace(/[‐‑‒–−]/g, "-")
    .replace(/\s+/g, " ");
}
