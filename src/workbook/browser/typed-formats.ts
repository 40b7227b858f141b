import { isFormula, type Content } from "../edit/index";
import type { Entry } from "./entry";

/**
 * The number formats that came with what was put into cells. A cell has one as long as it holds what it came with, so
 * that whatever is undone or done again has its own format again.
 */
export class TypedFormats {
  private readonly noted = new Map<string, Map<Content, string>>();

  of(sheet: string, row: number, column: number, content: Content): string | undefined {
    return isFormula(content) ? undefined : this.noted.get(`${sheet} ${row} ${column}`)?.get(content);
  }

  note(sheet: string, row: number, column: number, { content, format }: Entry): void {
    const key = `${sheet} ${row} ${column}`;
    const formats = this.noted.get(key) ?? new Map<Content, string>();
    if (format === undefined) formats.delete(content);
    else formats.set(content, format);
    this.noted.set(key, formats);
  }
}
