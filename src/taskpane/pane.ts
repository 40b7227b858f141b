import type { GuideReference } from "../guide/index";
import { betterSheets } from "./better-sheets/section";
import { copiesSection } from "./copies/copies-section";
import { drawingSection } from "./drawing/drawing-section";
import { findingsSection } from "./findings/findings-section";
import { functionList } from "./function-list";
import { guide } from "./guide";
import type { Host } from "./host/host";
import { copy, insert, type Outcome } from "./insert";
import { chosenIn, labelInserts, type Inserted } from "./inserts";
import { MESSAGES } from "./messages";
import { newJobSection } from "./new-job/new-job-section";
import type { FunctionGroup } from "./reference";
import { entriesOf } from "./search/entries";
import { showResults } from "./search/results";
import { showPlace } from "./selected-place";
import { standardsList } from "./standards-list";
import { shopPagesSection } from "./shop-pages/section";
import { showStuck } from "./stuck";

/** The pane, once it is on the page. */
export interface Pane {
  /** Tells the pane what it stands beside; undefined where the page is open in a browser alone. */
  connect(host: Host | undefined): Promise<void>;
  /** Tells whether the functions are lacking, so that cells wait for them. */
  tellLacking(lacking: boolean): void;
}

/**
 * Brings the page to life: fills the lists, makes the search field search and the buttons work.
 * @param page the page of taskpane.html, or its like
 * @param terms what the guide explains
 */
export function createPane(page: ParentNode, groups: readonly FunctionGroup[], terms: GuideReference): Pane {
  let host: Host | undefined;
  let isConnected = false;
  const [lists, status] = [part(page, "lists"), part(page, "status")];
  const label = (): void => labelInserts(lists, isConnected && !host?.can.insert ? "Copy" : "Insert", isConnected);
  functionList(part(page, "functions"), groups);
  standardsList(part(page, "standards"), label);
  guide(part(page, "guide"), part(page, "reader"));
  const job = newJobSection(part(page, "new-job"));
  const copies = copiesSection(part(page, "copies"), (outcome) => say(status, outcome));
  const better = betterSheets(part(page, "better"), (outcome) => say(status, outcome));
  const drawing = drawingSection(part(page, "drawing"));
  const findings = findingsSection(part(page, "findings"), (outcome) => say(status, outcome));
  const pages = shopPagesSection(part(page, "shop-pages"), (outcome) => say(status, outcome));
  const entries = entriesOf(groups, terms);
  searchField(part(page, "query") as HTMLInputElement, (query) => {
    const count = showResults(part(page, "found"), entries, query);
    lists.classList.toggle("searching", query.trim() !== "");
    part(page, "count").textContent = query.trim() === "" ? "" : MESSAGES.found(count);
    label();
  });
  part(page, "place").textContent = MESSAGES.looking;

  lists.addEventListener("click", (event) => {
    const what = chosenIn(event);
    if (!what) return;
    // Emptied first, so that the same message is read out a second time.
    status.textContent = "";
    void take(host, what).then((outcome) => say(status, outcome));
  });
  return {
    async connect(found) {
      host = found;
      isConnected = true;
      label();
      job.connect(found);
      pages.connect(found);
      copies.connect(found);
      await showPlace(part(page, "place"), found);
      await drawing.follow(found);
      await better.follow(found);
      await findings.follow(found);
      const names = new Set(groups.flatMap(({ functions }) => functions.map(({ name }) => name)));
      await showStuck(part(page, "stuck"), found?.stuck, names, (outcome) => say(status, outcome));
    },
    tellLacking(lacking) {
      part(page, "trouble").textContent = lacking ? MESSAGES.lacking : "";
    },
  };
}

const take = (host: Host | undefined, what: Inserted): Promise<Outcome> =>
  host?.can.insert ? insert(host, what) : copy(what);

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

function part(page: ParentNode, id: string): HTMLElement {
  const found = page.querySelector<HTMLElement>(`#${id}`);
  if (!found) throw new Error(`The page has no #${id}.`);
  return found;
}
