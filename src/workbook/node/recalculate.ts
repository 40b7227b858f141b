import { OWN_FUNCTIONS } from "../edit/own-functions";
import { unpackBy } from "../xlsx/unpacking";
import { run } from "./cli";
import { nodeUnpacking } from "./unpacking";

unpackBy(nodeUnpacking);

// Whoever reads along may stop, as `head` does; the workbook is written all the same, and the exit code stays true.
for (const stream of [process.stdout, process.stderr]) stream.on("error", () => undefined);

/** The command `recalculate`, with the real functions in it. Its script is no module, and so cannot await here. */
void run(
  process.argv.slice(2),
  { functions: OWN_FUNCTIONS },
  {
    out: (line) => process.stdout.write(`${line}\n`),
    err: (line) => process.stderr.write(`${line}\n`),
  },
).then((code) => (process.exitCode = code));
