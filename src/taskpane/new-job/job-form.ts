import { orElse, parseLength } from "../../core/length/index";
import { STANDARDS_HELP } from "../../guide/index";
import { BENCH, DATA_SHEET, DEFAULT_CHOICES, type Choices } from "../../workbook/new-job/index";
import { element } from "../element";

/** What a new job is begun with, as a person chooses it. */
export interface JobForm {
  /** To be put into a form. */
  fields: readonly HTMLElement[];
  choices(): Choices;
  /** What keeps the job from being begun: a size that is none. A blank is the usual, or is asked for in the sheet. */
  fault(): string | undefined;
}

export function jobForm(): JobForm {
  const from = select(FROM);
  const unit = select(UNITS);
  const construction = select(wordsOf("construction"));
  const slide = select(wordsOf("slide"));
  const sides = element("input", { name: "sideThickness", autocomplete: "off" });
  const sheet = Object.fromEntries(
    DATA_SHEET.map((name) => [name, element("input", { name, autocomplete: "off", "aria-describedby": helpId(name) })]),
  );
  const dataSheet = element(
    "fieldset",
    { hidden: "" },
    element("legend", {}, "From the slide’s data sheet"),
    element(
      "p",
      {},
      "Leave empty what you do not know: the sheet Checks asks for it. Write none where it asks for nothing.",
    ),
    ...DATA_SHEET.map((name) => withHelp(name, sheet[name]!)),
  );
  const unitOf = (): Choices["unit"] => unit.value as Choices["unit"];
  const usualSides = (): void => void (sides.value = DEFAULT_CHOICES[unitOf()].sideThickness);
  usualSides();
  unit.addEventListener("change", usualSides);
  slide.addEventListener("change", () => (dataSheet.hidden = slide.value !== "undermount"));

  const choices = (): Choices => ({
    from: from.value === "bench" ? "openings" : (from.value as Choices["from"]),
    ...(from.value === "bench" ? { filled: BENCH[unitOf()] } : {}),
    unit: unitOf(),
    construction: construction.value as Choices["construction"],
    slide: slide.value as Choices["slide"],
    sideThickness: sides.value.trim(),
    dataSheet:
      slide.value === "undermount"
        ? Object.fromEntries(DATA_SHEET.map((name) => [name, sheet[name]!.value.trim()]))
        : {},
  });
  return {
    fields: [
      labeled("I have the sizes of", from),
      labeled("Plain numbers are", unit),
      labeled("Cabinets", construction),
      labeled("Slides", slide),
      labeled("Box sides, measured", sides),
      dataSheet,
    ],
    choices,
    fault: () => faultOf(choices()),
  };
}

const UNITS = { in: "inches", mm: "millimeters" };
const FROM = {
  openings: "openings",
  cabinets: "cabinets, outside",
  bench: "none yet: show an invented bicycle workshop’s bench",
};

const wordsOf = (name: "construction" | "slide"): Record<string, string> =>
  Object.fromEntries(STANDARDS_HELP[name].choices!.map((word) => [word, word]));

const select = (words: Readonly<Record<string, string>>): HTMLSelectElement =>
  element("select", {}, ...Object.entries(words).map(([value, text]) => element("option", { value }, text)));

export const labeled = (text: string, field: HTMLElement): HTMLElement => element("label", {}, text, field);

const helpId = (name: (typeof DATA_SHEET)[number]): string => `data-sheet-${DATA_SHEET.indexOf(name)}`;

/** A field for one standard, with its meaning under it. */
const withHelp = (name: (typeof DATA_SHEET)[number], field: HTMLElement): HTMLElement =>
  element("label", {}, titled(name), field, element("small", { id: helpId(name) }, STANDARDS_HELP[name].meaning));

const titled = (name: string): string => name[0]!.toUpperCase() + name.slice(1);

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
