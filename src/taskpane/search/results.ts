import { element } from "../element";
import { MESSAGES } from "../messages";
import { card } from "./card";
import type { Entries } from "./entries";
import { find } from "./find";

/** So many are shown; who looks for more says more. */
const MOST = 25;

/** Shows what a query finds in `place`, the likeliest first; hides it where there is no query. */
export function showResults(place: HTMLElement, entries: Entries, query: string): number {
  const found = find(entries, query);
  const isAsked = query.trim() !== "";
  place.hidden = !isAsked;
  const shown = found.slice(0, MOST).map(card);
  const more = found.length > MOST ? [element("p", { class: "told" }, MESSAGES.more(found.length - MOST))] : [];
  const nothing =
    isAsked && found.length === 0 ? [element("p", { class: "nothing" }, MESSAGES.nothing(query.trim()))] : [];
  place.replaceChildren(
    element("h2", { id: "found-title" }, "Found"),
    ...(shown.length > 0 ? [element("div", { class: "case" }, ...shown)] : []),
    ...more,
    ...nothing,
  );
  return found.length;
}
