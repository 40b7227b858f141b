import { benchBrowser } from "./browser";
import { benchEngine } from "./engine";
import { benchFunctions } from "./functions";
import { benchPlans } from "./plans";

/** `npm run bench` runs all; `npm run bench -- NAME …` runs those named. */
const BENCHES: Record<string, () => void | Promise<void>> = {
  functions: benchFunctions,
  plans: benchPlans,
  engine: benchEngine,
  browser: benchBrowser,
};

const names = process.argv.slice(2);
for (const name of names.length ? names : Object.keys(BENCHES)) {
  const bench = BENCHES[name];
  if (!bench) throw new Error(`There is no bench ${name}. There are: ${Object.keys(BENCHES).join(", ")}.`);
  console.log(`\n== ${name}, Node ${process.version} ==`);
  await bench();
}
