import { applyEdits, type Edit } from "../text-edits";
import { withAttributes } from "../xlsx/tag-text";
import { decodeEscapes, encodeEscapes, escapeAttribute, escapeText, readXml, type Tag } from "../xlsx/xml";

/** What becomes of the places that name a sheet. */
export interface ReferenceChanges {
  formula(formula: string): string;
  /** Of a chart's series; like a formula where it is not given. */
  series?(formula: string): string;
  /** Where a link leads; links stay where it is not given. */
  link?(location: string): string;
  /** A sheet's bare name, where a range is kept beside it; it stays where it is not given. */
  sheet?(name: string): string;
}

/** A part's text with its formulas, links and names of sheets changed; what is the same keeps every character. */
export function withReferences(text: string, part: string, changes: ReferenceChanges): string {
  const edits: Edit[] = [];
  const open: { name: string; end: number; text: string }[] = [];
  readXml(text, part, {
    open(tag) {
      open.push({ name: tag.name, end: tag.end, text: "" });
      const changed = changedTag(text, tag, changes);
      if (changed) edits.push(changed);
    },
    text(found) {
      const last = open.at(-1);
      if (last) last.text += found;
    },
    close(name, prefix, start, end) {
      const element = open.pop()!;
      if (start === end || !FORMULAS.has(name) || element.text === "") return;
      const isSeries = (prefix === "c:" || prefix === "cx:") && changes.series !== undefined;
      const change = isSeries ? changes.series! : changes.formula;
      const before = decodeEscapes(element.text);
      const after = change(before);
      if (after !== before) edits.push({ start: element.end, end: start, text: escapeText(encodeEscapes(after)) });
    },
  });
  return applyEdits(text, edits);
}

/** Elements whose text is a formula, in sheets, tables, names, charts, controls, and the extensions of each. */
const FORMULAS = new Set(
  "f formula formula1 formula2 calculatedColumnFormula totalsRowFormula definedName FmlaLink FmlaRange FmlaPict".split(
    " ",
  ),
);

/** Attributes that hold a formula, wherever they stand. */
const FORMULA_ATTRIBUTES = ["textlink", "fmlaLink", "fmlaRange", "fmlaTxbx", "fmlaPict", "fmlaGroup"];

/** Elements that keep a range in one attribute and its sheet in another. */
const SHEET_HOLDERS = new Set(["worksheetSource", "rangeSet", "dataRef"]);

function changedTag(text: string, { name, attributes, start, end }: Tag, changes: ReferenceChanges): Edit | undefined {
  const changed: Record<string, string> = {};
  const set = (attribute: string, change: ((value: string) => string) | undefined, value = attributes[attribute]) => {
    if (value === undefined || !change) return;
    const now = change(value);
    if (now !== value) changed[attribute] = escapeAttribute(now);
  };
  for (const attribute of FORMULA_ATTRIBUTES) if (attribute in attributes) set(attribute, changes.formula);
  if (name === "hyperlink") set("location", changes.link);
  if (SHEET_HOLDERS.has(name)) set("sheet", changes.sheet);
  if (name === "Relationship" && attributes.Target?.startsWith("#"))
    set("Target", changes.link && inTarget(changes.link));
  if (Object.keys(changed).length === 0) return undefined;
  return { start, end, text: withAttributes(text.slice(start, end), changed) };
}

/** A drawing's link leads to a place in the workbook as an address that begins with `#`, spaces as `%20`. */
const inTarget =
  (change: (location: string) => string) =>
  (target: string): string => {
    try {
      const location = decodeURI(target.slice(1));
      const now = change(location);
      return now === location ? target : `#${encodeURI(now)}`;
    } catch {
      return target;
    }
  };
