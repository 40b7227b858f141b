import { applyEdits, type Edit } from "../text-edits";
import type { Place } from "../xlsx/sheet-text";
import { withAttributes } from "../xlsx/tag-text";
import { readXml } from "../xlsx/xml";

/** Where the sheets, and all that counts them, stand in the workbook's main part. */
export class WorkbookText {
  /** Whole elements, in the order of the sheets. */
  readonly sheets: (Place & { tagEnd: number; attributes: Record<string, string> })[] = [];
  /** Where `sheets`' end tag begins. */
  sheetsEnd = -1;
  private readonly names: (Place & { tagEnd: number; sheet: number | undefined })[] = [];
  private namesList: Place = { start: -1, end: -1 };
  private readonly views: (Place & { attributes: Record<string, string> })[] = [];
  private readonly custom: (Place & { attributes: Record<string, string> })[] = [];

  constructor(
    readonly text: string,
    part: string,
  ) {
    readXml(text, part, {
      open: ({ name, attributes, start, end }) => {
        if (name === "sheet") this.sheets.push({ start, end, tagEnd: end, attributes });
        if (name === "definedNames") this.namesList = { start, end };
        if (name === "definedName") {
          const sheet = attributes.localSheetId === undefined ? undefined : Number(attributes.localSheetId);
          this.names.push({ start, end, tagEnd: end, sheet });
        }
        if (name === "workbookView") this.views.push({ start, end, attributes });
        if (name === "customWorkbookView") this.custom.push({ start, end, attributes });
      },
      close: (name, _prefix, start, end) => {
        if (name === "sheet") this.sheets.at(-1)!.end = end;
        if (name === "sheets") this.sheetsEnd = start;
        if (name === "definedName") this.names.at(-1)!.end = end;
        if (name === "definedNames") this.namesList.end = end;
      },
    });
  }

  /** A sheet's start tag. */
  tag(index: number): string {
    const { start, tagEnd } = this.sheets[index]!;
    return this.text.slice(start, tagEnd);
  }

  with(edits: readonly Edit[]): string {
    return applyEdits(this.text, edits);
  }

  /** The edits by which views that a person has named show another sheet, in place of one that goes; by their numbers. */
  customViews(gone: string, instead: string): Edit[] {
    return this.custom.flatMap(({ start, end, attributes }) => {
      if (attributes.activeSheetId !== gone) return [];
      return [{ start, end, text: withAttributes(this.text.slice(start, end), { activeSheetId: instead }) }];
    });
  }

  /**
   * The edits by which names of single sheets, and the tabs in front, follow their sheets.
   * @param place where a sheet stands from now on; undefined where it is gone
   * @param instead the sheet that is in front where the one that was is gone, as it is counted from now on
   */
  renumbered(place: (sheet: number) => number | undefined, instead = 0): Edit[] {
    const edits = this.views.flatMap(({ start, end, attributes }): Edit[] => {
      const changes: Record<string, string> = {};
      for (const name of ["activeTab", "firstSheet"]) {
        const old = Number(attributes[name] ?? 0);
        const now = place(old) ?? instead;
        if (now !== old) changes[name] = String(now);
      }
      const tag = this.text.slice(start, end);
      const text = withAttributes(tag, changes);
      return text === tag ? [] : [{ start, end, text }];
    });
    const local = this.names.filter((name) => name.sheet !== undefined);
    if (
      this.names.length > 0 &&
      this.names.every((name) => name.sheet !== undefined && place(name.sheet) === undefined)
    )
      return [...edits, { ...this.namesList, text: "" }];
    for (const { start, end, tagEnd, sheet } of local) {
      const now = place(sheet!);
      if (now === undefined) edits.push({ start, end, text: "" });
      else if (now !== sheet) {
        const text = withAttributes(this.text.slice(start, tagEnd), { localSheetId: String(now) });
        edits.push({ start, end: tagEnd, text });
      }
    }
    return edits;
  }
}
