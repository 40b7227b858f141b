import type { CopiedSheet } from "./office-copied";
import { areaName } from "./style-areas";

/** Copies a sheet to the end, and puts values in place of formulas there before anything is worked out anew. */
export async function layCopy(
  context: Excel.RequestContext,
  { name, areas, formats, hasFootRoom }: CopiedSheet,
  copyName: string,
  { date, version }: { date: string; version: string },
): Promise<void> {
  context.application.suspendApiCalculationUntilNextSync();
  const sheet = context.workbook.worksheets.getItem(name);
  const copy = sheet.copy("End");
  copy.name = copyName;
  // From range to range, so that a text stays a text, and an error the error that it is.
  for (const area of areas) copy.getRange(areaName(area)).copyFrom(sheet.getRange(areaName(area)), "Values");
  for (const [format, where] of formats)
    for (const area of where) {
      const height = area.bottom - area.top + 1;
      const width = area.right - area.left + 1;
      copy.getRange(areaName(area)).numberFormat = Array.from({ length: height }, () =>
        Array<string>(width).fill(format),
      );
    }
  copy.customProperties.add("Values of", date);
  copy.customProperties.add("Values by", `Groove & Reveal ${version}`);
  if (hasFootRoom)
    copy.pageLayout.headersFooters.defaultForAllPages.leftFooter = `&8Values of ${date}, Groove && Reveal ${version}`;
  await context.sync();
}
