import { PAPERS, type Paper } from "./paper";

/** What is to be printed, and on what. */
export interface PrintChoice {
  /** Sheets by their ids, in their order. */
  sheets: string[];
  paper: Paper;
}

/**
 * Asks which sheets are printed and on what paper, and prints them where that is wanted.
 * @param sheets those that can be, the one that is open among them
 */
export function askForPages(
  dialog: HTMLDialogElement,
  sheets: readonly { id: string; name: string; isOpen: boolean }[],
  print: (choice: PrintChoice) => void,
): void {
  const form = dialog.querySelector("form")!;
  const list = form.querySelector<HTMLElement>("[data-list=sheets]")!;
  const paper = form.elements.namedItem("paper") as HTMLSelectElement;
  const wrong = form.querySelector<HTMLElement>("[role=alert]")!;
  const boxes = sheets.map(({ id, name, isOpen }) => {
    const label = document.createElement("label");
    const box = Object.assign(document.createElement("input"), { type: "checkbox", value: id, checked: isOpen });
    label.append(box, ` ${name}`);
    return { label, box };
  });
  list.replaceChildren(...boxes.map(({ label }) => label));
  if (paper.options.length === 0) {
    paper.replaceChildren(...Object.entries(PAPERS).map(([value, { name }]) => new Option(name, value)));
    paper.value = usualPaper(navigator.language);
  }
  const all = form.querySelector<HTMLButtonElement>("[data-all]")!;
  all.onclick = () => {
    const wanted = !boxes.every(({ box }) => box.checked);
    for (const { box } of boxes) box.checked = wanted;
  };
  wrong.hidden = true;
  form.onsubmit = (event) => {
    if ((event.submitter as HTMLButtonElement).value !== "begin") return;
    const chosen = boxes.filter(({ box }) => box.checked).map(({ box }) => box.value);
    wrong.hidden = chosen.length > 0;
    if (chosen.length === 0) event.preventDefault();
    else print({ sheets: chosen, paper: paper.value as Paper });
  };
  dialog.showModal();
}

/** Letter where it is the usual paper, A4 everywhere else (Unicode CLDR, measurementData, paperSize). */
const usualPaper = (language: string): Paper =>
  LETTER.has(new Intl.Locale(language).maximize().region ?? "") ? "letter" : "A4";

const LETTER = new Set("BZ CA CL CO CR GT MX NI PA PH PR SV US VE".split(" "));
