import { functionHelp } from "../guide/index";
import { element } from "./element";
import { insertButton } from "./inserts";
import { bracketed, signature, type Example, type FunctionEntry } from "./reference";
import { resultCells } from "./result-text";

/** One function: closed, its name and what it gives; drawn open, how it is called, and examples to take out. */
export const functionFront = (entry: FunctionEntry): HTMLElement =>
  element(
    "details",
    { class: "front" },
    element(
      "summary",
      {},
      element("span", { class: "name" }, entry.name),
      " ",
      element("span", { class: "gives" }, entry.description),
    ),
    element(
      "div",
      { class: "inside" },
      element("p", { class: "signature" }, code(signature(entry))),
      element("ul", { class: "examples", "aria-label": `Examples of ${entry.name}` }, ...entry.examples.map(example)),
      element("dl", {}, ...entry.parameters.flatMap(argument), ...outcome(entry)),
      element(
        "p",
        { class: "more" },
        element("a", { href: functionHelp(entry.name), target: "_blank" }, `${entry.name} in the guide`),
      ),
    ),
  );

const argument = (parameter: FunctionEntry["parameters"][number]): HTMLElement[] => [
  element("dt", {}, element("code", {}, bracketed(parameter))),
  element("dd", {}, parameter.description),
];

const outcome = ({ returns, throws }: FunctionEntry): HTMLElement[] => [
  element("dt", {}, "Result"),
  element("dd", {}, returns),
  ...throws
    .filter((text) => text !== "nothing")
    .flatMap((text) => [element("dt", {}, "Error"), element("dd", {}, text)]),
];

const example = ({ formula, result }: Example): HTMLElement =>
  element(
    "li",
    {},
    code(formula),
    element(
      "div",
      { class: "taken" },
      element(
        "div",
        { class: "wide", tabindex: "0", role: "group", "aria-label": `Result of ${formula}` },
        resultGrid(result),
      ),
      insertButton({ formula }),
    ),
  );

const resultGrid = (result: string): HTMLElement =>
  element(
    "table",
    {},
    ...resultCells(result).map((row) => element("tr", {}, ...row.map((cell) => element("td", {}, cell)))),
  );

/** A formula may be broken between its arguments, but not at the hyphens and spaces within them. */
const code = (formula: string): HTMLElement =>
  element("code", {}, ...formula.split(/(?<=[(,] ?)(?! )/).map((piece) => element("span", { class: "piece" }, piece)));
