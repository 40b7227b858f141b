import { orElse, parseLength } from "../../core/length/index";
import { STANDARDS_HELP } from "../../guide/index";
import { DEFAULT_CHOICES, type Choices } from "../new-job/index";

/** Asks what a new job is begun with, and begins it where that is wanted. */
export function askForJob(dialog: HTMLDialogElement, begin: (choices: Choices) => void): void {
  const form = dialog.querySelector("form")!;
  fill(form);
  const wrong = form.querySelector<HTMLElement>("[role=alert]")!;
  wrong.hidden = true;
  form.onchange = (event) => {
    if (field(form, "unit") === event.target) field(form, "sideThickness").value = usualOf(form).sideThickness;
    showDeduction(form);
  };
  form.onsubmit = (event) => {
    if ((event.submitter as HTMLButtonElement).value !== "begin") return;
    const choices = chosen(form);
    const fault = faultOf(choices);
    wrong.hidden = fault === undefined;
    wrong.textContent = fault ?? "";
    if (fault) event.preventDefault();
    else begin(choices);
  };
  dialog.showModal();
}

const UNITS = { in: "inches", mm: "millimeters" };

function fill(form: HTMLFormElement): void {
  options(form, "unit", UNITS);
  for (const name of ["construction", "slide"] as const)
    options(form, name, Object.fromEntries(STANDARDS_HELP[name].choices!.map((word) => [word, word])));
  field(form, "sideThickness").value = usualOf(form).sideThickness;
  field(form, "deduction").value = "";
  showDeduction(form);
}

function options(form: HTMLFormElement, name: keyof Choices, words: Readonly<Record<string, string>>): void {
  const select = field(form, name);
  select.replaceChildren(...Object.entries(words).map(([value, text]) => new Option(text, value)));
}

const field = (form: HTMLFormElement, name: keyof Choices): HTMLInputElement =>
  form.elements.namedItem(name) as HTMLInputElement;

const usualOf = (form: HTMLFormElement): Choices => DEFAULT_CHOICES[field(form, "unit").value as Choices["unit"]];

function showDeduction(form: HTMLFormElement): void {
  field(form, "deduction").closest("label")!.hidden = field(form, "slide").value !== "undermount";
}

function chosen(form: HTMLFormElement): Choices {
  const of = (name: keyof Choices): string => field(form, name).value.trim();
  const slide = of("slide") as Choices["slide"];
  return {
    unit: of("unit") as Choices["unit"],
    construction: of("construction") as Choices["construction"],
    slide,
    sideThickness: of("sideThickness"),
    deduction: slide === "undermount" ? of("deduction") : "",
  };
}

/** What keeps the job from being begun: a size that is none. A blank is the usual, or is asked for in the sheet. */
function faultOf({ unit, sideThickness, deduction }: Choices): string | undefined {
  const sizes = { "Box sides": sideThickness, "Undermount deduction": deduction };
  const [name] = Object.entries(sizes).find(([, text]) => text !== "" && !isSize(text, unit)) ?? [];
  return name && `${name}: write a length, such as 1/2 or 12 mm.`;
}

const isSize = (text: string, unit: Choices["unit"]): boolean =>
  orElse(
    () => (parseLength(text, unit), true),
    () => false,
  );
