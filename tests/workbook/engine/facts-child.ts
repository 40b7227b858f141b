import { factFiles, factsOf, shown } from "../support/facts";

/** Works all facts out and prints them, one a line. */
for (const fact of factFiles().flatMap(factsOf)) {
  const { place, formula, functions, kept, agrees } = fact;
  const told = { place, formula, functions, kept, agrees, stored: shown(fact.stored), found: shown(fact.found) };
  process.stdout.write(`${JSON.stringify(told)}\n`);
}
