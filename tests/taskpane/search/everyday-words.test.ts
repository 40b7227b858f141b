import { expect, test } from "vitest";
import { functionFiles, functionReference, guideReference } from "../../../src/build";
import { entriesOf, nameOf, textOf } from "../../../src/taskpane/search/entries";
import { find } from "../../../src/taskpane/search/find";

const entries = entriesOf(functionReference(functionFiles("src/functions")), guideReference());
const folded = (name: string): string => name.toLowerCase();
const found = (query: string): string[] => find(entries, query).map(nameOf);

/**
 * What a cabinetmaker types, and what answers it: any of these first or second.
 * @source common practice: words of the trade, and of people who talk to it
 */
const EVERYDAY: Record<string, readonly string[]> = {
  undermount: ["guide Slides and runners: Undermount slides", "standard undermount deduction"],
  kitchen: ["function OPENINGS", "guide Tables: The table cabinets"],
  handle: ["word pull, standoff", "standard pulls per front"],
  knobs: ["word pull, standoff", "standard pulls per front"],
  gap: ["standard front gap", "word gap"],
  reveal: ["word reveal", "standard end reveal"],
  nominal: ["standard side thickness", "guide Measure"],
  sag: ["function SAG", "word sag"],
  waste: ["word offcut, yield", "heading stock Waste"],
  scrap: ["word offcut, yield"],
  "cut list": ["function PARTS"],
  cutlist: ["function PARTS"],
  dovetail: ["standard corner joint"],
  rabbet: ["standard corner joint"],
  rebate: ["standard corner joint"],
  dado: ["standard dado inset", "standard corner joint"],
  "saw blade": ["standard kerf", "word kerf"],
  kerf: ["standard kerf", "word kerf"],
  fence: ["function SETUPS", "word fence, stop"],
  glue: ["standard glue"],
  screws: ["function HARDWARE", "standard slide screws"],
  "pocket holes": ["standard corner fastening"],
  "edge banding": ["standard edge band", "word edge band, pre-mill"],
  grain: ["standard front grain", "heading parts Grain"],
  "toe kick": ["word toe kick", "heading cabinets Toe kick"],
  plinth: ["word toe kick", "heading cabinets Toe kick"],
  "face frame": ["standard construction", "word face frame"],
  inset: ["standard front style", "word overlay, inset"],
  "full overlay": ["standard front style", "word overlay, inset"],
  price: ["function PRICE"],
  estimate: ["function QUOTE"],
  bid: ["function QUOTE"],
  "sales tax": ["heading rates tax, tax on"],
  markup: ["heading rates markup or margin", "word markup, margin"],
  profit: ["heading rates markup or margin", "word markup, margin"],
  "hourly rate": ["heading rates labor rate"],
  weight: ["function DRAWERLOAD", "standard load"],
  "drawer slides": ["standard slide", "guide Slides and runners"],
  runners: ["standard runner", "word runner"],
  "slide length": ["function SLIDELENGTH"],
  metric: ["standard unit", "guide Measure: How lengths are typed"],
  fractions: ["guide Measure: How lengths are typed", "function TAPE"],
  "board feet": ["word board foot, 4/4"],
  humidity: ["standard humidity low", "function EMC"],
  "wood movement": ["function MOVEMENT"],
  "tip over": ["function TIPPING"],
  "bottom panel": ["function BOTTOMWIDTH", "standard bottom thickness"],
  "drawer front": ["function FRONTWIDTH", "function FRONTHEIGHT"],
  "drawer box": ["word box", "function BOXWIDTH"],
  spacers: ["word spacer", "function MOUNTING"],
  sticker: ["function PIECES"],
  nesting: ["function LAYOUT", "function SHEETS"],
  "how many sheets": ["function SHEETS"],
  carcass: ["word carcase"],
  divider: ["standard partition thickness", "word partition"],
  stile: ["standard stile width"],
  hinges: ["standard door hinges"],
  "roll-out": ["standard door hinges"],
  "side clearance": ["standard side clearance"],
  tolerance: ["function FIT", "standard opening tolerance"],
  safety: ["guide Cautions"],
  "slide centerline": ["standard slide centerline", "function PLAN"],
  "box spacer": ["function MOUNTING", "word spacer"],
  "inside depth": ["function PLAN", "function SLIDELENGTH"],
  "least possible": ["function SHEETS"],
  "file drawer": ["standard load"],
  plywood: ["standard side material"],
  "equal drawers": ["function FRONTHEIGHT"],
};

test("whatever the guide says that others call otherwise is found under that name", () => {
  expect(entries.elsewhere.length).toBeGreaterThan(100);
  for (const [said, here] of entries.elsewhere) {
    const names = find(entries, said)
      .slice(0, 3)
      .flatMap((entry) => textOf(entry).names.map(folded));
    expect(
      here.map(folded).filter((name) => names.includes(name)),
      said,
    ).not.toEqual([]);
  }
});

test("a search while it is typed, in capitals, with the call's sign, or with words that say nothing finds the same", () => {
  expect(found("undermo")[0]).toBe(found("undermount")[0]);
  expect(found("HANDLES")[0]).toBe(found("handle")[0]);
  expect(found("=DRAWER.BOXW")[0]).toBe("function BOXWIDTH");
  expect(found("how do I do the edge banding")[0]).toBe(found("edge banding")[0]);
});

test("what no entry has is not found, and a query without words finds nothing", () => {
  expect(found("countertop")).toEqual([]);
  expect(found("  ")).toEqual([]);
  expect(found("=-*")).toEqual([]);
});

test("where no entry has all words, what has some of them is found", () => {
  expect(found("quxify kerf")[0]).toMatch(/kerf$/);
});

test.each(Object.entries(EVERYDAY))("“%s” finds what it means first or second", (query, wanted) => {
  const [first = "nothing", second = "nothing"] = found(query);
  expect(wanted, `found ${first} and ${second}`).toEqual(
    expect.arrayContaining([wanted.find((name) => name === first || name === second)]),
  );
});

test("a word that stands for another finds what has one of them, and nothing else", () => {
  for (const [said] of entries.elsewhere) expect(find(entries, said).length, said).toBeLessThan(entries.all.length / 2);
  const texts = find(entries, "knobs").map((entry) => [...textOf(entry).names, textOf(entry).text].join(" "));
  expect(texts.length).toBeGreaterThan(2);
  for (const text of texts) expect(text.toLowerCase()).toMatch(/knob|pull/);
});
