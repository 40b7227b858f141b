import { STANDARDS_HELP } from "../../guide/index";
import type { RowDefinition, RuleDefinition, SheetDefinition } from "../author/definition";
import { best, cell, gap, row, spilled, tall } from "./cells";
import type { Choices } from "./choices";
import { byUnit, jobPlaces, STANDARD_NAMES } from "./job-places";
import { pageOf } from "./page";
import { RATES, STOCK } from "./prices-sheet";
import { openingsOf } from "./sheet-tables";
import { LOOKS, type Style } from "./styles";

const ROOM = 4;
const TOP = 5;
/** The row of the alternates' names, over the standards. */
const STANDARDS_TOP = TOP + ROOM + 2;
const BODY = `A${TOP + 1}:J${TOP + ROOM}`;

const RULES: RuleDefinition[] = [
  best(`D${TOP + 1}:D${TOP + ROOM}`, "<"),
  best(`F${TOP + 1}:F${TOP + ROOM}`, ">"),
  { area: BODY, when: `=$A${TOP + 1}<>""`, look: LOOKS.line },
];

const HEADINGS: Style[] = ["columnText", ...Array<Style>(8).fill("column"), "columnText"];
const CELLS: Style[] = [
  ...(["bareKey", "bareCount", "bareCount", "bareMoney", "bareChange", "bareRoom", "bareRoomChange"] as const),
  ...(["bareCount", "bareCount", "bareWords"] as const),
];

/** The job built in other ways, side by side: two that are often asked for, and room for one more. */
export function alternates(choices: Choices): SheetDefinition<Style> {
  const { standard, unit } = jobPlaces(choices);
  const thick = { in: "3/4", mm: "19" }[choices.unit];
  const others: Readonly<Record<string, readonly (string | null)[]>> = {
    "side thickness": [thick, null],
    "front style": [null, "inset"],
  };
  const names = [...STANDARD_NAMES].sort((a, b) => Number(b in others) - Number(a in others));
  const compared = (name: string, at: string): RowDefinition<Style> =>
    row(
      cell("label", name),
      cell("resultWord", `=IF(${at}="","",${at})`),
      ...[0, 1, 2].map((i) => cell("input", others[name]?.[i] ?? null)),
    );
  const standards = `$A$${STANDARDS_TOP}:$E$${STANDARDS_TOP + names.length + 1}`;
  const compare = (room: string): string =>
    `The job’s openings, with other standards. Room in ${room}. The cheapest and the roomiest are marked.`;
  return {
    name: "Alternates",
    widths: [28, 20, 15, 15, 20, 15, 23, 8, 8, 60],
    selected: `C${STANDARDS_TOP + 1}`,
    merged: ["A1:J1", "A2:J2", "A3:J3"],
    page: pageOf(choices),
    rules: RULES,
    lists: names.flatMap((name, i) => {
      const words = wordsOf(name);
      const r = STANDARDS_TOP + 1 + i;
      return words ? [{ area: `C${r}:E${r}`, words }] : [];
    }),
    rows: [
      tall(36, cell("title", "Built in other ways")),
      row(cell("subtitle", byUnit(compare("cubic feet"), compare("liters"), unit))),
      row(cell("subtitle", "Below, a blank is as in the first column. Name one more alternate, and it is compared.")),
      gap(),
      ...spilled(
        `=DRAWER.ALTERNATES(${openingsOf(choices)},${standards},${STOCK},${RATES})`,
        HEADINGS,
        CELLS,
        ROOM,
        33,
      ),
      gap(),
      tall(
        27,
        cell("columnText", "Standard"),
        cell("resultWord", "As it is"),
        ...[`${thick} sides`, "Inset fronts", null].map((name) => cell("input", name)),
      ),
      ...names.map((name) => compared(name, standard(name))),
      compared("unit", unit),
    ],
  };
}

const wordsOf = (name: string): readonly string[] | undefined =>
  (STANDARDS_HELP as Record<string, { choices?: readonly string[] }>)[name]?.choices;
