import { STANDARDS_HELP } from "../../guide/index";
import type { SheetDefinition } from "../author/definition";
import { alternates, ALTERNATES_TOP, type AlternateStandard } from "../example/alternates";
import { priceGrid } from "../example/price-grid";
import type { Style } from "../example/styles";
import type { Choices } from "./choices";
import { byUnit, jobPlaces, STANDARD_NAMES } from "./job-places";
import { openingsOf } from "./openings-of";
import { RATES, STOCK } from "./prices-sheet";

/** What an opening like the job's first costs and holds, by its width and its count of drawers. */
export function jobPriceGrid(choices: Choices): SheetDefinition<Style> {
  const openings = openingsOf(choices);
  const { standards, unit } = jobPlaces(choices);
  const isMm = `${unit}="mm"`;
  const first = (heading: string): string => {
    const found = `INDEX(${openings},2,MATCH("${heading}",INDEX(${openings},1,0),0))`;
    return `=IF(${found}="","",${found})`;
  };
  return priceGrid({
    standards,
    stock: STOCK,
    rates: RATES,
    height: first("Height"),
    depth: first("Depth"),
    notes: ["Of the first opening; or type another over it.", "Likewise."],
    widths: { in: ["15", "18", "21", "24", "27", "30"], mm: ["400", "450", "500", "600", "800", "900"] }[choices.unit],
    most: 600,
    titles: [
      byUnit("Price, by width in inches", "Price, by width in mm", unit),
      byUnit("Room inside, cubic feet", "Room inside, liters", unit),
    ],
    roomIn: `IF(${isMm}," liters"," cubic feet")`,
    unitsInRoom: `IF(${isMm},${100 ** 3},${12 ** 3})`,
    money: "#,##0.00",
    tapeUnit: `,,,${unit}`,
  });
}

/** The job built in other ways: two that are often asked for, and room for one more. */
export function jobAlternates(choices: Choices): SheetDefinition<Style> {
  const { standard, unit } = jobPlaces(choices);
  const thick = { in: "3/4", mm: "19" }[choices.unit];
  const others: Record<string, AlternateStandard[2][]> = {
    "side thickness": [thick, null],
    "front style": [null, "inset"],
  };
  const names = [...STANDARD_NAMES].sort((a, b) => Number(b in others) - Number(a in others));
  const standards: AlternateStandard[] = [
    ...names.map((name): AlternateStandard => [name, orBlank(standard(name)), ...(others[name] ?? [])]),
    ["unit", orBlank(unit)],
  ];
  return alternates({
    openings: openingsOf(choices),
    stock: STOCK,
    rates: RATES,
    subtitle: byUnit(
      "The job’s openings, with other standards. Room in cubic feet. The cheapest and the roomiest are marked.",
      "The job’s openings, with other standards. Room in liters. The cheapest and the roomiest are marked.",
      unit,
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
