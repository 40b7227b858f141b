import { STANDARDS_HELP } from "../../guide/index";
import type { SheetDefinition } from "../author/index";
import { alternates, ALTERNATES_TOP, type AlternateStandard } from "../example/alternates";
import { priceGrid } from "../example/price-grid";
import type { Style } from "../example/styles";
import type { Choices } from "./choices";
import { byUnit, STANDARD_NAMES, standardCell, STANDARDS, UNIT_CELL } from "./job-sheet";
import { openingsOf } from "./openings-of";
import { RATES, STOCK } from "./prices-sheet";

const IS_MM = `${UNIT_CELL}="mm"`;

/** What an opening like the job's first costs and holds, by its width and its count of drawers. */
export function jobPriceGrid(choices: Choices): SheetDefinition<Style> {
  const openings = openingsOf(choices);
  const first = (heading: string): string => {
    const found = `INDEX(${openings},2,MATCH("${heading}",INDEX(${openings},1,0),0))`;
    return `=IF(${found}="","",${found})`;
  };
  return priceGrid({
    standards: STANDARDS,
    stock: STOCK,
    rates: RATES,
    height: first("Height"),
    depth: first("Depth"),
    notes: ["Of the first opening; or type another over it.", "Likewise."],
    widths: { in: ["15", "18", "21", "24", "27", "30"], mm: ["400", "450", "500", "600", "800", "900"] }[choices.unit],
    most: 600,
    titles: [
      byUnit("Price, by width in inches", "Price, by width in mm"),
      byUnit("Room inside, cubic feet", "Room inside, liters"),
    ],
    roomIn: `IF(${IS_MM}," liters"," cubic feet")`,
    unitsInRoom: `IF(${IS_MM},${100 ** 3},${12 ** 3})`,
    money: "#,##0.00",
    tapeUnit: `,,,${UNIT_CELL}`,
  });
}

/** The job built in other ways: two that are often asked for, and room for one more. */
export function jobAlternates(choices: Choices): SheetDefinition<Style> {
  const thick = { in: "3/4", mm: "19" }[choices.unit];
  const others: Record<string, AlternateStandard[2][]> = {
    "side thickness": [thick, null],
    "front style": [null, "inset"],
  };
  const names = [...STANDARD_NAMES].sort((a, b) => Number(b in others) - Number(a in others));
  const standards: AlternateStandard[] = [
    ...names.map((name): AlternateStandard => [name, orBlank(standardCell(name)), ...(others[name] ?? [])]),
    ["unit", orBlank(UNIT_CELL)],
  ];
  return alternates({
    openings: openingsOf(choices),
    stock: STOCK,
    rates: RATES,
    subtitle: byUnit(
      "The job’s openings, with other standards. Room in cubic feet. The cheapest and the roomiest are marked.",
      "The job’s openings, with other standards. Room in liters. The cheapest and the roomiest are marked.",
    ),
    names: ["As it is", `${thick} sides`, "Inset fronts", null],
    standards,
    isWord: (name) => choicesOf(name) !== undefined || name === "unit",
    lists: names.flatMap((name, i) => {
      const words = choicesOf(name);
      const r = ALTERNATES_TOP + 1 + i;
      return words ? [{ area: `C${r}:E${r}`, words }] : [];
    }),
  });
}

const orBlank = (at: string): string => `=IF(${at}="","",${at})`;

const choicesOf = (name: string): readonly string[] | undefined =>
  (STANDARDS_HELP as Record<string, { choices?: readonly string[] }>)[name]?.choices;
