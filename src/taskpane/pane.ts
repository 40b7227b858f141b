import { drawingSection } from "./drawing/drawing-section";
import { functionList } from "./function-list";
import { guide } from "./guide";
import type { Host } from "./host/host";
import { copyExample, insertExample, type Outcome } from "./insert";
import { MESSAGES } from "./messages";
import type { FunctionGroup } from "./reference";
import { showPlace } from "./selected-place";
import { standardsList } from "./standards-list";
import { showStuck } from "./stuck";

/** The pane, once it is on the page. */
export interface Pane {
  /** Tells the pane what it stands beside; undefined where the page is open in a browser alone. */
  connect(host: Host | undefined): Promise<void>;
  /** Tells whether the functions are lacking, so that cells wait for them. */
  tellLacking(lacking: boolean): void;
}

/**
 * Brings the page to life: fills the list, makes the search field search and the buttons work.
 * @param page the page of taskpane.html, or its like
 */
export function createPane(page: ParentNode, groups: readonly FunctionGroup[]): Pane {
  const list = part(page, "functions");
  const { show } = functionList(list, groups);
  guide(part(page, "guide"), part(page, "reader"));
  const drawing = drawingSection(part(page, "drawing"));
  const standards = standardsList(part(page, "standards"));
  searchField(part(page, "query") as HTMLInputElement, (query) => {
    part(page, "count").textContent = MESSAGES.found(show(query));
    standards.show(query);
  });
  part(page, "place").textContent = MESSAGES.looking;
  labelButtons(list, "Insert", false);

  let host: Host | undefined;
  list.addEventListener("click", (event) => {
    const formula = (event.target as Element).closest<HTMLElement>("[data-formula]")?.dataset["formula"];
    if (!formula) return;
    // Emptied first, so that the same message is read out a second time.
    part(page, "status").textContent = "";
    void take(host, formula).then((outcome) => say(part(page, "status"), outcome));
  });
  return {
    async connect(found) {
      host = found;
      labelButtons(list, found?.can.insert ? "Insert" : "Copy", true);
      await showPlace(part(page, "place"), found);
      await drawing.follow(found);
      const names = new Set(groups.flatMap(({ functions }) => functions.map(({ name }) => name)));
      await showStuck(part(page, "stuck"), found?.stuck, names, (outcome) => say(part(page, "status"), outcome));
    },
    tellLacking(lacking) {
      part(page, "trouble").textContent = lacking ? MESSAGES.lacking : "";
    },
  };
}

const take = (host: Host | undefined, formula: string): Promise<Outcome> =>
  host?.can.insert ? insertExample(host, formula) : copyExample(formula);

function say(status: HTMLElement, { ok, text }: Outcome): void {
  status.dataset["kind"] = ok ? "done" : "fault";
  status.textContent = text;
}

function searchField(field: HTMLInputElement, onQuery: (query: string) => void): void {
  field.addEventListener("input", () => onQuery(field.value));
  field.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape") return;
    field.value = "";
    onQuery("");
  });
  // A page that is loaded again may still hold what was typed.
  onQuery(field.value);
}

function labelButtons(list: HTMLElement, label: string, enabled: boolean): void {
  for (const button of list.querySelectorAll<HTMLButtonElement>("[data-formula]")) {
    button.textContent = label;
    button.disabled = !enabled;
    button.setAttribute("aria-label", `${label} ${button.dataset["formula"]}`);
  }
}

function part(page: ParentNode, id: string): HTMLElement {
  const found = page.querySelector<HTMLElement>(`#${id}`);
  if (!found) throw new Error(`The page has no #${id}.`);
  return found;
}
