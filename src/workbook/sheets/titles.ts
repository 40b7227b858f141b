import { applyEdits, type Edit } from "../text-edits";
import type { Package } from "../xlsx/package";
import type { PackageDraft } from "../xlsx/package-draft";
import { withAttributes } from "../xlsx/tag-text";
import type { SheetEntry } from "../xlsx/workbook-part";
import { escapeText, readXml } from "../xlsx/xml";

interface Item {
  start: number;
  end: number;
  tagEnd: number;
  inner: number;
  text: string;
}

/**
 * Keeps the list of sheets in the file's properties in step: its first titles, where those are the sheets with cells.
 * A list that says something else is left alone.
 * @param name what becomes of the other titles, which are defined names with their sheets; undefined where it goes
 */
export function updateTitles(
  source: Package,
  draft: PackageDraft,
  sheets: readonly SheetEntry[],
  change: (titles: string[]) => string[],
  name: (title: string) => string | undefined = (title) => title,
): void {
  const part = source.linked("", "extended-properties");
  if (part === undefined || !draft.has(part)) return;
  const text = draft.text(part);
  const found = readTitles(text, part);
  const names = sheets.filter(({ isWorksheet }) => isWorksheet).map((sheet) => sheet.name);
  const { titles, counts, vector } = found;
  const before = titles.slice(0, names.length).map((title) => title.text);
  if (!vector || !counts[0] || Number(counts[0].text) !== names.length || names.some((sheet, i) => before[i] !== sheet))
    return;
  const now = change(before);
  const others = titles.slice(names.length).map((title) => ({ old: title.text, now: name(title.text) }));
  const gone = others.filter((title) => title.now === undefined).length;
  const edits: Edit[] = [];
  const put = (item: Item | undefined, value: string) => {
    if (item && item.text !== value) edits.push({ start: item.tagEnd, end: item.inner, text: escapeText(value) });
  };
  const sample = titles[0]!;
  const element = (value: string) =>
    text.slice(sample.start, sample.tagEnd) + escapeText(value) + text.slice(sample.inner, sample.end);
  before.forEach((_, i) => {
    if (i < now.length) put(titles[i], now[i]!);
    else edits.push({ start: titles[i]!.start, end: titles[i]!.end, text: "" });
  });
  const added = now.slice(before.length).map(element).join("");
  const end = titles[before.length - 1]!.end;
  if (added) edits.push({ start: end, end, text: added });
  others.forEach((title, i) => {
    const item = titles[names.length + i]!;
    if (title.now === undefined) edits.push({ start: item.start, end: item.end, text: "" });
    else put(item, title.now);
  });
  put(counts[0], String(now.length));
  if (gone > 0 && counts.length === 2 && Number(counts[1]!.text) === others.length)
    put(counts[1], String(others.length - gone));
  const size = String(titles.length + now.length - before.length - gone);
  edits.push({ ...vector, text: withAttributes(text.slice(vector.start, vector.end), { size }) });
  draft.set(part, applyEdits(text, edits));
}

function readTitles(text: string, part: string) {
  const titles: Item[] = [];
  const counts: Item[] = [];
  let vector: { start: number; end: number } | undefined;
  let list = "";
  let item: Item | undefined;
  readXml(text, part, {
    open({ name, start, end }) {
      if (name === "TitlesOfParts" || name === "HeadingPairs") list = name;
      if (name === "vector" && list === "TitlesOfParts") vector = { start, end };
      const isItem = (list === "TitlesOfParts" && name === "lpstr") || (list === "HeadingPairs" && name === "i4");
      if (isItem) item = { start, end, tagEnd: end, inner: end, text: "" };
    },
    text(found) {
      if (item) item.text += found;
    },
    close(name, _prefix, start, end) {
      if (item && (name === "lpstr" || name === "i4")) {
        (name === "i4" ? counts : titles).push({ ...item, inner: start, end });
        item = undefined;
      }
      if (name === list) list = "";
    },
  });
  return { titles, counts, vector };
}
