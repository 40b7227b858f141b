import { textOf, type Entries, type Entry } from "./entries";

/**
 * What a query finds, the likeliest first: entries in which each of its words stands, or each of the words that the
 * thing has here. Where nothing has them all, what has some of them.
 */
export function find({ all, elsewhere }: Entries, query: string): Entry[] {
  const typed = split(query.replace(/^\s*=?\s*drawer\.(?=\w)/i, ""));
  if (typed.length === 0) return [];
  const meant = [typed, ...elsewhere.flatMap(([said, here]) => instead(typed, split(said), here))].map(telling);
  const scored = (least: (score: number) => boolean, needsAll: boolean) =>
    all
      .map((entry) => ({
        entry,
        score: Math.max(...meant.map((words, i) => withBonus(scoreOf(entry, words, needsAll), i))),
      }))
      .filter(({ score }) => least(score))
      // A sort keeps the order of equals.
      .sort((a, b) => b.score - a.score)
      .map(({ entry }) => entry);
  const found = scored((score) => score > 0, true);
  return found.length > 0 ? found : scored((score) => score > 2, false);
}

/** The query with what others say replaced by what it is called here; a word that is being typed counts as well. */
function instead(asked: readonly string[], said: readonly string[], here: readonly string[]): string[][] {
  const at = asked.findIndex((_, start) =>
    said.every((word, i) => {
      const typed = asked[start + i];
      return typed === word || (start + i === asked.length - 1 && typed!.length > 2 && word.startsWith(typed!));
    }),
  );
  return at < 0 ? [] : here.map((name) => [...asked.slice(0, at), ...split(name), ...asked.slice(at + said.length)]);
}

/** 0 where it is none; else the more, the more of the words stand in its name, and the less else stands there. */
function scoreOf(entry: Entry, asked: readonly string[], needsAll: boolean): number {
  const { names, text } = words(entry);
  let score = 0;
  for (const word of asked) {
    const best = Math.max(IN_NAME * Math.max(...names.map((name) => likeness(name, word))), likeness(text, word));
    if (best === 0 && needsAll) return 0;
    score += best / asked.length;
  }
  const closest = Math.max(...names.map((name) => closeness(name, asked)));
  return score === 0 ? 0 : score + closest + BY_KIND[entry.kind];
}

/** How a word stands among others: as it is, as the beginning of one, or within one. */
function likeness(words: readonly string[], word: string): number {
  if (words.includes(word)) return 3;
  if (words.some((one) => one.startsWith(word))) return 2;
  return word.length > 3 && words.some((one) => one.includes(word)) ? 1 : 0;
}

/** How near a name comes to being what was asked for. */
function closeness(name: readonly string[], asked: readonly string[]): number {
  const common = asked.filter((word) => name.includes(word)).length;
  if (common < asked.length) return name.join("") === asked.join("") ? EXACT : 0;
  return name.length === asked.length ? EXACT : Math.max(0, NEAR - name.length);
}

/**
 * What others mean by it comes before what has the word by chance; what has neither stays none.
 * @param way 0 for the query as it was typed
 */
const withBonus = (score: number, way: number): number => (score > 0 && way > 0 ? score + 1 : score);

const IN_NAME = 3;
const EXACT = 40;
const NEAR = 12;

/** Of equals, what can be put into a cell comes first. */
const BY_KIND = { function: 0.5, standard: 0.4, heading: 0.3, word: 0.2, guide: 0.1 };

const words = (entry: Entry): { names: readonly string[][]; text: readonly string[] } => {
  const known = read.get(entry);
  if (known) return known;
  const { names, text } = textOf(entry);
  const made = { names: names.map((name) => split(name)), text: split(text) };
  read.set(entry, made);
  return made;
};
const read = new WeakMap<Entry, { names: string[][]; text: string[] }>();

/** The words that tell something; where there are no others, those that do not. */
function telling(all: string[]): string[] {
  const some = all.filter((word) => !EMPTY.has(word));
  return some.length > 0 ? some : all;
}

const EMPTY = new Set(
  "a an and are can do doe drawer for how i in is it many much my of on or the to what where with".split(" "),
);

/** Words in small letters, without the endings that one word has in several forms. */
const split = (text: string): string[] => (text.toLowerCase().match(/[\p{L}\p{N}/]+/gu) ?? []).map(stem);

const stem = (word: string): string =>
  word
    .replace(/(?<=\p{L}{3})ies$/u, "y")
    .replace(/(?<=\p{L}{2}[^s])s$/u, "")
    .replace(/(?<=\p{L}{4})ing$/u, "");
