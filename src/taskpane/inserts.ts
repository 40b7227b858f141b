import { element } from "./element";

/** What a button of the pane puts into cells: a formula, or plain cells side by side. */
export type Inserted = { formula: string } | { cells: readonly string[] };

/** A button that inserts, or copies where nothing can be inserted; the pane writes that on it. */
export const insertButton = (what: Inserted, label?: string): HTMLButtonElement =>
  element("button", {
    type: "button",
    "data-insert": JSON.stringify(what),
    ...(label !== undefined && { "data-label": label }),
  });

/** What was chosen, where the click was on such a button. */
export function chosenIn(event: Event): Inserted | undefined {
  const button = (event.target as Element).closest<HTMLElement>("[data-insert]");
  return button ? insertedBy(button) : undefined;
}

/** Writes on all buttons in `place` what they do now. */
export function labelInserts(place: ParentNode, verb: string, enabled: boolean): void {
  for (const button of place.querySelectorAll<HTMLButtonElement>("[data-insert]")) {
    const { label } = button.dataset;
    button.textContent = label === undefined ? verb : label;
    button.disabled = !enabled;
    const written = writtenAs(insertedBy(button));
    // Who speaks to the page says what stands on the button.
    const more = label === undefined || written.includes(label) ? "" : `: ${label}`;
    button.setAttribute("aria-label", `${verb} ${written}${more}`);
  }
}

/** As it is said, and copied: cells side by side are parted by tabs. */
export const writtenAs = (what: Inserted): string => ("formula" in what ? what.formula : what.cells.join(", "));

const insertedBy = (button: HTMLElement): Inserted => JSON.parse(button.dataset["insert"]!) as Inserted;
