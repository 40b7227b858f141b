import { isFormula, type Content } from "../edit/content";
import type { Entry } from "./entry";
import type { OpenInGrid } from "./session";

/**
 * The number formats that came with what was put into cells. A cell has one as long as it holds what it came with, so
 * that whatever is undone or done again has its own format again.
 */
export class TypedFormats {
  private readonly noted = new Map<string, Map<Content, string>>();
  private unit = "";

  /** @param open the workbook in the grid; those of an earlier visit's changes are known as soon as it is open */
  constructor(
    private readonly open: () => Pick<OpenInGrid, "unitId"> & { book: Pick<OpenInGrid["book"], "changes"> },
  ) {}

  of(sheet: string, row: number, column: number, content: Content): string | undefined {
    this.begin();
    return isFormula(content) ? undefined : this.noted.get(`${sheet} ${row} ${column}`)?.get(content);
  }

  note(sheet: string, row: number, column: number, { content, format }: Entry): void {
    this.begin();
    const key = `${sheet} ${row} ${column}`;
    const formats = this.noted.get(key) ?? new Map<Content, string>();
    if (format === undefined) formats.delete(content);
    else formats.set(content, format);
    this.noted.set(key, formats);
  }

  /** Another workbook has nothing of what was typed into the last one. */
  private begin(): void {
    const { unitId, book } = this.open();
    if (unitId === this.unit) return;
    this.unit = unitId;
    this.noted.clear();
    for (const change of book.changes)
      if (!("kind" in change)) this.note(change.sheet, change.row, change.column, change);
  }
}
