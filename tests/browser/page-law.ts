import { openDesk, type Desk, type Visit } from "./desk";
import { INSIDE } from "./inside";
import type { Tried } from "./inside/law";

/** Several tabs in which the law is tried, each with workbooks of its own, for one does not keep the machine busy. */
export interface LawDesk {
  try(bytes: Uint8Array, how: { seeds: readonly number[]; steps: number; every: number }): Promise<Tried>;
  close(): Promise<void>;
}

const TABS = 3;

export async function openLawDesk(): Promise<LawDesk> {
  const desk: Desk = await openDesk(INSIDE);
  const tabs: Visit[] = [];
  for (let i = 0; i < TABS; i++) {
    // The less there is to draw, the more can be tried.
    tabs.push(await desk.visit({ viewport: { width: 500, height: 400 } }));
  }
  return {
    async try(bytes, { seeds, steps, every }) {
      const found = await Promise.all(
        tabs.map(({ page }, tab) =>
          page.evaluate(([bytes, how]) => window.inside!.tryTheLaw(bytes, how), [
            [...bytes],
            { seeds: seeds.filter((_, i) => i % TABS === tab), steps, every },
          ] as const),
        ),
      );
      const counts: Tried["counts"] = {};
      for (const one of found)
        for (const [kind, count] of Object.entries(one.counts)) counts[kind] = (counts[kind] ?? 0) + count;
      return {
        broken: found.flatMap(({ broken }) => broken),
        counts,
        saved: found.flatMap(({ saved }) => saved),
      };
    },
    close: () => desk.close(),
  };
}
