import { STANDARD_GROUPS, STANDARDS_HELP } from "../guide/index";
import { element } from "./element";
import { standardCard } from "./search/card";
import type { StandardName } from "./search/entries";

/**
 * Fills `place` with every standard, group by group.
 * @param onMade told of the cards of a group, which are made when it is opened
 */
export function standardsList(place: HTMLElement, onMade: () => void): void {
  const names = Object.keys(STANDARDS_HELP) as StandardName[];
  place.replaceChildren(
    element("h2", { id: "standards-title" }, "Standards"),
    element("p", {}, "Names of the table standards, or columns of openings."),
    element(
      "div",
      { class: "case" },
      ...STANDARD_GROUPS.map((group) => {
        const own = names.filter((name) => STANDARDS_HELP[name].group === group);
        return folder(group, own.join(", "), () => own.map(standardCard), onMade);
      }),
    ),
  );
}

/** Closed, its title and what is in it; its cards are made when it is first opened. */
function folder(title: string, about: string, cards: () => HTMLElement[], onMade: () => void): HTMLElement {
  const inside = element("div", { class: "case" });
  const made = element(
    "details",
    { class: "front" },
    element("summary", {}, element("span", { class: "name" }, title), element("span", { class: "gives" }, about)),
    element("div", { class: "inside" }, inside),
  );
  made.addEventListener(
    "toggle",
    () => {
      inside.replaceChildren(...cards());
      onMade();
    },
    { once: true },
  );
  return made;
}
