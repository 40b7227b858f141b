import { Fault, isBlank } from "../../core/length";
import { scalar, type Argument } from "./argument";

/**
 * An argument that is one of a few words, read without regard to case, hyphens and spaces.
 * @param words the words that are offered; the first is the default
 * @param synonyms other words of the trade, and what they mean here
 */
export const word = <W extends string>(
  name: string,
  words: readonly W[],
  synonyms: Record<string, W> = {},
): Argument<W> => scalar(name, ({ value }) => (isBlank(value) ? words[0]! : findWord(value, words, synonyms)));

/** @throws Fault `word.unknown`, with the words that are allowed */
export function findWord<W extends string>(value: unknown, words: readonly W[], synonyms: Record<string, W> = {}): W {
  const found = words.find((candidate) => sameWord(value, candidate));
  if (found) return found;
  const other = Object.keys(synonyms).find((candidate) => sameWord(value, candidate));
  if (other !== undefined) return synonyms[other]!;
  throw new Fault("word.unknown", { received: value, allowed: words });
}

export const sameWord = (value: unknown, word: string): boolean =>
  typeof value === "string" && fold(value) === fold(word);

/** American spelling, lower case, letters alone: "Centre mount" is "center-mount". */
const fold = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z]/g, "")
    .replace("centre", "center")
    .replace("rebate", "rabbet")
    .replace("housing", "dado");
