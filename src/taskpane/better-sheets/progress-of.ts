import { add, Fault, isZero, showNumber, toDouble, ZERO } from "../../core/length/index";
import { stockUses, type Least } from "../../core/sheets/index";
import { begun, LAYOUT_HEADINGS, layoutRows, readAll, searchedOn, SHEET_ARGUMENTS } from "../../functions/calls/index";
import { IncomingError } from "../../functions/cells/index";
import { message } from "../../functions/words/index";
import { MESSAGES } from "../messages";
import type { Progress } from "./progress";

/**
 * Searches for better sheets.
 * @param raw the arguments of SHEETS, LAYOUT or CUTS as the spreadsheet hands them over
 */
export function* progressOf(raw: readonly unknown[]): Generator<Progress> {
  const call = begun(SHEET_ARGUMENTS, raw);
  try {
    let last = "";
    for (const { groups, unit } of searchedOn(readAll(SHEET_ARGUMENTS, call))) {
      const layout = layoutRows(groups).map(({ sheet, material, thickness, part, drawer, turned, ...lies }) => [
        sheet,
        material,
        thickness ? toDouble(thickness) : "",
        part,
        drawer,
        ...[lies.fromLeft, lies.fromBottom, lies.length, lies.width].map(toDouble),
        turned,
      ]);
      const key = JSON.stringify(layout);
      const cost = groups.flatMap(({ solution }) => stockUses(solution)).reduce((sum, use) => add(sum, use.cost), ZERO);
      yield {
        sheets: groups.reduce((sum, { solution }) => sum + solution.sheets.length, 0),
        cost: isZero(cost) ? undefined : toDouble(cost),
        least: leastOf(groups.map(({ solution }) => solution.least)),
        proven: groups.every(({ solution }) => solution.proven),
        unit,
        ...(key !== last && { layout: [[...LAYOUT_HEADINGS], ...layout] }),
      };
      last = key;
    }
  } catch (thrown) {
    if (thrown instanceof Fault) yield { why: message(thrown, call.unit) };
    else if (thrown instanceof IncomingError) yield { why: MESSAGES.errorInTables };
    else throw thrown;
  }
}

/** Sheets add up; other measures stand one beside another. */
const leastOf = (all: readonly Least[]): string =>
  all.every(({ measure }) => measure === "sheets")
    ? MESSAGES.sheets(all.reduce((sum, { value }) => sum + toDouble(value), 0))
    : all.map(inWords).join(" and ");

const inWords = ({ measure, value }: Least): string => {
  if (measure === "sheets") return MESSAGES.sheets(toDouble(value));
  return measure === "cost" ? toDouble(value).toFixed(2) : `an area of ${showNumber(value, "in")}`;
};
