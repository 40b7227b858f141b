import { element } from "./element";
import { functionFront } from "./function-front";
import { MESSAGES } from "./messages";
import type { FunctionGroup } from "./reference";
import { search } from "./search";

/** The list of functions on the page. */
export interface FunctionList {
  /** Shows what a query finds, and hides the rest; returns how many functions that are. */
  show(query: string): number;
}

/** Fills `place` with all functions, group by group. */
export function functionList(place: HTMLElement, groups: readonly FunctionGroup[]): FunctionList {
  const sections = new Map(groups.map(({ name }) => [name, groupSection(name)]));
  const fronts = new Map(
    groups.flatMap(({ functions }) => functions.map((entry) => [entry.name, functionFront(entry)])),
  );
  for (const { name, functions } of groups) {
    sections.get(name)!.append(element("div", { class: "case" }, ...functions.map((entry) => fronts.get(entry.name)!)));
  }
  const nothing = element("p", { class: "nothing" });
  place.replaceChildren(...sections.values(), nothing);

  const show = (query: string): number => {
    const found = search(groups, query);
    const names = new Set(found.flatMap(({ functions }) => functions.map(({ name }) => name)));
    for (const [name, section] of sections) section.hidden = !found.some((group) => group.name === name);
    for (const [name, front] of fronts) front.hidden = !names.has(name);
    nothing.hidden = names.size > 0;
    nothing.textContent = names.size > 0 ? "" : MESSAGES.nothing(query.trim());
    return names.size;
  };
  show("");
  return { show };
}

function groupSection(name: string): HTMLElement {
  const id = `group-${name.toLowerCase().replace(/ /g, "-")}`;
  return element("section", { "aria-labelledby": id }, element("h2", { id }, name));
}
