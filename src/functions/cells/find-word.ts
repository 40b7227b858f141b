import { Fault } from "../../core/length";

/**
 * The word that was meant, read without regard to case, hyphens, spaces and British or American spelling.
 * @param synonyms other words of the trade, and what they mean here
 * @throws Fault `word.unknown`, with the words that are allowed
 */
export function findWord<W extends string>(value: unknown, words: readonly W[], synonyms: Record<string, W> = {}): W {
  const found = words.find((candidate) => sameWord(value, candidate));
  if (found) return found;
  const other = Object.keys(synonyms).find((candidate) => sameWord(value, candidate));
  if (other !== undefined) return synonyms[other]!;
  throw new Fault("word.unknown", { received: value, allowed: words });
}

/** Whether a text is that word; one with digits or signs in it is a sum, and no word: "slide - 1/2". */
export const sameWord = (value: unknown, word: string): boolean =>
  typeof value === "string" && /^[a-z\s._-]+$/i.test(value) && fold(value) === fold(word);

/** American spelling, lower case, letters alone: "Centre mount" is "center-mount". */
const fold = (text: string): string => american(text.toLowerCase().replace(/[^a-z]/g, ""));

/** British words of the trade in their American spelling; lower case. */
export const american = (text: string): string =>
  text
    .replace("centre", "center")
    .replace("rebate", "rabbet")
    .replace("housing", "dado")
    .replace("labour", "labor")
    .replace("metre", "meter");
