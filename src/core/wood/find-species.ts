import { editsBetween, Fault } from "../length";
import { PANELS } from "./panels";
import { SPECIES, type Species } from "./species";

/**
 * The species that was meant: by all of its words in any order (`black cherry`, `Cherry, black`), by some where no
 * other has them (`cherry`), or by the name that the trade has for it (`hard maple`).
 * @throws Fault `species.several`, `species.panel`, `species.unknown`, the last with the nearest names
 */
export function findSpecies(received: string): Species {
  const typed = wordsOf(received.slice(0, LONGEST));
  const trade = TRADE.find(([other]) => sameWords(wordsOf(other), typed));
  const meant = trade ? wordsOf(trade[1]) : typed;
  const exact = SPECIES.find((species) => sameWords(wordsOf(species.name), meant));
  if (exact) return exact;
  const [one, ...others] = SPECIES.filter(({ name }) => holds(wordsOf(name), meant));
  if (one && others.length > 0)
    throw new Fault("species.several", { received, species: [one, ...others].map(({ name }) => name) });
  if (one) return one;
  const panel = PANELS.find(({ name }) => holds(typed, wordsOf(name)));
  if (panel) throw new Fault("species.panel", { received });
  throw new Fault("species.unknown", { received, nearest: nearest(typed) });
}

/** Longer texts are no names, and would only take long to compare. */
const LONGEST = 100;

/** Common practice: names of the lumberyard that the handbook's table has under others. */
const TRADE: [string, string][] = [
  ["poplar", "Yellow-poplar"],
  ["tulip poplar", "Yellow-poplar"],
  ["tulipwood", "Yellow-poplar"],
  ["hard maple", "Maple, sugar"],
  ["rock maple", "Maple, sugar"],
  ["linden", "Basswood, American"],
  ["pecan", "Hickory, pecan"],
  ["eastern redcedar", "Cedar, eastern red"],
  ["western redcedar", "Cedar, western red"],
  ["cypress", "Baldcypress"],
];

/** The words of a name; what only sets it apart from its kind's other timbers is left out. */
const wordsOf = (name: string): string[] =>
  (name.toLowerCase().match(/\p{L}+/gu) ?? []).filter((w) => w !== "commercial");

const holds = (all: readonly string[], some: readonly string[]): boolean =>
  some.length > 0 && some.every((word) => all.includes(word));

const sameWords = (a: readonly string[], b: readonly string[]): boolean => holds(a, b) && holds(b, a);

/**
 * Up to three names with the fewest edits to them, give or take one: each typed word is counted to the word that is
 * most like it, or all of them together, for `bass wood` is one.
 */
function nearest(typed: readonly string[]): string[] {
  const edits = ({ name }: Species): number => {
    const words = wordsOf(name);
    const least = (text: string): number => Math.min(...words.map((word) => editsBetween(text, word)));
    return Math.min(
      least(typed.join("")),
      typed.map(least).reduce((sum, each) => sum + each, 0),
    );
  };
  const ranked = SPECIES.map((species) => ({ name: species.name, far: edits(species) })).sort((a, b) => a.far - b.far);
  return ranked
    .slice(0, 3)
    .filter(({ far }) => far <= ranked[0]!.far + 1)
    .map(({ name }) => name);
}
