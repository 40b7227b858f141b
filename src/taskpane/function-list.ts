import { element } from "./element";
import { functionFront } from "./function-front";
import type { FunctionGroup } from "./reference";

/** Fills `place` with all functions, group by group. */
export function functionList(place: HTMLElement, groups: readonly FunctionGroup[]): void {
  place.replaceChildren(
    ...groups.map(({ name, functions }) => {
      const id = `group-${name.toLowerCase().replace(/ /g, "-")}`;
      return element(
        "section",
        { "aria-labelledby": id },
        element("h2", { id }, name),
        element("div", { class: "case" }, ...functions.map(functionFront)),
      );
    }),
  );
}
