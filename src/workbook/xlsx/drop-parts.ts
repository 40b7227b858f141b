import { applyEdits, type Edit } from "../text-edits";
import type { Package } from "./package";
import type { PackageDraft } from "./package-draft";
import { readXml } from "./xml";

/**
 * Takes a part out that the workbook's main part points to, and with it all parts that only it led to, their lists of
 * links and their types.
 */
export function dropParts(source: Package, draft: PackageDraft, main: string, part: string): void {
  const before = reachable(source, "");
  const after = reachable(source, "", (from, to) => from === main && to === part);
  const gone = [...before].filter((name) => !after.has(name) && source.has(name) && draft.has(name));
  const lists = gone.map(listOf).filter((list) => source.has(list));
  for (const name of [...gone, ...lists]) draft.remove(name);
  const types = "[Content_Types].xml";
  const names = new Set(gone.map((name) => `/${name.toLowerCase()}`));
  draft.set(
    types,
    withoutElements(draft.text(types), types, ({ PartName }) => names.has(PartName?.toLowerCase() ?? "")),
  );
  const list = listOf(main);
  const ids = source.relationships(main).flatMap(({ id, target }) => (target === part ? [id] : []));
  draft.set(
    list,
    withoutElements(draft.text(list), list, ({ Id }) => Id !== undefined && ids.includes(Id)),
  );
}

/** Without recursion, for links may lead on through thousands of parts. */
function reachable(
  source: Package,
  first: string,
  ignored: (from: string, to: string) => boolean = () => false,
): Set<string> {
  const seen = new Set<string>();
  const open = [first];
  for (let from = open.pop(); from !== undefined; from = open.pop()) {
    for (const { target } of source.relationships(from)) {
      if (seen.has(target) || ignored(from, target) || !source.has(target)) continue;
      seen.add(target);
      open.push(target);
    }
  }
  return seen;
}

function listOf(part: string): string {
  const slash = part.lastIndexOf("/") + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

function withoutElements(text: string, part: string, isGone: (attributes: Record<string, string>) => boolean): string {
  const edits: Edit[] = [];
  const open: (Edit | undefined)[] = [];
  readXml(text, part, {
    open({ attributes, start, end }) {
      const edit = isGone(attributes) ? { start, end, text: "" } : undefined;
      open.push(edit);
      if (edit) edits.push(edit);
    },
    close(_name, _prefix, _start, end) {
      const edit = open.pop();
      if (edit) edit.end = end;
    },
  });
  return applyEdits(text, edits);
}
