import { addPart } from "../xlsx/add-part";
import { readLists, withItems } from "../xlsx/list-edits";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { PackageDraft } from "../xlsx/package-draft";
import { readXml } from "../xlsx/xml";
import type { RuleLook, StyleDefinition } from "./definition";
import { styleItems, stylesPart } from "./styles-part";

/**
 * Adds styles, and looks of rules, to those of a workbook.
 * @returns the numbers of the first of each
 */
export function addStyles(
  opened: OpenWorkbook,
  draft: PackageDraft,
  styles: readonly StyleDefinition[],
  looks: readonly RuleLook[],
): { style: number; look: number } {
  const part = opened.source.linked(opened.workbook.part, "styles");
  if (part === undefined) {
    addPart(opened, draft, { name: "styles", link: "styles", type: "styles", text: stylesPart(styles, looks) });
    return { style: 1, look: 0 };
  }
  const text = draft.text(part);
  const { lists } = readLists(text, part);
  const count = (name: string): number => lists.find((list) => list.name === name)?.items ?? 0;
  const format = Math.max(LAST_BUILT_IN, ...formatNumbers(text, part)) + 1;
  const first = { format, font: count("fonts"), fill: count("fills"), border: count("borders") };
  const items = styleItems(styles, looks, first);
  // What a list of none means must stand there before anything else.
  const plain = count("cellXfs") === 0 ? ['<xf numFmtId="0"/>'] : [];
  draft.set(part, withItems(text, part, { ...items, cellXfs: [...plain, ...items.cellXfs] }, ORDER));
  return { style: count("cellXfs") + plain.length, look: count("dxfs") };
}

/** The numbers below 164 are the program's own. */
const LAST_BUILT_IN = 163;

function formatNumbers(text: string, part: string): number[] {
  const numbers: number[] = [];
  readXml(text, part, {
    open: ({ name, attributes }) => {
      if (name === "numFmt") numbers.push(Number(attributes.numFmtId) || 0);
    },
  });
  return numbers;
}

/** CT_Stylesheet: ECMA-376, 18.8.39. */
const ORDER = "numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst".split(" ");
