import { textToNumber, toText } from "../coercion";
import { compare } from "../operators";
import { CellError, type Scalar } from "../values";
import { Wildcard } from "../wildcards";
import { numberKey, readAsNumber, textKey } from "./alike";

/** What COUNTIF and its like compare with: `">=5"`, `"oak*"`, a number, a blank. */
export interface Criterion {
  holds: (value: Scalar) => boolean;
  /** What all values have in common for which it holds, as `Placed` has it; none where that is more than one thing. */
  key?: unknown;
}

export function criterion(wanted: Scalar): Criterion {
  if (typeof wanted !== "string") return equalTo(wanted ?? 0);
  const [, operator = "", operand = ""] = /^(<>|<=|>=|=|<|>)?(.*)$/s.exec(wanted)!;
  const number = operandNumber(operand);
  if (operator === "" || operator === "=" || operator === "<>") {
    const equal = equality(operator, operand, number);
    return operator === "<>" ? { holds: (value) => !equal.holds(value) } : equal;
  }
  if (operand === "") return { holds: () => false };
  const other = number ?? operand;
  const holds = (value: Scalar): boolean => {
    if (typeof value !== typeof other) return false;
    const order = compare(value, other);
    return operator === "<" ? order < 0 : operator === "<=" ? order <= 0 : operator === ">" ? order > 0 : order >= 0;
  };
  return { holds };
}

function equality(operator: string, operand: string, number: number | undefined): Criterion {
  if (operand === "")
    return { holds: operator === "" ? (value) => value === null || value === "" : (value) => value === null };
  if (number !== undefined) {
    // A text that reads as the number counts as equal to it, and all the same as other than it.
    const holds = (value: Scalar): boolean =>
      typeof value === "string"
        ? operator !== "<>" && readAsNumber(value) === number
        : typeof value === "number" && compare(value, number) === 0;
    return { holds, key: numberKey(number) };
  }
  const upper = operand.toUpperCase();
  if (upper === "TRUE" || upper === "FALSE") return sameAs(upper === "TRUE");
  if (operand.startsWith("#")) return ofCode(upper);
  const pattern = new Wildcard(operand);
  const holds = (value: Scalar): boolean => typeof value === "string" && pattern.matches(value);
  return /[*?~]/.test(operand) ? { holds } : { holds, key: textKey(operand) };
}

function equalTo(wanted: Exclude<Scalar, string | null>): Criterion {
  if (wanted instanceof CellError) return ofCode(wanted.code);
  return typeof wanted === "number" ? equality("", toText(wanted) as string, wanted) : sameAs(wanted);
}

const sameAs = (wanted: boolean): Criterion => ({ holds: (value) => value === wanted, key: wanted });

const ofCode = (code: string): Criterion => ({
  holds: (value) => value instanceof CellError && value.code === code,
  key: code,
});

/** What is compared with may also be a date or a time, as a text that is added to would be. */
function operandNumber(text: string): number | undefined {
  if (/^[^\d]*$/.test(text)) return undefined;
  const number = textToNumber(text);
  return typeof number === "number" ? number : undefined;
}
