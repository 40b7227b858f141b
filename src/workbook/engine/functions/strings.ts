import { LONGEST_TEXT } from "../budget";
import { toText } from "../coercion";
import type { Ordinary } from "../kinds";
import { CellError, fail, type Scalar } from "../values";
import { ofNumbers, ofTexts, scalarOf } from "./reading";

/** Taking texts apart and putting them together; places count from 1, in the halves of characters that UTF-16 has. */
export const strings: Record<string, Ordinary> = {
  LEN: ofTexts("t", (text: string) => text.length),
  LEFT: ofTexts("tn", (text: string, count = 1) => (count < 0 ? fail("#VALUE!") : text.slice(0, Math.trunc(count)))),
  RIGHT: ofTexts("tn", (text: string, count = 1) =>
    count < 0 ? fail("#VALUE!") : text.slice(Math.max(0, text.length - Math.trunc(count))),
  ),
  MID: ofTexts("tnn", (text: string, start: number, count: number) => {
    const from = Math.trunc(start) - 1;
    return from < 0 || count < 0 ? fail("#VALUE!") : text.slice(from, from + Math.trunc(count));
  }),
  UPPER: ofTexts("t", (text: string) => each(text, upper)),
  LOWER: ofTexts("t", (text: string) => each(text, lower)),
  PROPER: ofTexts("t", (text: string) =>
    text.replace(/(\p{L})(\p{L}*)/gu, (_, first: string, rest: string) => each(first, upper) + each(rest, lower)),
  ),
  TRIM: ofTexts("t", (text: string) => text.replace(/ +/g, " ").replace(/^ | $/g, "")),

  CLEAN: ofTexts("t", (text: string) => text.replace(/[\u0000-\u001f]/g, "")),
  EXACT: ofTexts("tt", (a: string, b: string) => a === b),
  CONCATENATE: ofTexts("t", (...pieces: string[]) => bounded(pieces.join(""))),
  REPT: ofTexts("tn", (text: string, times: number) =>
    times < 0 || text.length * Math.trunc(times) > LONGEST_TEXT ? fail("#VALUE!") : text.repeat(Math.trunc(times)),
  ),
  FIND: ofTexts("ttn", (wanted: string, text: string, start = 1) => {
    const from = Math.trunc(start) - 1;
    if (from < 0 || from > text.length) return fail("#VALUE!");
    const at = text.indexOf(wanted, from);
    return at < 0 ? fail("#VALUE!") : at + 1;
  }),
  REPLACE: ofTexts("tnnt", (text: string, start: number, count: number, instead: string) => {
    const from = Math.trunc(start) - 1;
    if (from < 0 || count < 0) return fail("#VALUE!");
    return bounded(text.slice(0, from) + instead + text.slice(from + Math.trunc(count)));
  }),
  SUBSTITUTE: ofTexts("tttn", (text: string, wanted: string, instead: string, which?: number) => {
    if (which !== undefined && which < 1) return fail("#VALUE!");
    if (wanted === "") return text;
    const pieces = text.split(wanted);
    if (which === undefined) return bounded(pieces.join(instead));
    const at = Math.trunc(which);
    if (at >= pieces.length) return text;
    return bounded(pieces.slice(0, at).join(wanted) + instead + pieces.slice(at).join(wanted));
  }),
  CHAR: ofNumbers((code) => {
    const at = Math.trunc(code);
    return at < 1 || at > 255 ? fail("#VALUE!") : WINDOWS[at]!;
  }),
  CODE: ofTexts("t", (text: string) => {
    if (text === "") return fail("#VALUE!");
    const at = WINDOWS.indexOf(text[0]!);
    return at < 0 ? QUESTION_MARK : at;
  }),
  UNICHAR: ofNumbers((code) => {
    const at = Math.trunc(code);
    if (at < 1 || at > 0x10ffff) return fail("#VALUE!");
    return (at >= 0xd800 && at <= 0xdfff) || (at & 0xfffe) === 0xfffe ? fail("#N/A") : String.fromCodePoint(at);
  }),
  UNICODE: {
    signature: "V",
    call([value]) {
      const text = toText(scalarOf(value));
      return text instanceof CellError ? text : text === "" ? fail("#VALUE!") : text.codePointAt(0)!;
    },
  },
};

/** A text that fits into a cell. */
function bounded(text: string): Scalar {
  return text.length > LONGEST_TEXT ? fail("#VALUE!") : text;
}

/** Letter by letter, for a letter stays one letter: ß has no capital here. */
function each(text: string, change: (letter: string) => string): string {
  return Array.from(text, (letter) => {
    const changed = change(letter);
    return changed.length === letter.length ? changed : letter;
  }).join("");
}

const upper = (letter: string) => letter.toUpperCase();
const lower = (letter: string) => letter.toLowerCase();

/** The characters of code page 1252 by their codes; it differs from Unicode in 27 of them. */
const WINDOWS = Array.from({ length: 256 }, (_, code) => String.fromCharCode(code));
WINDOWS.splice(128, 32, ..."€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ");
const QUESTION_MARK = 63;
