import { sameName } from "../../workbook/formula/sheet-names";

/** The spreadsheet program's own limit. */
const LONGEST = 31;

/** What a copy of a sheet is called: by its date, with a number where that is taken. */
export function copyName(sheet: string, date: string, taken: readonly string[]): string {
  for (let n = 1; ; n++) {
    const end = ` ${date}${n === 1 ? "" : ` (${n})`}`;
    // No letter is cut in halves.
    const name = sheet.slice(0, LONGEST - end.length).replace(/[\uD800-\uDBFF]$/, "") + end;
    if (!taken.some((one) => sameName(one, name))) return name;
  }
}
