import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { updateTitles } from "./titles";
import { WorkbookText } from "./workbook-text";

/**
 * Puts the sheets into another order.
 * @param order which sheet, as it is counted before, stands at each place from now on
 */
export function moveSheet({ source, workbook }: OpenWorkbook, draft: PackageDraft, order: readonly number[]): void {
  const text = new WorkbookText(draft.text(workbook.part), workbook.part);
  const elements = text.sheets.map(({ start, end }) => text.text.slice(start, end));
  const edits = text.sheets.map(({ start, end }, i) => ({ start, end, text: elements[order[i]!]! }));
  draft.set(workbook.part, text.with([...edits, ...text.renumbered((sheet) => placeIn(order, sheet))]));
  const names = workbook.sheets.map(({ name }) => name);
  updateTitles(source, draft, workbook.sheets, (titles) => titles.toSorted((a, b) => placeOf(a) - placeOf(b)));
  function placeOf(name: string): number {
    return order.indexOf(names.indexOf(name));
  }
}

/** What counts no sheet stays. */
function placeIn(order: readonly number[], sheet: number): number {
  const place = order.indexOf(sheet);
  return place < 0 ? sheet : place;
}
