import { textToNumber, toText } from "../coercion";
import { compare } from "../operators";
import { CellError, type Scalar } from "../values";
import { Wildcard } from "../wildcards";

/** What COUNTIF and its like compare with: `">=5"`, `"oak*"`, a number, a blank. */
export function criterion(wanted: Scalar): (value: Scalar) => boolean {
  if (typeof wanted !== "string") return equalTo(wanted ?? 0);
  const [, operator = "", operand = ""] = /^(<>|<=|>=|=|<|>)?(.*)$/s.exec(wanted)!;
  const number = operandNumber(operand);
  if (operator === "" || operator === "=" || operator === "<>") {
    const equal = equality(operator, operand, number);
    return operator === "<>" ? (value) => !equal(value) : equal;
  }
  if (operand === "") return () => false;
  const other = number ?? operand;
  return (value) => {
    if (typeof value !== typeof other) return false;
    const order = compare(value, other);
    return operator === "<" ? order < 0 : operator === "<=" ? order <= 0 : operator === ">" ? order > 0 : order >= 0;
  };
}

function equality(operator: string, operand: string, number: number | undefined): (value: Scalar) => boolean {
  if (operand === "") return operator === "" ? (value) => value === null || value === "" : (value) => value === null;
  if (number !== undefined) {
    // A text that reads as the number counts as equal to it, and all the same as other than it.
    return (value) =>
      typeof value === "string"
        ? operator !== "<>" && asNumber(value) === number
        : typeof value === "number" && compare(value, number) === 0;
  }
  const upper = operand.toUpperCase();
  if (upper === "TRUE" || upper === "FALSE") return (value) => value === (upper === "TRUE");
  if (operand.startsWith("#")) return (value) => value instanceof CellError && value.code === upper;
  const pattern = new Wildcard(operand);
  return (value) => typeof value === "string" && pattern.matches(value);
}

function equalTo(wanted: Exclude<Scalar, string | null>): (value: Scalar) => boolean {
  if (wanted instanceof CellError) return (value) => value instanceof CellError && value.code === wanted.code;
  if (typeof wanted === "number") return equality("", toText(wanted) as string, wanted);
  return (value) => value === wanted;
}

/** What is compared with may also be a date or a time, as a text that is added to would be. */
function operandNumber(text: string): number | undefined {
  if (/^[^\d]*$/.test(text)) return undefined;
  const number = textToNumber(text);
  return typeof number === "number" ? number : undefined;
}

function asNumber(text: string): number | undefined {
  const match = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)(%?)\s*$/.exec(text);
  return match ? Number(match[1]) / (match[2] ? 100 : 1) : undefined;
}
