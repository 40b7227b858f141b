import { OWN_FUNCTIONS } from "../edit/ownFunctions";
import { run } from "./cli";

/** The command `recalculate`, with the real functions in it. */
process.exitCode = await run(
  process.argv.slice(2),
  { functions: OWN_FUNCTIONS },
  {
    out: (line) => process.stdout.write(`${line}\n`),
    err: (line) => process.stderr.write(`${line}\n`),
  },
);
