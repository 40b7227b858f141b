import { orElse, parseLength } from "../../core/length/index";
import { STANDARDS_HELP } from "../../guide/index";
import { DATA_SHEET, DEFAULT_CHOICES, type Choices } from "../new-job/index";

/** Asks what a new job is begun with, and begins it where that is wanted. */
export function askForJob(dialog: HTMLDialogElement, begin: (choices: Choices) => void): void {
  const form = dialog.querySelector("form")!;
  fill(form);
  const wrong = form.querySelector<HTMLElement>("[role=alert]")!;
  wrong.hidden = true;
  form.onchange = (event) => {
    if (field(form, "unit") === event.target) field(form, "sideThickness").value = usualOf(form).sideThickness;
    showDataSheet(form);
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

type Name = keyof Choices | (typeof DATA_SHEET)[number];

const UNITS = { in: "inches", mm: "millimeters" };
const FROM = { openings: "openings, as measured", cabinets: "cabinets, by their outside" };

function fill(form: HTMLFormElement): void {
  options(form, "from", FROM);
  options(form, "unit", UNITS);
  for (const name of ["construction", "slide"] as const)
    options(form, name, Object.fromEntries(STANDARDS_HELP[name].choices!.map((word) => [word, word])));
  field(form, "sideThickness").value = usualOf(form).sideThickness;
  const [legend, words] = dataSheet(form).children;
  dataSheet(form).replaceChildren(legend!, words!, ...DATA_SHEET.map(dataSheetField));
  showDataSheet(form);
}

function options(form: HTMLFormElement, name: Name, words: Readonly<Record<string, string>>): void {
  const select = field(form, name);
  select.replaceChildren(...Object.entries(words).map(([value, text]) => new Option(text, value)));
}

/** A field for one standard, with its meaning under it. */
function dataSheetField(name: (typeof DATA_SHEET)[number], place: number): HTMLElement {
  const label = document.createElement("label");
  const input = document.createElement("input");
  const help = document.createElement("small");
  help.id = `data-sheet-${place}`;
  help.textContent = STANDARDS_HELP[name].meaning;
  Object.assign(input, { name, autocomplete: "off" });
  input.setAttribute("aria-describedby", help.id);
  label.append(titled(name), input, help);
  return label;
}

const titled = (name: string): string => name[0]!.toUpperCase() + name.slice(1);

const field = (form: HTMLFormElement, name: Name): HTMLInputElement =>
  form.elements.namedItem(name) as HTMLInputElement;

const usualOf = (form: HTMLFormElement): Choices => DEFAULT_CHOICES[field(form, "unit").value as Choices["unit"]];

const dataSheet = (form: HTMLFormElement): HTMLFieldSetElement => form.querySelector("fieldset")!;

function showDataSheet(form: HTMLFormElement): void {
  dataSheet(form).hidden = field(form, "slide").value !== "undermount";
}

function chosen(form: HTMLFormElement): Choices {
  const of = (name: Name): string => field(form, name).value.trim();
  const slide = of("slide") as Choices["slide"];
  return {
    unit: of("unit") as Choices["unit"],
    from: of("from") as Choices["from"],
    construction: of("construction") as Choices["construction"],
    slide,
    sideThickness: of("sideThickness"),
    dataSheet: slide === "undermount" ? Object.fromEntries(DATA_SHEET.map((name) => [name, of(name)])) : {},
  };
}

/** What keeps the job from being begun: a size that is none. A blank is the usual, or is asked for in the sheet. */
function faultOf({ unit, sideThickness, dataSheet }: Choices): string | undefined {
  const sizes: Record<string, string> = { [SIDES]: sideThickness, ...dataSheet };
  const isWrong = (name: string): boolean =>
    sizes[name] !== "" && !isSize(sizes[name]!, unit) && (name === SIDES || !/^none$/i.test(sizes[name]!));
  const name = Object.keys(sizes).find(isWrong);
  return name && `${titled(name)}: write a length, such as 1/2 or 12 mm${name === SIDES ? "" : ", or none"}.`;
}

const SIDES = "box sides";

const isSize = (text: string, unit: Choices["unit"]): boolean =>
  orElse(
    () => (parseLength(text, unit), true),
    () => false,
  );
