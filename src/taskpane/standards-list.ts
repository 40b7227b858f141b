import { STANDARDS_HELP, usualInWords } from "../guide/index";
import { element } from "./element";
import { finder } from "./search";

type Name = keyof typeof STANDARDS_HELP;
const NAMES = Object.keys(STANDARDS_HELP) as Name[];

/** Fills `place` with every standard: what it means, its words, and what holds where it is left out. */
export function standardsList(place: HTMLElement): { show(query: string): void } {
  const terms = new Map(NAMES.map((name) => [name, term(name)]));
  const about = element("p", {}, "Names of the table standards, or columns of openings; each in inches | millimeters.");
  const list = element("dl", {}, ...[...terms.values()].flat());
  const title = element("h2", { id: "standards-title" }, "Standards");
  place.replaceChildren(title, about, element("div", { class: "case" }, list));
  return {
    show(query) {
      const found = new Set(standardsFound(query));
      for (const [name, parts] of terms) for (const part of parts) part.hidden = !found.has(name);
      place.hidden = found.size === 0;
    },
  };
}

/** The standards in whose name, group, meaning or words every word of the query occurs. */
function standardsFound(query: string): Name[] {
  const found = finder(query);
  return NAMES.filter((name) => {
    const { group, meaning, choices = [] } = STANDARDS_HELP[name];
    return found([name, group, meaning, ...choices].join(" "));
  });
}

function term(name: Name): HTMLElement[] {
  const { meaning, choices } = STANDARDS_HELP[name];
  const usual = [...new Set([usualInWords(name, "in"), usualInWords(name, "mm")])].join(" | ");
  const words = choices ? ` ${choices.join(", ")}.` : "";
  return [element("dt", {}, name), element("dd", {}, `${meaning}${words} `, element("i", {}, usual))];
}
