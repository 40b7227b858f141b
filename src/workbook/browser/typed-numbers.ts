import type { Entry } from "./entry";
import type { Content } from "../edit/index";

/** The number formats that numbers were typed with, by sheet and cell. */
export interface TypedNumbers {
  format(sheet: string, row: number, column: number, content: Content): string | undefined;
  /** Tells with which format a number is about to be put into a cell. */
  note(sheet: string, row: number, column: number, entry: Entry): void;
}
