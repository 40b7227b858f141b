import { toStored } from "../edit/formula-text";
import { prefixText } from "../formula/sheet-prefix";
import { escapeText } from "../xlsx/xml";
import type { WorkbookDefinition } from "./definition";

/**
 * The names of a workbook: those of its sheets' printed titles, and its own.
 * @param first the place of the first sheet among all
 */
export function definedNames(
  sheets: WorkbookDefinition["sheets"],
  names: Readonly<Record<string, string>>,
  first: number,
): string[] {
  const titles = sheets.flatMap(({ name, page }, i) => {
    const row = page?.repeated;
    if (row === undefined) return [];
    const rows = `${prefixText({ first: name })}$${row}:$${row}`;
    return [`<definedName name="_xlnm.Print_Titles" localSheetId="${first + i}">${escapeText(rows)}</definedName>`];
  });
  const own = Object.entries(names).map(
    ([name, area]) => `<definedName name="${name}">${escapeText(toStored(area))}</definedName>`,
  );
  return [...titles, ...own];
}
