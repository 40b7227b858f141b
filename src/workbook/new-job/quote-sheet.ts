import type { RuleDefinition, RuleLook, SheetDefinition } from "../author/definition";
import { isWhole } from "./cells";
import type { Choices } from "./choices";
import { pageOf } from "./page";
import { RATES, STOCK } from "./prices-sheet";
import { jobOf } from "./sheet-tables";
import { LOOKS, type Style } from "./styles";
import { HEADINGS, tableSheet } from "./table-sheet";

/** How far down the quote may grow. */
const ROOM = 60;
const FIRST = HEADINGS + 1;

/** What a line looks like hangs on what it is, for which ones there will be is not known before. */
const lines = (from: string, to: string, when?: string, look?: RuleLook): RuleDefinition[] => {
  const area = `${from}${FIRST}:${to}${HEADINGS + ROOM}`;
  return [
    { area, when: `=$A${FIRST}="Total"`, look: LOOKS.total },
    { area, when: `=OR($B${FIRST}="Subtotal",$A${FIRST}="Price")`, look: LOOKS.sum },
    ...(when && look ? [{ area, when, look }] : []),
    { area, when: `=$A${FIRST}<>""`, look: LOOKS.line },
  ];
};

/** The shop's own quote: every line down to the total, on one page. */
export const quoteSheet = (choices: Choices): SheetDefinition<Style> => ({
  ...tableSheet(
    {
      name: "Quote",
      title: "Quote",
      subtitle: "For tax, labor law and the wording of contracts ask your own adviser.",
      formula: `=DRAWER.QUOTE(${jobOf(choices)},${STOCK},${RATES})`,
      styles: ["bareText", "bareText", "bareNumber", "bareText", "bareNumber", "bareNumber"],
      widths: [14, 44, 11, 15, 13, 13],
      rows: ROOM,
      height: 18,
      rules: [
        ...lines("A", "A", `=$A${FIRST}=$A${HEADINGS}`, LOOKS.again),
        ...lines("B", "B"),
        ...lines("C", "C", isWhole(`$C${FIRST}`), LOOKS.whole),
        ...lines("D", "F"),
      ],
    },
    choices,
  ),
  page: { ...pageOf(choices), orientation: "portrait", onePage: true },
});
