import {
  OPENING_HEADINGS,
  REQUIRED_HEADINGS,
  STANDARD_NAMES,
  type OpeningHeading,
  type StandardName,
  type Table,
} from "../../core/drawer";
import type { Typed } from "../../core/length";
import { readNamedValues } from "./named-values";
import { readTable } from "./table";

/**
 * @param rowless whether there may be none, under a header row alone
 * @param divided whether they are divided by another argument
 */
export const readOpenings = (raw: unknown, rowless = false, divided = false): Table<OpeningHeading> =>
  readTable(
    "openings",
    raw,
    OPENING_HEADINGS,
    REQUIRED_HEADINGS.filter((heading) => !(divided && heading === "drawers")),
    { rowless },
  );

export const readStandardValues = (raw: unknown): Map<StandardName | "unit", Typed> =>
  readNamedValues("standards", raw, ["unit", ...STANDARD_NAMES]);
