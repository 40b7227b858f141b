import { writeWorkbook, type WorkbookDefinition } from "../author/index";
import { recalculate } from "../edit/recalculate";
import { OWN_FUNCTIONS } from "../edit/own-functions";
import { ALTERNATES } from "./alternates";
import { BENCH } from "./bench";
import { DRAWERS } from "./drawers";
import { CHECKS, CUT_LIST, HARDWARE, MOUNTING, PLAN, WORKINGS } from "./plan";
import { JOB } from "./job";
import { PRICE_GRID } from "./price-grid";
import { PRICES } from "./prices";
import { CLIENT_QUOTE, QUOTE } from "./quote";
import { SAW } from "./saw";
import { CUTS, SHEETS } from "./sheet-goods";
import { STYLES, type Style } from "./styles";
import { WHAT_IF } from "./what-if";

/** The workbook that is open at the start: a bicycle workshop's parts bench, invented. */
export const PARTS_BENCH: WorkbookDefinition<Style> = {
  styles: STYLES,
  sheets: [
    ...[BENCH, DRAWERS, WHAT_IF, SAW, PLAN, CUT_LIST, SHEETS, CUTS, HARDWARE, MOUNTING, CHECKS, WORKINGS],
    ...[JOB, PRICES, QUOTE, CLIENT_QUOTE, PRICE_GRID, ALTERNATES],
  ],
};

/** The same as an .xlsx file that nobody has worked out yet: whoever opens it does. */
export const partsBenchDraft = (): Uint8Array => writeWorkbook(PARTS_BENCH);

/** The same, worked out. */
export function partsBenchFile(): Uint8Array {
  return recalculate(partsBenchDraft(), { functions: OWN_FUNCTIONS }).bytes;
}
