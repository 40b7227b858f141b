import type { Content } from "../edit/index";

/** The number formats that numbers were typed with, by sheet and cell. */
export interface TypedNumbers {
  format(sheet: string, row: number, column: number, content: Content): string | undefined;
}
