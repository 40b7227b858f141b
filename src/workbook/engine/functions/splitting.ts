import { toBoolean, toNumber, toText } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { make } from "../budget";
import { CellError, fail, isScalar, type Scalar, type Value } from "../values";

/** TEXTSPLIT: the library's turns pieces into numbers and dates; here they stay texts. */
export const splitting: Record<string, Ordinary> = {
  TEXTSPLIT: {
    signature: "VRRVVV",
    call([text, columns, rows, ignore, mode, pad], evaluator) {
      const whole = toText(isScalar(text) ? text : null);
      const skip = toBoolean(isScalar(ignore) ? ignore : false);
      const flags = toNumber(isScalar(mode) ? mode : 0) === 1 ? "iu" : "u";
      if (whole instanceof CellError) return whole;
      if (skip instanceof CellError) return skip;
      const pieces = (part: string, separators: string[]) =>
        (separators.length === 0 ? [part] : part.split(new RegExp(separators.map(quoted).join("|"), flags))).filter(
          (piece) => piece !== "" || !skip,
        );
      const [across, down] = [separators(columns, evaluator), separators(rows, evaluator)];
      if (across.length + down.length === 0 || [...across, ...down].includes("")) return fail("#VALUE!");
      const lines: Scalar[][] = pieces(whole, down).map((line) => pieces(line, across));
      const width = Math.max(0, ...lines.map((line) => line.length));
      if (width === 0) return fail("#CALC!");
      make(lines.length, width);
      const filler = isScalar(pad) ? pad : fail("#N/A");
      return lines.map((line) => [...line, ...Array.from({ length: width - line.length }, () => filler)]);
    },
  },
};

function separators(value: Value, evaluator: Evaluator): string[] {
  if (value === undefined) return [];
  return evaluator
    .matrix(value)
    .flat()
    .map((item) => toText(item))
    .map((text) => (text instanceof CellError ? "" : text));
}

function quoted(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|/]/g, "\\$&");
}
