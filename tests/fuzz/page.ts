import { openLawDesk } from "../browser/page-law";
import { lawWorkbooks } from "../workbook/support/law-workbooks";

const STEPS = 30;
/** Sequences between two lines of news. */
const AT_ONCE = 10;

/** Random sequences of what a person does in the page, the saved file compared after every step. */
export async function fuzzPage(sequences: number, first: number): Promise<number> {
  const books = Object.entries(await lawWorkbooks());
  const desk = await openLawDesk();
  let [done, broken] = [0, 0];
  try {
    for (let at = 0; done < sequences; at++) {
      const [name, bytes] = books[at % books.length]!;
      const count = Math.min(AT_ONCE, sequences - done);
      const seeds = Array.from({ length: count }, (_, i) => first + done + i);
      const found = await desk.try(bytes, { seeds, steps: STEPS, every: 1 });
      for (const { seed, fault, steps } of found.broken)
        console.error(`seed ${seed}, ${name}: ${fault}\n  ${steps.join("\n  ")}`);
      done += count;
      broken += found.broken.length;
      console.log(`${done} sequences of ${STEPS} steps in the page from seed ${first}, ${broken} broken`);
    }
  } finally {
    await desk.close();
  }
  return broken;
}
