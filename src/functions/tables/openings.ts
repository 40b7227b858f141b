import { OPENING_HEADINGS, REQUIRED_HEADINGS, type OpeningHeading } from "./opening";
import type { Table } from "./row";
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
