import { readShopJob, type BookText, type RangeName, type ShopJob } from "../../shop-pages/index";
import type { Ranges } from "../host/host";

/**
 * Reads the job that a workbook plans, as far as its host tells what stands in it.
 * @returns why there is none, in a sentence
 */
export async function readBook(
  formulas: BookText["formulas"],
  values: Ranges["values"],
): Promise<ShopJob | { why: string }> {
  const known = new Map<string, unknown[][] | undefined>();
  for (;;) {
    const lacking: (RangeName & { sheet: string })[] = [];
    const book: BookText = {
      formulas,
      values(range) {
        const key = JSON.stringify(range);
        if (!known.has(key)) lacking.push(range);
        return known.get(key);
      },
    };
    // What it asks for is known only by asking it: it is asked again until nothing is lacking.
    const job = readShopJob(book);
    if (lacking.length === 0) return job;
    for (const range of lacking) known.set(JSON.stringify(range), await values(range));
  }
}
