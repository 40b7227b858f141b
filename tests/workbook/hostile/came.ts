/** What came of a file, and what it took. */
export interface Came {
  /** What the asked cells hold, a reason behind `kept:`. */
  cells?: Record<string, number | string | boolean | null>;
  /** What the command prints, its beginning, and its length. */
  said?: string;
  length?: number;
  /** Why the whole file is refused, in words. */
  refused?: string;
  /** What was thrown that is no refusal. */
  broken?: string;
  /** What is in the written file and must be in none. */
  falsehoods?: string[];
  seconds: number;
  /** With what making the file took. */
  whole: number;
  megabytes: number;
}

/** No formula gives such a number. */
export const NOTHING_FALSE = [/(<\/f>|<f[^>]*\/>)<v>[+-]?(NaN|Infinity)/];
