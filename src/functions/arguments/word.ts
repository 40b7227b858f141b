import { scalar, type Argument } from "./argument";
import { findWord, isEmpty } from "../cells";

/**
 * An argument that is one of a few words, read without regard to case, hyphens and spaces.
 * @param words the words that are offered; the first is the default
 * @param synonyms other words of the trade, and what they mean here
 */
export const word = <W extends string>(
  name: string,
  words: readonly W[],
  synonyms: Record<string, W> = {},
): Argument<W> => scalar(name, ({ value }) => (isEmpty(value) ? words[0]! : findWord(value, words, synonyms)));
