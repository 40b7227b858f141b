import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { convert } from "../../libreoffice";

/** The .csv that LibreOffice makes of a workbook's first sheet: the values as it shows them. */
export function shownBy(bytes: Uint8Array, folder: string): string {
  const file = join(folder, `shown-${bytes.length}.xlsx`);
  writeFileSync(file, bytes);
  return convert(file, folder, "csv");
}
