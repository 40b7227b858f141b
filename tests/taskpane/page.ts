import { readFileSync } from "node:fs";
import type { GuideReference } from "../../src/guide/index";
import type { FunctionGroup } from "../../src/taskpane/reference";

/** Puts the body of the pane's page into the test's document. */
export function openPage(): Document {
  const html = readFileSync("src/taskpane/taskpane.html", "utf8");
  document.body.innerHTML = /<body>([^]*)<\/body>/.exec(html)![1]!;
  return document;
}

/** The text of the element with an id. */
export const textOf = (id: string): string => document.getElementById(id)!.textContent!.trim();

/** Waits until what clicks and promises have set off is done. */
export const settled = (): Promise<void> => new Promise((done) => setTimeout(done));

const entry = (name: string, description: string, parameters: string[]) => ({
  name,
  description,
  parameters: parameters.map((text) => ({ name: text, description: `The ${text}.`, optional: text === "unit" })),
  returns: `What ${name} gives`,
  throws: ["#VALUE! where it cannot"],
  examples: [{ formula: `=DRAWER.${name}(24)`, result: "23" }],
  sources: ["common practice"],
});

/** A short function list. */
export const GROUPS: FunctionGroup[] = [
  { name: "Lengths", functions: [entry("LENGTH", "Gives the number of a text.", ["value", "unit"])] },
  {
    name: "Boxes",
    functions: [
      entry("BOXWIDTH", "Gives the box width for the slides.", ["opening_width", "unit"]),
      entry("BOTTOMWIDTH", "Gives the width of a bottom in grooves.", ["box_width"]),
    ],
  },
];

/** A guide of one word, one heading and one page. */
export const GUIDE: GuideReference = {
  words: [{ label: "pull, standoff", names: ["pull", "standoff"], meaning: "the handle", address: "guide/words.html" }],
  headings: [
    {
      table: "openings",
      label: "Quantity",
      names: ["Quantity"],
      meaning: "identical copies",
      address: "guide/tables.html",
    },
  ],
  sections: [{ page: "Cautions", text: "It does not stand at the saw.", address: "guide/cautions.html" }],
  elsewhere: [["handle", ["pull"]]],
};
