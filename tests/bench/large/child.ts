import "../../host";
import { readFileSync } from "node:fs";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { recalculate } from "../../../src/workbook/edit/recalculate";
import { nodeUnpacking } from "../../../src/workbook/node/unpacking";
import { unpackBy } from "../../../src/workbook/xlsx/unpacking";

/** One process for one workbook, so that its memory is its own: the way to go, and the file. */
const [way, file] = process.argv.slice(2) as ["recalculate" | "open", string];
// As the command unpacks, where it is the command that is measured.
if (way === "recalculate") unpackBy(nodeUnpacking);
const bytes = readFileSync(file);
const start = performance.now();
const before = process.cpuUsage();
const kept =
  way === "open"
    ? new EditedWorkbook(bytes).calculate().kept
    : recalculate(bytes, { functions: OWN_FUNCTIONS }).report.kept;
const seconds = (performance.now() - start) / 1000;
const { user, system } = process.cpuUsage(before);
if (kept.length > 0) throw new Error(`A formula is not worked out: it ${kept[0]!.reason}.`);
console.log(
  JSON.stringify({ seconds, processor: (user + system) / 1e6, megabytes: process.resourceUsage().maxRSS / 1024 }),
);
