import { readShopJob, type BookText, type ShopJob } from "../../src/shop-pages";

/** The tables of a job, each on a sheet of its name, and the formulas that read them. */
export interface TypedBook {
  openings: unknown[][];
  standards: unknown[][];
  stock?: unknown[][];
}

const ADDRESS = "A1:Z99";

/** A workbook with these tables and one formula for each that uses them. */
export function bookOf({ openings, standards, stock }: TypedBook): BookText {
  const tables: Record<string, unknown[][] | undefined> = { Openings: openings, Standards: standards, Stock: stock };
  const job = `Openings!${ADDRESS},Standards!${ADDRESS}`;
  return {
    formulas: [
      { sheet: "Plan", formula: "=SUM(A1:A9)" },
      { sheet: "Plan", formula: `=DRAWER.PLAN(${job})` },
      ...(stock ? [{ sheet: "Checks", formula: `=DRAWER.CHECKS(${job},Stock!${ADDRESS})` }] : []),
    ],
    values: ({ sheet }) => tables[sheet],
  };
}

/** The job of a workbook that has one. */
export function shopJob(book: TypedBook): ShopJob {
  const job = readShopJob(bookOf(book));
  if ("why" in job) throw new Error(job.why);
  return job;
}
