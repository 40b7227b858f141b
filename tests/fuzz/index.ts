import "../host";
import { partsBenchDraft } from "../workbook/support/parts-bench";
import { lawWorkbooks } from "../workbook/support/law-workbooks";
import { fuzzPage } from "./page";
import { tryTheLaw } from "../workbook/support/the-law";

/**
 * `npm run fuzz [-- [page] [SEQUENCES [FIRST_SEED]]]`: random sequences of edits, each with a seed by which it comes
 * again; with `page`, of what a person does in the page.
 */
const inPage = process.argv[2] === "page";
const [sequences = 10_000, first = Date.now() % 1_000_000_000] = process.argv.slice(inPage ? 3 : 2).map(Number);
const STEPS = 30;

if (inPage) process.exit((await fuzzPage(sequences, first)) > 0 ? 1 : 0);

const books = Object.entries(await lawWorkbooks());
let broken = 0;
for (let i = 0; i < sequences; i++) {
  const seed = first + i;
  // The whole bench takes a second a step, so that it comes seldom.
  const [name, bytes] = i % 500 === 499 ? ["the example", partsBenchDraft()] : books[seed % books.length]!;
  const found = tryTheLaw(bytes as Uint8Array, seed, STEPS).broken;
  if (found) {
    broken++;
    console.error(`seed ${seed}, ${String(name)}: ${found.fault}\n  ${found.steps.join("\n  ")}`);
  }
  if ((i + 1) % 100 === 0) console.log(`${i + 1} sequences of ${STEPS} steps from seed ${first}, ${broken} broken`);
}
console.log(`${sequences} sequences of ${STEPS} steps from seed ${first}, ${broken} broken`);
process.exitCode = broken > 0 ? 1 : 0;
