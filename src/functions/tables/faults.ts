import type { NoData } from "../../core/length";

/** Two rows that have one name. */
type Both = { first: number; second: number };

declare module "../../core/length" {
  interface Faults {
    "table.blank": { table: string; required: readonly string[] };
    "table.noHeader": { table: string; required: readonly string[]; first: unknown[] };
    "table.noRows": { table: string };
    "table.headingTwice": { table: string; name: string };
    "table.headingMissing": { table: string; missing: readonly string[] };
    "table.headingMisspelled": { table: string; heading: string; nearest: string };
    "table.headingUnit": { table: string; heading: string };
    "table.notTwoColumns": { table: string; columns: number };
    "table.nameBlank": { table: string; row: number };
    "table.nameTwice": Both & { table: string; name: string };
    "table.swapped": { table: string; row: number; name: unknown };
    "table.nameUnknown": { table: string; row: number; name: string; nearest: string };

    "load.unreadable": { received: unknown; plain: string };
    "stiffness.unreadable": { received: unknown; plain: string };
    "share.outOfRange": { received: unknown };
    "rates.marginHigh": { received: unknown };
    "rates.markupAndMargin": NoData;
    "stock.useless": { soldBy: string };
    "openings.sameLabel": Both & { label: string };
    "cabinets.sameName": Both & { kind: string; name: string };
    "cabinets.many": { openings: number; most: number };

    "alternates.noNames": NoData;
    "alternates.few": NoData;
    "alternates.nameBlank": { column: number };
  }
}

declare module "../../core/drawer" {
  interface Findings {
    "heading.unread": { heading: string };
    "zero.blank": { heading: string };
  }
}
