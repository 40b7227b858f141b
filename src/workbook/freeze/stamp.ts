import { openWorkbook } from "../xlsx/open-workbook";
import { PackageDraft } from "../xlsx/package-draft";
import { withFooter } from "./footer";
import { setProperties } from "./properties";

/** When a copy was made, and by which version of the functions. */
export interface Stamp {
  /** As it is to be read, such as 2026-05-04. */
  date: string;
  version: string;
}

/**
 * Notes when the values were worked out, and by what: in the file's properties, and at the foot of printed pages where
 * nothing stands to the left yet. No cell is written for it.
 * @param sheets the names of those that hold the values
 */
export function stamped(bytes: Uint8Array, sheets: readonly string[], { date, version }: Stamp): Uint8Array {
  const opened = openWorkbook(bytes);
  const draft = new PackageDraft(opened.source);
  opened.sheets.forEach((sheet, i) => {
    if (!sheet || !sheets.includes(opened.workbook.sheets[i]!.name)) return;
    draft.set(sheet.part, withFooter(sheet.text, sheet.part, `Values of ${date}, Groove && Reveal ${version}`));
  });
  setProperties(opened, draft, { "Values of": date, "Values by": `Groove & Reveal ${version}` });
  return draft.bytes();
}
