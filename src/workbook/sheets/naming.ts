import { namesSheet } from "../formula/sheet-names";
import type { PackageDraft } from "../xlsx/package-draft";
import { escapeText, readXml } from "../xlsx/xml";
import { SheetFault } from "./sheet-edit";

/** The parts that hold one of the names at all, of those that may refer to a sheet. */
export function naming(draft: PackageDraft, names: readonly string[]): string[] {
  const wanted = names.flatMap((name) => writings(name.toLowerCase()));
  return draft.names.filter((part) => {
    if (!/\.(xml|vml|rels)$/i.test(part) || NEVER.test(part)) return false;
    const text = readable(draft, part)?.toLowerCase();
    return text !== undefined && wanted.some((name) => text.includes(name));
  });
}

/** Texts of people, and properties, which are kept in step in their own way. */
const NEVER =
  /^\[Content_Types\]|(^|\/)(sharedStrings|comments\d*|threadedComment\d*|person\d*|styles|theme\d*)\.xml$|^docProps\/|^customXml\//i;

/** A name as XML, formulas and links may write it. */
function writings(name: string): string[] {
  const quoted = name.replaceAll("'", "''");
  return [name, quoted].flatMap((text) => [
    text,
    escapeText(text),
    escapeText(text).replaceAll("'", "&apos;").replaceAll('"', "&quot;"),
    escapeText(text).replaceAll("'", "&#39;").replaceAll('"', "&#34;"),
    encodeURI(text).toLowerCase(),
  ]);
}

/** A part that is no text at all names nothing. */
function readable(draft: PackageDraft, part: string): string | undefined {
  try {
    return draft.text(part);
  } catch {
    return undefined;
  }
}

/**
 * Refuses what still names the sheet after all has been changed that is known to: it would lead nowhere.
 * @throws SheetFault
 */
export function refuseUnknown(text: string, part: string, name: string): void {
  let inText = 0;
  const look = (where: string, found: string) => {
    if (!found.includes("!") || !namesSheet(found, name)) return;
    throw new SheetFault(
      `The sheet keeps its name: the file's part ${part} refers to it${where}, and that is not changed here.`,
    );
  };
  const open: string[] = [];
  readXml(text, part, {
    open({ name: element, attributes }) {
      open.push(element);
      if (TEXTS.has(element)) inText++;
      for (const [attribute, value] of Object.entries(attributes))
        if (!TEXT_ATTRIBUTES.has(attribute) && (element !== "Relationship" || value.startsWith("#")))
          look(` (${element}, ${attribute})`, value.replace(/^#/, ""));
    },
    text(found) {
      if (inText === 0) look(` (${open.at(-1)})`, found);
    },
    close(element) {
      open.pop();
      if (TEXTS.has(element)) inText--;
    },
  });
}

/** Elements that hold what people wrote or what formulas gave, and no reference. */
const TEXTS = new Set(
  "t v oddHeader oddFooter evenHeader evenFooter firstHeader firstFooter pt numCache strCache".split(" "),
);

/** Attributes of the same kind. */
const TEXT_ATTRIBUTES = new Set(
  "name displayName caption title descr prompt promptTitle error errorTitle tooltip display altText v u comment description".split(
    " ",
  ),
);
