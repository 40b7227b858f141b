import { benchBrowser } from "./browser";
import { benchCuts } from "./cuts";
import { benchDrawings } from "./drawings";
import { benchEdits } from "./edits/index";
import { benchEngine } from "./engine";
import { benchFunctions } from "./functions";
import { benchLarge } from "./large/index";
import { benchLongest } from "./longest";
import { benchMoney } from "./money";
import { benchOffice } from "./office";
import { benchPlans } from "./plans";
import { benchSheets } from "./sheets";

/** `npm run bench` runs all; `npm run bench -- NAME …` runs those named, and hands them what else stands there. */
const BENCHES: Record<string, (args: readonly string[]) => void | Promise<void>> = {
  functions: benchFunctions,
  plans: benchPlans,
  money: benchMoney,
  edits: benchEdits,
  engine: benchEngine,
  large: benchLarge,
  sheets: benchSheets,
  cuts: benchCuts,
  drawings: benchDrawings,
  longest: benchLongest,
  browser: benchBrowser,
  office: benchOffice,
};

const words = process.argv.slice(2);
const names = words.filter((word) => word in BENCHES);
const args = words.filter((word) => !(word in BENCHES));
if (args.length > 0 && names.length === 0) {
  throw new Error(`There is no bench ${args[0]}. There are: ${Object.keys(BENCHES).join(", ")}.`);
}
for (const name of names.length ? names : Object.keys(BENCHES)) {
  console.log(`\n== ${name}, Node ${process.version} ==`);
  await BENCHES[name]!(args);
}
