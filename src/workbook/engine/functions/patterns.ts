import { unproven } from "../proven";

/** The marks of number formats that TEXT was proven for; what stands in quotes or behind a backslash is plain text. */
const NUMBER = /^(?:[0#?.,% ()+\-$/;]|\/[1-9]\d{0,2}|[Ee][+-]|General|"[^"]*"|\\.|_.)*$/;
const MOMENT =
  /^(?:[yY]{1,4}|[mM]{1,4}|[dD]{1,4}|[hH]{1,2}|[sS]{1,2}|AM\/PM|\[[hH]+\]|\[[mM]+\]|\[[sS]+\]|[ ,.:/\-;()T]|"[^"]*"|\\.)*$/;

/** Numbers with more digits than the program keeps are written in its own way. */
const MOST_DIGITS = 1e15;

/** Days before March 1900 are counted wrongly by design; after the last one there is none. */
const [FIRST_DAY, LAST_DAY] = [61, 2_958_466];

/** Whether a number format writes a date or a time. */
export function isMoment(pattern: string): boolean {
  return !NUMBER.test(pattern) && MOMENT.test(pattern);
}

/** @throws Unsupported where nothing shows that the number would be written as the spreadsheet program writes it. */
export function requireProven(pattern: string, number: number, date1904: boolean): void {
  if (NUMBER.test(pattern)) {
    if (Math.abs(number) >= MOST_DIGITS) throw unproven("TEXT", "more than fifteen digits");
    const size = Math.abs(number);
    if (/General/.test(pattern) && size !== 0 && (size >= 1e11 || size < 1e-4))
      throw unproven("TEXT", "so long a number");
    return;
  }
  if (!MOMENT.test(pattern) || /[sS]\.0/.test(pattern)) throw unproven("TEXT", `the format “${pattern}”`);
  if (date1904 && pattern.includes("[")) throw unproven("TEXT", "elapsed time that counts from 1904");
  const isTime = !/[yYdD]|(?:^|[^hHmM:\]])[mM]+(?![mM:\]])/.test(pattern.replace(/"[^"]*"|\\.|AM\/PM/g, ""));
  if (number < (isTime ? 0 : FIRST_DAY) || number >= LAST_DAY) throw unproven("TEXT", "such a date");
  const seconds = (number % 1) * 86_400;
  if (/[sS]/.test(pattern) && Math.abs(seconds - Math.round(seconds)) > 1e-3)
    throw unproven("TEXT", "parts of seconds");
}
