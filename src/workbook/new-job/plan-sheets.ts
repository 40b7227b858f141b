import type { SheetDefinition } from "../author/definition";
import type { Choices } from "./choices";
import { byUnit, jobPlaces } from "./job-places";
import { RATES, STOCK } from "./prices-sheet";
import { jobOf, openingsOf, PLAN } from "./sheet-tables";
import type { Style } from "./styles";
import { results, tableSheet, type TableSheet } from "./table-sheet";

/** What the openings come to, and whether it can be built. */
export const planSheets = (choices: Choices): SheetDefinition<Style>[] =>
  [...(choices.from === "cabinets" ? [fromCabinets(choices)] : []), plan(choices), checks(choices)].map((table) =>
    tableSheet(table, choices),
  );

function plan(choices: Choices): TableSheet {
  const measured = "Heights are measured up from the floor of the opening.";
  return {
    name: "Plan",
    title: "Every drawer",
    subtitle: byUnit(`Inches. ${measured}`, `Millimeters. ${measured}`, jobPlaces(choices).unit),
    formula: `=DRAWER.PLAN(${jobOf(choices)})`,
    styles: ["key", "label", ...results(12)],
    widths: [10, 10, 14, 14, 15, 13, 13, 13, 13, 14, 17, 14, 14, 15],
    rows: 72,
  };
}

const checks = (choices: Choices): TableSheet => ({
  name: "Checks",
  title: "Before the first cut",
  subtitle: "wrong: it cannot be built so, or not well. doubtful: see for yourself.",
  formula: `=DRAWER.CHECKS(${jobOf(choices)},${STOCK},${RATES})`,
  styles: ["key", "label", "finding", "finding"],
  widths: [16, 11, 56, 56],
  rows: 40,
  height: 36,
});

const fromCabinets = (choices: Choices): TableSheet => {
  const { typed, standards } = jobPlaces(choices);
  return {
    name: "Openings",
    title: "The cabinets’ openings",
    subtitle:
      "Clear sizes, from the outside sizes of the sheet Job. A cabinet of one column gives its opening its name.",
    formula: `=DRAWER.OPENINGS(${typed},${standards})`,
    styles: ["key", "label", ...results(3), "resultWord", "number", ...results(4)],
    widths: [16, 14, 13, 13, 13, 26, 10, 12, 12, 16, 12],
    rows: 40,
  };
};

/** The sum behind every size of a drawer. */
export const workingsSheet = (choices: Choices): SheetDefinition<Style> =>
  tableSheet(
    {
      name: "Workings",
      title: "How a size came about",
      subtitle: "Type a drawer’s label, and read the sum behind each of its sizes.",
      formula: `=DRAWER.WORKING(${openingsOf(choices)},B4,${jobPlaces(choices).standards})`,
      ask: ["Drawer", `=INDEX(${PLAN},2,1)`],
      styles: ["key", "size", "note"],
      widths: [26, 13, 110],
      rows: 60,
    },
    choices,
  );
