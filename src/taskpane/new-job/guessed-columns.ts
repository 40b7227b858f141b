import { STANDARDS_HELP } from "../../guide/index";
import { headingsOf, type Choices } from "../../workbook/new-job/index";

/** Our headings that a table may have, those of its standards last. */
export const possibleHeadings = (from: Choices["from"]): string[] => [
  ...headingsOf(from).map(({ name }) => name),
  ...Object.keys(STANDARDS_HELP),
];

/**
 * Which of a shop's columns is which of ours, as far as its headings tell.
 * @returns the column's place by our heading
 */
export function guessedColumns(headings: readonly unknown[], from: Choices["from"]): Map<string, number> {
  const theirs = headings.map(plain);
  const found = new Map<string, number>();
  const isFree = (place: number): boolean => ![...found.values()].includes(place);
  // A heading that is one of the words goes before one that has it among others: of Width and Front width, the first.
  for (const isLike of [
    (their: string, word: string) => their === word,
    (their: string, word: string) => word.length > 1 && their.split(" ").includes(word),
  ])
    for (const ours of possibleHeadings(from)) {
      if (found.has(ours)) continue;
      const words = [plain(ours), ...(SYNONYMS[ours] ?? [])];
      const place = theirs.findIndex((their, i) => isFree(i) && words.some((word) => isLike(their, word)));
      if (place >= 0) found.set(ours, place);
    }
  return found;
}

/** Without what stands in brackets, marks, and a unit at its end. */
function plain(heading: unknown): string {
  const words = String(heading)
    .toLowerCase()
    .replace(/[([{].*?[)\]}]/g, " ")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
  return words.replace(/ (in|inch|inches|mm|millimeters)$/, "");
}

/** As shops head their own lists; common practice. */
const SYNONYMS: Readonly<Record<string, readonly string[]>> = {
  Opening: ["name", "label", "id", "no", "bay", "tag"],
  Cabinet: ["cab", "carcase", "carcass", "case", "unit"],
  Width: ["w", "wide"],
  Height: ["h", "high", "tall"],
  Depth: ["d", "deep"],
  Drawers: ["drawer", "drawer count", "number of drawers", "fronts", "drs", "dwrs"],
  Quantity: ["qty", "count", "pcs", "pieces", "copies", "off"],
  Columns: ["column", "cols", "across"],
  "Toe kick": ["kick", "toekick", "plinth"],
  "Back thickness": ["back"],
};
