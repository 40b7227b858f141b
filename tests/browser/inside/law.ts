import { chanceOf } from "../../workbook/support/random-edits";
import { disagreement, structures, type Started } from "./agreement";
import { hands } from "./hands";
import { randomStep } from "./steps";

/** What happened, step by step, and what is wrong after the last one. */
interface Broken {
  seed: number;
  steps: string[];
  fault: string;
}

export interface Tried {
  broken: Broken[];
  /** How many steps of each kind were done. */
  counts: Record<string, number>;
  /** The file at the end of each sequence, in base64. */
  saved: string[];
}

/**
 * Opens the workbook and does random things to it, once for each seed; grid and engine are compared after each.
 * @param every after how many steps the saved file is compared too, and always after the last
 */
export async function tryTheLaw(
  started: Started,
  bytes: Uint8Array,
  { seeds, steps, every }: { seeds: readonly number[]; steps: number; every: number },
): Promise<Tried> {
  const tried: Tried = { broken: [], counts: {}, saved: [] };
  const own = hands(started);
  for (const seed of seeds) {
    await started.work.put({ name: "law.xlsx", bytes, edits: [], saved: [] });
    const told: string[] = [];
    const before = structures(started);
    const chance = chanceOf(seed);
    let fault: string | undefined;
    for (let i = 1; i <= steps && fault === undefined; i++) {
      const step = randomStep(started, own, chance);
      told.push(step.told);
      tried.counts[step.kind] = (tried.counts[step.kind] ?? 0) + 1;
      try {
        await step.do();
        fault = await disagreement(started, i % every === 0 || i === steps);
      } catch (error) {
        fault = (error as Error).stack ?? String(error);
      }
    }
    if (fault === undefined)
      for (const [id, now] of structures(started))
        if (before.has(id) ? before.get(id) !== now : !id.startsWith("added-"))
          fault = `more than contents has changed in ${id}: ${before.get(id)} has become ${now}`;
    if (fault !== undefined) tried.broken.push({ seed, steps: told, fault });
    tried.saved.push(base64(await started.work.opened.book.save()));
  }
  return tried;
}

function base64(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}
