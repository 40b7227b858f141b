import { oneSheet } from "../support/handmade";

/** A formula that is worked out if its file is read, and what it comes to. */
export const SUM = '<c r="A1"><f>1+1</f><v>77</v></c>';
export const A1 = { A1: 2 };

export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

export const row = (cells: string, number = 1): string => `<row r="${number}">${cells}</row>`;

/** A file as good as any, to be spoiled. */
export const good = oneSheet(row(SUM));

export const strings = (sst: string, cells: string): Uint8Array =>
  oneSheet(row(SUM + cells), {
    parts: { "xl/sharedStrings.xml": `<sst xmlns="${MAIN}">${sst}</sst>` },
    links: { sharedStrings: "sharedStrings.xml" },
  });

/** A column's letters. */
export function column(index: number): string {
  const letter = (i: number) => String.fromCharCode(65 + i);
  if (index < 26) return letter(index);
  if (index < 702) return letter(Math.floor(index / 26) - 1) + letter(index % 26);
  const rest = index - 702;
  return letter(Math.floor(rest / 676)) + letter(Math.floor((rest % 676) / 26)) + letter(rest % 26);
}
