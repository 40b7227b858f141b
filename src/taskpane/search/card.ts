import { pageAddress, STANDARDS_HELP } from "../../guide/index";
import { sampleOf, STANDARD_OF } from "../drawing/sample";
import { shown } from "../drawing/shown";
import { element } from "../element";
import { functionFront } from "../function-front";
import { insertButton } from "../inserts";
import { titleOf, UNIT_MEANING, type Entry, type StandardName } from "./entries";
import { usualOf, valuesOf } from "./standard-values";

/** What there is to read of something that was found, closed to a line or two. */
export function card(entry: Entry): HTMLElement {
  if (entry.kind === "function") return functionFront(entry.about);
  if (entry.kind === "standard") return standardCard(entry.name);
  if (entry.kind === "guide") return guideCard(entry.about);
  const { label, names, meaning, address } = entry.about;
  const kind = entry.kind === "word" ? "Word" : `Heading of ${entry.about.table}`;
  const pictured = names.map((name) => STANDARD_OF[name]).find((name) => name !== undefined);
  const buttons =
    entry.kind === "heading" ? names.filter(isTypable).map((name) => insertButton({ cells: [name] }, name)) : [];
  return front(label, kind, meaning, undefined, [...row(buttons), link(address, "In the guide")], pictured);
}

/** One of the tables' names that stands for others is none. */
const isTypable = (name: string): boolean => !/…|^in$|^mm$|^usual$/.test(name);

export function standardCard(name: StandardName | "unit"): HTMLElement {
  const help = name === "unit" ? undefined : STANDARDS_HELP[name];
  const meaning = help?.meaning ?? UNIT_MEANING;
  const detail = help?.detail === undefined ? [] : [element("p", {}, help.detail)];
  const buttons = valuesOf(name).map(({ label, inserted }) => insertButton(inserted, label));
  const inside = [
    ...detail,
    ...row(buttons),
    link(`${pageAddress("standards")}${help ? `#${anchor(help.group)}` : ""}`, "In the guide"),
  ];
  return front(name, "Standard", meaning, usualOf(name), inside, name === "unit" ? undefined : name);
}

function guideCard(about: Extract<Entry, { kind: "guide" }>["about"]): HTMLElement {
  return element(
    "div",
    { class: "front page" },
    element("a", { class: "name", href: about.address, target: "_blank" }, titleOf(about)),
    element("span", { class: "kind" }, "Guide"),
    element("span", { class: "gives" }, about.text),
  );
}

function front(
  name: string,
  kind: string,
  meaning: string,
  usual: string | undefined,
  inside: readonly Node[],
  pictured: StandardName | undefined,
): HTMLElement {
  const body = element("div", { class: "inside" }, ...inside);
  const made = element(
    "details",
    { class: "front" },
    element(
      "summary",
      {},
      element("span", { class: "name" }, name),
      element("span", { class: "kind" }, kind),
      element("span", { class: "gives" }, meaning),
      ...(usual === undefined ? [] : [element("span", { class: "usual" }, "Usual: ", element("b", {}, usual))]),
    ),
    body,
  );
  // Drawn when it is looked at, for each drawing plans a cabinet.
  if (pictured) made.addEventListener("toggle", () => body.prepend(...picture(pictured)), { once: true });
  return made;
}

function picture(name: StandardName): HTMLElement[] {
  const sample = sampleOf(name);
  if (!sample) return [];
  const { drawing, note } = sample;
  const caption = note === "" ? drawing.title : `${drawing.title}, drawn with ${note}`;
  return [
    element(
      "figure",
      {},
      element("div", { class: "picture", tabindex: "0", role: "group", "aria-label": caption }, shown(drawing)),
      element("figcaption", {}, caption),
    ),
  ];
}

/** Buttons that insert, with what they do before them. */
const row = (buttons: readonly HTMLElement[]): HTMLElement[] =>
  buttons.length === 0
    ? []
    : [element("div", { class: "inserts" }, element("span", { class: "verb" }, "Insert"), ...buttons)];

const link = (address: string, text: string): HTMLElement =>
  element("p", { class: "more" }, element("a", { href: address, target: "_blank" }, text));

const anchor = (group: string): string =>
  group
    .toLowerCase()
    .replace(/[^a-z -]/g, "")
    .replace(/ /g, "-");
